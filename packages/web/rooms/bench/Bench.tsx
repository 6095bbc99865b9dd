import type { JobPage } from '@fettle/store/contract/jobs.ts';
import { useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { Link, useSearchParams } from 'wouter';
import { listJobs } from '../../client/jobs.ts';
import { JobCard } from './JobCard.tsx';
import { type Narrowed, Narrowing } from './Narrowing.tsx';

const atOnce = 60;

/** What the address says of the list, and how to change that. */
function useNarrowed(): readonly [Narrowed, (change: Partial<Narrowed>) => void] {
  const [asked, setAsked] = useSearchParams();
  const [words = '', family = '', stage = '', tag = ''] = ['words', 'family', 'stage', 'tag'].map(
    (name) => asked.get(name) ?? '',
  );
  const narrowed = { words, family, stage, tag };
  const change = (next: Partial<Narrowed>): void => {
    const kept = Object.entries({ ...narrowed, ...next }).filter(([, value]) => value !== '');
    setAsked(Object.fromEntries(kept), { replace: true });
  };
  return [narrowed, change];
}

/** The search field: what is typed narrows the list after a pause. */
function Search({ words, onChange }: { readonly words: string; readonly onChange: (words: string) => void }) {
  const [typed, setTyped] = useState(words);
  useEffect(() => {
    const timer = setTimeout(() => {
      if (typed !== words) onChange(typed);
    }, 250);
    return () => clearTimeout(timer);
  }, [typed, words, onChange]);
  return (
    <search>
      <label htmlFor="words">Find jobs by number, words, owner or medium</label>
      <input id="words" type="search" value={typed} onChange={({ target }) => setTyped(target.value)} />
    </search>
  );
}

/** What an empty bench teaches. */
const EmptyBench = () => (
  <section className="empty">
    <h2>Nothing is on the bench yet</h2>
    <ol>
      <li>Take in a filter: its kind, the tank, four or five measurements, the flow on the plate.</li>
      <li>Put into the drawing what you found in it.</li>
      <li>Read the findings: what is wrong, what it costs in numbers, what cures it.</li>
      <li>Re-pack it on the drawing, or let plans be searched within a budget.</li>
    </ol>
    <p>What you do not know is assumed and marked so. A tape measure and a bucket are enough.</p>
    <Link href="/take-in" className="button main">
      Take in a filter
    </Link>
  </section>
);

function Jobs({ page, isNarrowed }: { readonly page: JobPage; readonly isNarrowed: boolean }) {
  if (page.total === 0 && !isNarrowed) return <EmptyBench />;
  return (
    <>
      <p role="status">
        {page.total === 0 ? 'No job is like that.' : `${page.total} ${page.total === 1 ? 'job' : 'jobs'}`}
        {page.total > page.jobs.length ? `, the first ${page.jobs.length} are shown: narrow the list.` : ''}
      </p>
      <ol className="cards">
        {page.jobs.map((job) => (
          <JobCard key={job.number} job={job} />
        ))}
      </ol>
    </>
  );
}

/** The jobs in hand, soonest promise first. */
export function Bench() {
  const [narrowed, narrow] = useNarrowed();
  const found = useQuery({
    queryKey: ['jobs', narrowed],
    queryFn: () => listJobs({ ...narrowed, order: 'promised', count: atOnce }),
    placeholderData: (before) => before,
  });
  useEffect(() => {
    document.title = 'Bench · Fettle';
  }, []);
  return (
    <main>
      <div className="jobhead">
        <h1>Bench</h1>
        <Link href="/take-in" className="button main">
          Take in a filter
        </Link>
      </div>
      <Search words={narrowed.words} onChange={(words) => narrow({ words })} />
      <Narrowing narrowed={narrowed} onChange={narrow} />
      {found.isError ? (
        <p className="fault" role="alert">
          The jobs cannot be shown: {found.error.message}{' '}
          <button type="button" onClick={() => void found.refetch()}>
            Try again
          </button>
        </p>
      ) : null}
      {found.data === undefined ? null : (
        <Jobs page={found.data} isNarrowed={Object.values(narrowed).some((value) => value !== '')} />
      )}
    </main>
  );
}
