import { isLate } from '@fettle/job/stages.ts';
import type { JobLine, JobPage, JobQuery } from '@fettle/store/contract/jobs.ts';
import { table, wrap } from './layout.ts';
import { today } from './moments.ts';

const columns = [
  { head: 'No.', width: 6, align: 'right' },
  { head: 'Stage', width: 11 },
  { head: 'Promised', width: 15 },
  { head: 'Job', width: 26 },
  { head: 'Owner', width: 14 },
] as const;

const promised = ({ promised: day, stage }: JobLine): string => {
  if (day === undefined) return '';
  return isLate(day, { stage, today: today() }) ? `${day} late` : day;
};

/** Words that are wider than their column, in pieces that are not. */
const broken = (text: string, width: number): string =>
  text
    .split(/\s+/)
    .flatMap((word) => {
      const signs = [...word];
      return Array.from({ length: Math.ceil(signs.length / width) }, (_, place) =>
        signs.slice(place * width, (place + 1) * width).join(''),
      );
    })
    .join(' ');

/** The title, with the filter's name where that says more. */
const what = ({ title, filterName, family, tags }: JobLine): string => {
  const name = filterName ?? (title === undefined ? family : undefined);
  const says = title !== undefined && name !== undefined && title.toLowerCase().includes(name.toLowerCase());
  const parts = [title, says ? undefined : name].filter((part) => part !== undefined);
  const tagged = tags.length === 0 ? '' : ` [${tags.join(', ')}]`;
  return `${parts.join(': ')}${tagged}`;
};

const rowOf = (job: JobLine): string[] => [
  String(job.number),
  job.stage ?? 'taken-in',
  promised(job),
  broken(what(job), 25),
  broken(job.owner ?? '', 13),
];

const sum = (page: JobPage, { skip = 0, putAway = false }: JobQuery): string => {
  const kind = putAway ? 'jobs put away' : 'jobs';
  if (page.jobs.length === page.total)
    return page.total === 1 ? `1 job${putAway ? ' put away' : ''}.` : `${page.total} ${kind}.`;
  const to = skip + page.jobs.length;
  const more = to < page.total ? ` The next: --skip ${to}.` : '';
  return `${skip + 1} to ${to} of ${page.total} ${kind}.${more}`;
};

/** A page of the list of jobs, at most 80 columns wide. */
export const printJobs = (page: JobPage, query: JobQuery): string =>
  [table(columns, page.jobs.map(rowOf)), wrap(sum(page, query))].join('\n');
