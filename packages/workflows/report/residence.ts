import type { Residence, ResidenceCurve } from '@fettle/engine/assessment/residence/residence.ts';
import { residenceSaid } from '@fettle/engine/assessment/residence/residenceSaid.ts';
import { engineEnglish } from '@fettle/engine/wording/english/english.ts';
import { word } from '@fettle/engine/wording/word.ts';
import type { AssessedJob } from '../assessJob.ts';
import { type Print, share } from '../printing.ts';
import type { ReportTable } from './reportTable.ts';

/** A time in a filter, s, to two figures: the model's volumes are no better known. */
const seconds = (timeS: number): string => `${Number(timeS.toPrecision(2))} s`;

/** How long water stays in the filter, and how much of it there is; nothing where no water flows. */
export const residenceSentences = (
  { residence }: Pick<AssessedJob, 'residence'>,
  { system }: Print,
): readonly string[] =>
  residence === undefined
    ? []
    : residenceSaid(residence).map((one) => word(one, { language: engineEnglish, units: system }));

const row = (name: string, part: number, curve: Omit<ResidenceCurve, 'points'>): readonly string[] => [
  name,
  share(part),
  seconds(curve.meanS),
  seconds(curve.t10S),
  seconds(curve.t50S),
  seconds(curve.t90S),
  curve.morrillIndex.toFixed(1),
];

/** Times of the whole filter and of each of its routes. */
export const residenceTable = ({ whole, routes }: Residence): ReportTable => ({
  columns: [
    { head: 'route' },
    { head: 'share', align: 'right' },
    { head: 'mean', align: 'right' },
    { head: 'a tenth', align: 'right' },
    { head: 'half', align: 'right' },
    { head: 'nine tenths', align: 'right' },
    { head: 'Morrill', align: 'right' },
  ],
  rows: [row('all water', 1, whole), ...routes.map((route) => row(route.id, route.share, route))],
});
