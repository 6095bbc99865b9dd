import type { Assessment, HeadShare } from '@fettle/engine/assessment/assessment.ts';
import { placeName } from '@fettle/engine/assessment/placeName.ts';
import type { AssessedJob } from '../assessJob.ts';
import { type Print, share } from '../printing.ts';
import type { ReportTable } from './reportTable.ts';

const mediumOf = ({ model, assessment }: AssessedJob, id: string): string => {
  const bed = assessment.beds.find((one) => one.id === id);
  return bed ? model.media[bed.medium]!.name : id;
};

/** Every route with its share, what it meets and for how long. */
export const routesTable = (job: AssessedJob): ReportTable => {
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
  return {
    columns: [
      { head: 'route' },
      { head: 'share', align: 'right' },
      { head: 'meets' },
      { head: 'contact', align: 'right' },
    ],
    rows,
  };
};

/** How much of the water misses the media of each stage, in a sentence. */
export const bypassSentence = ({ assessment }: AssessedJob): string => {
  const parts = Object.entries(assessment.bypass).map(([stage, value]) =>
    assessment.beds.some((bed) => bed.stage === stage)
      ? `${stage} ${share(value)}`
      : `${stage} all (no bed of it)`,
  );
  return `Water that misses a stage: ${parts.join(', ')}.`;
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

/** Where the pump's head goes, by kind of part. */
export const headTable = ({ headBudget }: Assessment, print: Print): ReportTable => ({
  columns: [
    { head: 'where the head goes' },
    { head: 'head', align: 'right' },
    { head: 'share', align: 'right' },
  ],
  rows: Object.entries(PARTS).flatMap(([part, label]) => {
    const entries = headBudget.filter((entry) => entry.part === part);
    if (entries.length === 0) return [];
    const head = entries.reduce((sum, entry) => sum + entry.headM, 0);
    const of = entries.reduce((sum, entry) => sum + entry.share, 0);
    return [[label, print(head, 'length'), share(of)]];
  }),
});
