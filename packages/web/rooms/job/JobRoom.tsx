import { Missing } from '../../app/Missing.tsx';
import { Refused } from '../../client/request.ts';
import type { JobSession } from '../../session/jobSession.ts';
import { useJobSession } from '../../session/useJobSession.ts';
import { OpenJob } from './OpenJob.tsx';

/** One job, from taking in to as left. */
export default function JobRoom({ number, part }: { readonly number: number; readonly part: string }) {
  const opened = useJobSession(number);
  if (opened === undefined) return <p className="wait">Opening job {number}…</p>;
  if ('failure' in opened) return <NotOpened number={number} failure={opened.failure} />;
  return <Room session={opened.session} part={part} />;
}

function NotOpened({ number, failure }: { readonly number: number; readonly failure: Error }) {
  if (failure instanceof Refused && failure.problem.status === 404) return <Missing />;
  return (
    <main className="narrow">
      <h1>Job {number} cannot be opened</h1>
      <p className="fault" role="alert">
        {failure.message}
      </p>
      <p>
        <button type="button" onClick={() => window.location.reload()}>
          Try again
        </button>
      </p>
    </main>
  );
}

const Room = ({ session, part }: { readonly session: JobSession; readonly part: string }) => (
  <OpenJob session={session} part={part} />
);
