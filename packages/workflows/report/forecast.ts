import type { PatternOutcome } from '@fettle/engine/assessment/forecast/compare.ts';
import type { FlowLoss } from '@fettle/engine/assessment/forecast/forecast.ts';
import { patternText } from '@fettle/engine/assessment/forecast/pattern.ts';
import { printSpan } from '@fettle/engine/quantities/printShort.ts';
import { figures, intervalDoubt } from '../amounts.ts';
import type { ForecastJob } from '../forecastJob.ts';
import { inOneUnit, type Print, share } from '../printing.ts';
import type { ReportTable } from './reportTable.ts';

/** Days that a table of so many days shows: close at first, then wider apart, and the last. */
export const shownDays = (last: number): readonly number[] => {
  const steps = [0, 1, 3, 7, 14, 30, 45, 60, 90, 120, 150, 180, 240, 300, 365, 450, 540, 630, 730];
  return [...steps.filter((day) => day < last), last];
};

/** A bed as a column names it: its chamber and its medium. */
export const bedName = ({ compiled, model }: ForecastJob, id: string): string => {
  const bed = compiled.beds.find((one) => one.id === id);
  if (bed !== undefined) {
    const label = compiled.layout.chambers.find((chamber) => chamber.id === bed.chamber)?.label;
    return `${model.media[bed.medium.id]!.name} in the ${label ?? bed.chamber}`;
  }
  return compiled.layout.weirs.find((weir) => weir.id === id)?.label ?? id;
};

const gramsOf = (kg: number): string => figures(kg * 1000, 2);

/** The filter on sensible days: flow, what its beds take of the head, what misses the media, dirt. */
export const forecastTable = (job: ForecastJob, print: Print): ReportTable => {
  const { days } = job.forecast;
  const flow = inOneUnit(print, 'flow', days.flowM3PerS);
  const rows = shownDays(days.day.length - 1).map((day) => [
    String(day),
    flow(days.flowM3PerS[day]!),
    share(days.flowRatio[day]!),
    print(days.headM.beds?.[day] ?? 0, 'length'),
    share(days.bypass.mechanical[day]!),
    gramsOf(days.beds.reduce((sum, bed) => sum + bed.dirtKg[day]!, 0)),
    share(Math.min(1, ...days.beds.map((bed) => bed.flowRatio[day]!))),
  ]);
  return {
    columns: [
      { head: 'day', align: 'right' },
      { head: 'flow', align: 'right' },
      { head: 'of clean', align: 'right' },
      { head: 'head in beds', align: 'right' },
      { head: 'past mech.', align: 'right' },
      { head: 'dirt g', align: 'right' },
      { head: 'least bed', align: 'right' },
    ],
    rows,
  };
};

/** What the columns of that table are. */
export const forecastKey =
  'Figures are those before a cleaning on that day. Past mech.: share of the flow that meets no mechanical medium. Dirt: dry solids in all beds. Least bed: water through the bed that has lost most, against clean.';

/** The beds at the end of the forecast, in water order. */
export const forecastBedsTable = (job: ForecastJob, print: Print): ReportTable => {
  const rows = job.forecast.days.beds.map((bed) => [
    bedName(job, bed.id),
    gramsOf(bed.dirtKg.at(-1)!),
    share(bed.filledFraction.at(-1)!),
    gramsOf(bed.matKg.at(-1)!),
    share(bed.flowRatio.at(-1)!),
    print(bed.headM.at(-1)!, 'length'),
  ]);
  return {
    columns: [
      { head: 'bed' },
      { head: 'dirt g', align: 'right' },
      { head: 'pores full', align: 'right' },
      { head: 'mat g', align: 'right' },
      { head: 'water', align: 'right' },
      { head: 'head', align: 'right' },
    ],
    rows,
  };
};

const lossWord = (lossShare: number): string =>
  lossShare === 0.5 ? 'a half' : lossShare === 0.25 ? 'a quarter' : 'a third';

const lossText = (job: ForecastJob, { lossShare, timeS, place }: FlowLoss): string | undefined => {
  if (timeS === undefined) return undefined;
  const bed = place === undefined ? '' : `, most of it in the ${bedName(job, place)}`;
  return `${lossWord(lossShare)} after ${printSpan(timeS)}${bed}`;
};

