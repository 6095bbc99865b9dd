import type { Assessment, HeadShare } from '@fettle/engine/assessment/assessment.ts';
import { placeName } from '@fettle/engine/assessment/placeName.ts';
import type { AssessedJob } from '@fettle/workflows/assessJob.ts';
import { type Print, share } from '../output.ts';
import { table } from './layout.ts';

const ROUTE_COLUMNS = [
  { head: 'route', width: 9 },
  { head: 'share', width: 7, align: 'right' },
  { head: 'meets', width: 46 },
  { head: 'contact', width: 9, align: 'right' },
] as const;

const mediumOf = ({ model, assessment }: AssessedJob, id: string): string => {
  const bed = assessment.beds.find((one) => one.id === id);
  return bed ? model.media[bed.medium]!.name : id;
};

/** Every route with its share, what it meets and for how long. */
export const printRoutes = (job: AssessedJob): string => {
  const { model, assessment } = job;
  const rows = assessment.routes.map((route) => {
    const meets = [
      ...route.beds.map((id) => mediumOf(job, id)),
      ...route.past.map((id) => `past ${placeName(model, assessment, id)}`),
    ];
    const contact = route.contactTimeS > 0 ? `${Number(route.contactTimeS.toPrecision(2))} s` : '-';
    return [
      route.id,
      share(route.share),
      route.id === 'rest' ? 'many small ways' : meets.join(', ') || 'no media',
      contact,
    ];
  });
  return table(ROUTE_COLUMNS, rows);
};

const PARTS: Readonly<Record<HeadShare['part'], string>> = {
  'intake-hose': 'intake hose',
  'outlet-hose': 'outlet hose',
  fittings: 'fittings, entrance and exit',
  barbs: 'barbs and other ends',
  openings: 'openings inside',
  beds: 'clean beds',
  lift: 'lift',
};

const HEAD_COLUMNS = [
  { head: 'where the head goes', width: 30 },
  { head: 'head', width: 12, align: 'right' },
  { head: 'share', width: 9, align: 'right' },
] as const;

/** Where the pump's head goes, by kind of part. */
export const printHeadBudget = ({ headBudget }: Assessment, print: Print): string => {
  const rows = Object.entries(PARTS).flatMap(([part, label]) => {
    const entries = headBudget.filter((entry) => entry.part === part);
    if (entries.length === 0) return [];
    const head = entries.reduce((sum, entry) => sum + entry.headM, 0);
    const of = entries.reduce((sum, entry) => sum + entry.share, 0);
    return [[label, print(head, 'length'), share(of)]];
  });
  return table(HEAD_COLUMNS, rows);
};
