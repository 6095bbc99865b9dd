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

/** Kinds of part that take head, in words. */
export const partNames: Readonly<Record<HeadShare['part'], string>> = {
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
  Object.entries(partNames).flatMap(([part, label]) => {
    const entries = headBudget.filter((entry) => entry.part === part);
    if (entries.length === 0) return [];
    const headM = entries.reduce((sum, entry) => sum + entry.headM, 0);
    return [{ label, headM, share: entries.reduce((sum, entry) => sum + entry.share, 0) }];
  });

/** Whether heights cancel, so that only loss takes head, or water is really lifted, in a sentence. */
export const loopSentence = ({ assessment, model }: AssessedJob, print: Print): string => {
  const lift = headByPart(assessment).find(({ label }) => label === partNames.lift);
  if (lift)
    return `Water is really lifted by ${print(lift.headM, 'length')}: the outlet, or the edge that it falls over, stands above the tank.`;
  const others = model.filter.outletBranches?.some(({ liftM }) => liftM > 0) ?? false;
  return `A closed loop under water: heights cancel, however deep the filter stands, and all of the head is loss.${others ? ' That is so by the way of the first outlet; others stand above the tank.' : ''}`;
};

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
