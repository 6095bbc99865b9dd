import { Link } from 'wouter';

/** There is no room at this address. */
export function Missing() {
  return (
    <main className="narrow">
      <h1>Nothing is here</h1>
      <p>
        This address leads nowhere. <Link href="/">The bench</Link> has every job.
      </p>
    </main>
  );
}
