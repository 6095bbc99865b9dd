import { rangesToGoBy } from '@fettle/engine/doubt/doubtOf.ts';
import { doubtSaid, inputName } from '@fettle/engine/doubt/doubtSaid.ts';
import type { OutcomeName } from '@fettle/engine/doubt/outcome.ts';
import type { ServedEffect } from '@fettle/engine/doubt/servedEffects.ts';
import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';
import { engineEnglish } from '@fettle/engine/wording/english/english.ts';
import { word, wordFact } from '@fettle/engine/wording/word.ts';
import { figures, intervalText } from '../amounts.ts';
import type { AssessedJob } from '../assessJob.ts';
import { type Print, share } from '../printing.ts';
import type { ReportTable } from './reportTable.ts';

type Printing = (value: number, print: Print) => string;

const DAY_S = 86_400;
const YEAR_S = 365 * DAY_S;

const flow: Printing = (value, print) => print(value, 'flow');
const volume: Printing = (value, { system }) =>
  printQuantity({ value, dimension: 'volume', system, digits: 2 });
const feed: Printing = (value) => `${figures(1000 * DAY_S * value, 2)} g/d`;
const span: Printing = (value) => intervalText(value, value >= YEAR_S);
const oxygen: Printing = (value) => `${(1000 * value).toFixed(1)} mg/L`;

const ROWS: readonly (readonly [name: string, figure: OutcomeName, prints: Printing])[] = [
  ['flow, clean', 'flowM3PerS', flow],
  ['flow, end of interval', 'intervalEnd.flowM3PerS', flow],
  ['cleaning interval', 'intervalS', span],
  ['feed carried, clean', 'clean.feedKgPerS', feed],
  ['feed carried, end of interval', 'intervalEnd.feedKgPerS', feed],
  ['served at a normal stock, clean', 'clean.servedM3', volume],
  ['served, day of the comparison', 'day.servedM3', volume],
  ['served, end of interval', 'intervalEnd.servedM3', volume],
  ['oxygen behind the filter, then', 'intervalEnd.outletOxygenKgPerM3', oxygen],
];

/** Each figure with its range, with the timed flow looked at where there is one; nothing where none was drawn. */
export const doubtTable = ({ doubts }: AssessedJob, print: Print): ReportTable | undefined => {
  if (doubts === undefined) return undefined;
  const ranges = rangesToGoBy(doubts);
  return {
    columns: [
      { head: 'figure' },
      { head: 'low (P10)', align: 'right' },
      { head: 'middle (P50)', align: 'right' },
      { head: 'high (P90)', align: 'right' },
    ],
    rows: ROWS.map(([name, figure, prints]) => {
      const { low, median, high } = ranges[figure];
      return [name, prints(low, print), prints(median, print), prints(high, print)];
    }),
  };
};

/** The figures of that table with their ranges, to be drawn against their middles; those without a middle are left out. */
export const rangedFigures = ({ doubts }: AssessedJob, print: Print) => {
  if (doubts === undefined) return [];
  const ranges = rangesToGoBy(doubts);
  return ROWS.map(([label, figure, prints]) => {
    const { low, median, high } = ranges[figure];
    return { label, low, median, high, printed: `${prints(low, print)} to ${prints(high, print)}` };
  }).filter(({ median }) => median > 0);
};

/** How sure the served volume is, what makes its range and what to measure next. */
export const doubtSentences = ({ doubts, model }: AssessedJob, { system }: Print): readonly string[] =>
  doubts === undefined
    ? []
    : doubtSaid(doubts, model).map((one) => word(one, { language: engineEnglish, units: system }));

/** Effects below this share of the variance are left out of the table. */
const LEAST_EFFECT = 0.01;

/** What each input makes of the range of the served volume, alone and together with others. */
export const effectsTable = (
  effects: readonly ServedEffect[],
  { model, doubts }: Pick<AssessedJob, 'model' | 'doubts'>,
  { system }: Print,
): ReportTable => ({
  columns: [{ head: 'input' }, { head: 'alone', align: 'right' }, { head: 'in all', align: 'right' }],
  rows: effects
    .filter(({ total }) => total >= LEAST_EFFECT)
    .map((effect) => [
      wordFact(inputName(effect, model), { language: engineEnglish, units: system }),
      share(doubts?.inputs.find(({ id }) => id === effect.id)?.share ?? 0),
      share(Math.min(1, effect.total)),
    ]),
});
