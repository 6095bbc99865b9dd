import { placeName } from '@fettle/engine/assessment/placeName.ts';
import { tankSaid } from '@fettle/engine/assessment/tank/tankSaid.ts';
import { engineEnglish } from '@fettle/engine/wording/english/english.ts';
import { word } from '@fettle/engine/wording/word.ts';
import { figures } from '../amounts.ts';
import { type Print, share } from '../printing.ts';
import type { TankJob } from '../tankJob.ts';
import { shownDays } from './forecast.ts';
import type { ReportTable } from './reportTable.ts';

const milligrams = (kgPerM3: number): string =>
  (1000 * kgPerM3).toFixed(Math.abs(kgPerM3) < 9.995e-3 ? 2 : 1);

/** The tank's water on sensible days. */
export const tankTable = ({ forecast: { days } }: TankJob): ReportTable => ({
  columns: ['day', 'TAN', 'NO2-N', 'NO3-N', 'NH3-N', 'oxygen', 'CaCO3', 'pH', 'bacteria'].map((head) => ({
    head,
    align: 'right',
  })),
  rows: shownDays(days.day.length - 1).map((day) => [
    String(day),
    milligrams(days.ammoniaKgNPerM3[day]!),
    milligrams(days.nitriteKgNPerM3[day]!),
    milligrams(days.nitrateKgNPerM3[day]!),
    (1000 * days.unionizedKgNPerM3[day]!).toFixed(3),
    milligrams(days.oxygenKgPerM3[day]!),
    figures(1000 * days.alkalinityKgPerM3[day]!, 3),
    days.pH[day]!.toFixed(1),
    share(Math.min(days.firstRatio[day]!, days.secondRatio[day]!)),
  ]),
});

/** What the columns of that table are. */
export const tankKey =
  'Levels in mg/L: TAN is ammonia and ammonium, NH3-N the part of it that is un-ionized, all nitrogen as N; alkalinity as CaCO3. Bacteria: the scarcer of both kinds against those that the job’s own load feeds in the long run. Days are means: after a meal ammonia is higher.';

/** How each bed of a ripe filter may be replaced. */
export const stagedTable = ({ forecast, staged }: TankJob): ReportTable => {
  const { model, compiled } = forecast;
  const beds = compiled.beds.map(({ id, chamber, medium }) => ({ id, chamber, medium: medium.id }));
  return {
    columns: [
      { head: 'bed' },
      { head: 'bacteria', align: 'right' },
      { head: 'at once', align: 'right' },
      { head: 'weeks apart', align: 'right' },
      { head: 'TAN', align: 'right' },
      { head: 'NO2-N', align: 'right' },
    ],
    rows: staged.map((one) => [
      placeName(model, { layout: compiled.layout, beds }, one.bed),
      share(one.share),
      one.parts === undefined ? 'less than 1/8' : one.parts === 1 ? 'all' : `1/${one.parts}`,
      one.parts === undefined || one.parts === 1 ? '–' : String(one.weeksApart),
      milligrams(one.peakAmmoniaKgNPerM3),
      milligrams(one.peakNitriteKgNPerM3),
    ]),
  };
};

/** What the columns of that table are. */
export const stagedKey =
  'How much of each bed of the ripe filter may be replaced at once by new media of its kind, and how many weeks apart, so that ammonia and nitrite stay under 0.1 mg N/L (or rise by no more than 0.025 where they are above it anyway): one bed at a time, the others left alone. TAN and NO2-N: the highest on that way, mg/L. Test on days 1, 3, 5, 7 and 14, and wait longer where a test shows anything.';

/** What matters of a tank's forecast, in sentences. */
export const tankSentencesOf = (
  { forecast }: TankJob,
  { system }: Pick<Print, 'system'>,
): readonly string[] =>
  tankSaid(forecast).map((one) => word(one, { language: engineEnglish, units: system }));