const lossSentence = (job: ForecastJob): string => {
  const { losses, days } = job.forecast;
  const last = days.day.length - 1;
  const told = losses.map((loss) => lossText(job, loss)).filter((text) => text !== undefined);
  if (told.length === 0)
    return `Within ${last} days the flow at the tank is not down by a quarter; at the least it is ${share(Math.min(...days.flowRatio))} of clean.`;
  const never = losses.filter(({ timeS }) => timeS === undefined).map(({ lossShare }) => lossWord(lossShare));
  const rest = never.length === 0 ? '' : `; not by ${never.join(' or ')} within ${last} days`;
  return `The flow at the tank is down by ${told.join('; by ')}${rest}.`;
};

const endSentence = (job: ForecastJob): string => {
  const { firstEnd, days } = job.forecast;
  if (firstEnd === undefined)
    return `Within ${days.day.length - 1} days the water through no bed is down by a third, and no overflow opens.`;
  const after = `after ${printSpan(firstEnd.timeS)} (${intervalDoubt})`;
  return firstEnd.endedBy === 'overflow'
    ? `An overflow opens ${after}: ${bedName(job, firstEnd.place)}.`
    : `The water through a bed is first down by a third ${after}: ${bedName(job, firstEnd.place)} decides.`;
};

const overflowSentence = ({ forecast }: ForecastJob): string[] => {
  const { overflowOpensS, firstEnd } = forecast;
  if (overflowOpensS === undefined || firstEnd?.endedBy === 'overflow') return [];
  return [`An overflow opens after ${printSpan(overflowOpensS)}: dirty water then goes past the media.`];
};

const matSentence = (job: ForecastJob): string[] => {
  const { beds } = job.forecast.days;
  return beds.flatMap((bed) => {
    const day = bed.matKg.findIndex((mass) => mass > 0);
    return day < 0 ? [] : [`From day ${day} a mat of dirt lies on the ${bedName(job, bed.id)}.`];
  });
};

const solidsSentence = ({ forecast }: ForecastJob): string => {
  const { madeKg, changedKg, elsewhereKg, decayedKg, cleanedKg, heldKg } = forecast.account;
  const parts = [
    [heldKg, 'lie in the beds at the end'],
    [decayedKg, 'rot there'],
    [cleanedKg, 'are cleaned out'],
    [changedKg, 'go with the water changes'],
    [elsewhereKg, 'stay in other filters'],
  ] as const;
  const told = parts.filter(([kg]) => kg > 5e-5).map(([kg, does]) => `${gramsOf(kg)} g ${does}`);
  return `Of ${gramsOf(madeKg)} g of dry solids that are made, ${told.join(', ') || 'nothing is caught'}.`;
};

const planted = ({ model }: ForecastJob): string[] =>
  model.tank.planted
    ? [
        'What plants shed is not counted: in a planted tank it may be as much as what feeding makes, and the days half as long.',
      ]
    : [];

/** What matters of a forecast, in sentences. */
export const forecastSentences = (job: ForecastJob): readonly string[] => {
  const { days, flowM3PerS } = { days: job.forecast.days, flowM3PerS: job.forecast.days.flowM3PerS[0]! };
  if (flowM3PerS <= 0) return ['No water flows.'];
  if (days.beds.length === 0) return ['There are no media in it yet, so nothing is caught.'];
  return [
    lossSentence(job),
    endSentence(job),
    ...overflowSentence(job),
    ...matSentence(job),
    solidsSentence(job),
    ...planted(job),
  ];
};

/** What each pattern of cleaning comes to. */
export const patternsTable = ({ outcomes, model }: ForecastJob, print: Print): ReportTable => {
  const flow = inOneUnit(
    print,
    'flow',
    outcomes.map(({ meanFlowM3PerS }) => meanFlowM3PerS),
  );
  const rows = outcomes.map((outcome: PatternOutcome) => [
    patternText(outcome.pattern),
    flow(outcome.meanFlowM3PerS),
    share(outcome.leastFlowRatio),
    share(outcome.leastBedFlowRatio),
    figures(outcome.workDaysPerYear, 3),
    figures(outcome.mediaPerYear, 3),
    gramsOf(outcome.meanHeldKg),
    gramsOf(outcome.rottedKgPerYear),
  ]);
  return {
    columns: [
      { head: 'cleaning' },
      { head: 'mean flow', align: 'right' },
      { head: 'least', align: 'right' },
      { head: 'bed', align: 'right' },
      { head: 'days/a', align: 'right' },
      { head: `${model.money.currency}/a`, align: 'right' },
      { head: 'dirt g', align: 'right' },
      { head: 'rots g', align: 'right' },
    ],
    rows,
  };
};

/** What the columns of that table are. */
export const patternsKey =
  'Least: flow at the tank at its least, against clean; bed: water through the bed that loses most. Days/a: days a year on which something is cleaned; how long each takes is not known. Media bought a year; dirt held on average; dry solids that rot in the beds a year.';
