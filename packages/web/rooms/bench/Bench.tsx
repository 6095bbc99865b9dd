import type { JobLine } from '@fettle/store/contract/jobs.ts';
import { useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { Link, useSearchParams } from 'wouter';
import { listJobs } from '../../client/jobs.ts';

/** Stages in which the filter is with its owner again. */
const backHome: readonly (string | undefined)[] = ['handed-back', 'closed'];

const dayText = (day: string): string =>
  new Date(`${day}T12:00:00Z`).toLocaleDateString(undefined, {
    day: 'numeric',
    month: 'short',
    year: 'numeric',
  });

const today = (): string => new Date().toLocaleDateString('en-CA');

function Promised({ job: { promised, stage } }: { readonly job: JobLine }) {
  if (promised === undefined) return <span className="soft">no day promised</span>;
  const isLate = promised < today() && !backHome.includes(stage);
  return (
    <span className={isLate ? 'fault' : ''}>
      {isLate ? 'late, promised for ' : 'promised for '}
      <time dateTime={promised}>{dayText(promised)}</time>
    </span>
  );
}

function JobCard({ job }: { readonly job: JobLine }) {
  const { number, title, filterName, family, stage, owner, tags } = job;
  return (
    <li className="card">
      <Link href={`/jobs/${number}`}>
        <img src={`/api/jobs/${number}/drawing`} alt="" loading="lazy" width="120" height="150" />
        <strong>
          {number} · {title ?? filterName ?? family}
        </strong>
      </Link>
      <p>
        <Promised job={job} />
        {stage === undefined ? null : ` · ${stage.replaceAll('-', ' ')}`}
        {owner === undefined ? null : ` · ${owner}`}
      </p>
      {tags.length === 0 ? null : <p className="tags">{tags.join(', ')}</p>}
    </li>
  );
}

/** The jobs in hand, soonest promise first. */
export function Bench() {
  const [asked, setAsked] = useSearchParams();
  const words = asked.get('words') ?? '';
  const [typed, setTyped] = useState(words);
  useEffect(() => {
    const timer = setTimeout(() => {
      if (typed !== words) setAsked(typed === '' ? {} : { words: typed }, { replace: true });
    }, 250);
    return () => clearTimeout(timer);
  }, [typed, words, setAsked]);
  const found = useQuery({
    queryKey: ['jobs', words],
    queryFn: () => listJobs({ words, order: 'promised', count: 100 }),
    placeholderData: (before) => before,
  });
  return (
    <main>
      <h1>Bench</h1>
      <search>
        <label htmlFor="words">Find jobs by number, words, owner or medium</label>
        <input id="words" type="search" value={typed} onChange={(event) => setTyped(event.target.value)} />
      </search>
      {found.isError ? (
        <p className="fault" role="alert">
          The jobs cannot be shown: {found.error.message}
        </p>
      ) : null}
      <ol className="cards" aria-busy={found.isFetching}>
        {found.data?.jobs.map((job) => (
          <JobCard key={job.number} job={job} />
        ))}
      </ol>
    </main>
  );
}
