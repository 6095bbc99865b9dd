import { isLate } from '@fettle/job/stages.ts';
import type { JobLine } from '@fettle/store/contract/jobs.ts';
import { Link } from 'wouter';
import { today } from '../../app/today.ts';
import { inWords } from '../../app/words.ts';
import { familyNames } from './kinds.ts';
import { nextOf } from './nextOf.ts';

const dayText = (day: string): string =>
  new Date(`${day}T12:00:00Z`).toLocaleDateString(undefined, {
    day: 'numeric',
    month: 'short',
    year: 'numeric',
  });

function Promised({ job: { promised, stage } }: { readonly job: JobLine }) {
  if (promised === undefined) return <span className="soft">no day promised</span>;
  const late = isLate(promised, { stage, today: today() });
  return (
    <span className={late ? 'fault' : ''}>
      {late ? 'late, promised for ' : 'promised for '}
      <time dateTime={promised}>{dayText(promised)}</time>
    </span>
  );
}

/** One job on the bench: its drawing, where it stands and the next thing to do. */
export function JobCard({ job }: { readonly job: JobLine }) {
  const { number, title, filterName, family, stage = 'taken-in', owner, tags } = job;
  const next = nextOf(job);
  return (
    <li className="card">
      <Link href={`/jobs/${number}`} className="open">
        <img src={`/api/jobs/${number}/drawing`} alt="" loading="lazy" width="100" height="150" />
        <span>
          <strong>
            {number} · {title ?? filterName ?? familyNames[family] ?? inWords(family)}
          </strong>
        </span>
      </Link>
      <p>
        <Promised job={job} /> · {inWords(stage)}
        {owner === undefined ? null : ` · ${owner}`}
      </p>
      {next === undefined ? null : (
        <p>
          Next: <Link href={`/jobs/${number}/${next.part}`}>{next.says}</Link>
        </p>
      )}
      {tags.length === 0 ? null : <p className="soft">{tags.join(', ')}</p>}
    </li>
  );
}
