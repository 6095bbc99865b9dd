import type { Assessment, HeadShare } from '@fettle/engine/assessment/assessment.ts';
import { placeName } from '@fettle/engine/assessment/placeName.ts';
import { printContact } from '@fettle/engine/quantities/printShort.ts';
import type { AssessedJob } from '../assessJob.ts';
import { inOneUnit, type Print, share } from '../printing.ts';
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
    const contact = route.contactTimeS > 0 ? printContact(route.contactTimeS) : '-';
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

/** What one kind of part takes of the pump's head. */
export interface HeadOfPart {
  readonly label: string;
  readonly headM: number;
  /** Share of the pump's head at the duty point, 0 to 1. */
  readonly share: number;
}

/** Where the pump's head goes, by kind of part. */
export const headByPart = ({ headBudget }: Pick<Assessment, 'headBudget'>): readonly HeadOfPart[] =>
  Object.entries(PARTS).flatMap(([part, label]) => {
    const entries = headBudget.filter((entry) => entry.part === part);
    if (entries.length === 0) return [];
    const headM = entries.reduce((sum, entry) => sum + entry.headM, 0);
    return [{ label, headM, share: entries.reduce((sum, entry) => sum + entry.share, 0) }];
  });

/** Where the pump's head goes, as a table. */
export const headTable = (assessment: Assessment, print: Print): ReportTable => {
  const parts = headByPart(assessment);
  const head = inOneUnit(
    print,
    'length',
    parts.map(({ headM }) => headM),
  );
  return {
    columns: [
      { head: 'where the head goes' },
      { head: 'head', align: 'right' },
      { head: 'share', align: 'right' },
    ],
    rows: parts.map((part) => [part.label, head(part.headM), share(part.share)]),
  };
};
