import { fedSaid } from '@fettle/engine/assessment/fedSaid.ts';
import type { Model } from '@fettle/engine/model/model.ts';
import { printSpan } from '@fettle/engine/quantities/printShort.ts';
import { engineEnglish } from '@fettle/engine/wording/english/english.ts';
import { word } from '@fettle/engine/wording/word.ts';

const DAY_S = 86_400;

/** A number with so many figures that count; no sign between thousands, which would not be read again. */
export const figures = (value: number, count: number): string => String(Number(value.toPrecision(count)));

/** Dry feed a day in grams, in both systems: nobody weighs fish food in ounces. */
export const feedText = (kgPerS: number): string => `${figures(kgPerS * 1000 * DAY_S, 3)} g/d`;

/** The feed that the tank gets, with what it is worth where nobody stated it. */
export const fedText = (model: Model): string =>
  word(fedSaid(model), { language: engineEnglish, units: 'metric' });

/** A cleaning interval: two figures are more than it is known to. */
export const intervalText = (timeS: number, beyond: boolean): string =>
  beyond ? 'more than a year' : printSpan(timeS);

/** How well a cleaning interval is known. */
export const intervalDoubt = 'within a factor of three';

/** What is said of figures that stand without their ranges. */
export const rangesMissing =
  'These are the most likely figures; how sure they are is told by the assessment of the job.';

/** What is said of ranges that stand in brackets behind figures. */
export const rangesKey =
  'In brackets stands the range that holds eight of ten filters of which no more is known than of this one.';
