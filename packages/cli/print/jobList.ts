import type { JobLine, JobPage, JobQuery } from '@fettle/store/contract/jobs.ts';
import { table, wrap } from './layout.ts';
import { today } from './moments.ts';

const columns = [
  { head: 'No.', width: 6, align: 'right' },
  { head: 'Stage', width: 11 },
  { head: 'Promised', width: 10 },
  { head: 'Job', width: 29 },
  { head: 'Owner', width: 16 },
] as const;

const done: readonly (string | undefined)[] = ['handed-back', 'closed'];

const promised = ({ promised: day, stage }: JobLine): string => {
  if (day === undefined) return '';
  return day < today() && !done.includes(stage) ? `${day} late` : day;
};

/** A sign at which a long word may be broken takes the place of none: the column breaks it by itself. */
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

const what = ({ title, filterName, family, tags }: JobLine): string => {
  const name = [title, filterName ?? (title === undefined ? family : undefined)].filter(
    (part) => part !== undefined,
  );
  const tagged = tags.length === 0 ? [] : [`[${tags.join(', ')}]`];
  return [[...new Set(name)].join(': '), ...tagged].join(' ');
};

const rowOf = (job: JobLine): string[] => [
  String(job.number),
  job.stage ?? 'taken-in',
  promised(job),
  broken(what(job), 28),
  broken(job.owner ?? '', 15),
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
