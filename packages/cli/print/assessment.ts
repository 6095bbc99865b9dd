import { BOUND_BY, ENDED_BY } from '@fettle/engine/assessment/assessment.ts';
import { testDimensions } from '@fettle/engine/assessment/findings/measured.ts';
import { placeName } from '@fettle/engine/assessment/placeName.ts';
import { familyById } from '@fettle/engine/families/families.ts';
import { feedText, intervalDoubt, intervalText, rangesMissing } from '@fettle/workflows/amounts.ts';
import type { AssessedJob } from '@fettle/workflows/assessJob.ts';
import { type Output, type Print, printer, share } from '../output.ts';
import { days } from './amounts.ts';
import { printAssumed } from './assumed.ts';
import { printBeds } from './beds.ts';
import { printFindings } from './findings.ts';
import { heading, wrap } from './layout.ts';
import { printHeadBudget, printRoutes } from './water.ts';

const flowSentence = ({ assessment }: AssessedJob, print: Print): string => {
  const { dutyPoint, turnoverPerS } = assessment;
  const turnover = Number((turnoverPerS * 3600).toPrecision(2));
  return `Clean, ${print(dutyPoint.flowM3PerS, 'flow')} flows at ${print(dutyPoint.headM, 'length')} of head: the tank's water ${turnover} times an hour.`;
};

const carriesSentence = ({ assessment, model }: AssessedJob, print: Print): string => {
  const { day, clean } = assessment.carries;
  const { light, normal, heavy } = day.servedM3;
  const volumes = `${print(normal, 'volume')} at a normal stock (light ${print(light, 'volume')}, heavy ${print(heavy, 'volume')})`;
  const fed = model.tank.feedKgPerS;
  const against = day.feedKgPerS >= fed ? 'which is enough for' : 'which is less than';
  return `${days(day.dayS)} after every bed was cleaned, nothing cleaned between, it carries ${feedText(day.feedKgPerS)} of dry feed, ${against} the ${feedText(fed)} that the tank gets: ${volumes}. It is bound ${BOUND_BY[day.bindingLimit]}. Clean it carries ${feedText(clean.feedKgPerS)}.`;
};

const cleaningSentence = ({ assessment, model }: AssessedJob): string => {
  const { timeS, beyond, endedBy, place, flowRatio } = assessment.cleaning;
  if (assessment.dutyPoint.flowM3PerS <= 0) return 'No water flows.';
  if (beyond) return 'Nothing asks for cleaning within a year.';
  const what = ENDED_BY[endedBy](placeName(model, assessment, place ?? ''));
  return `It wants cleaning after about ${intervalText(timeS, beyond)} (${intervalDoubt}): then ${what}, and the flow at the tank is ${share(flowRatio)} of clean.`;
};

const worstSentence = ({ findings }: AssessedJob): string => {
  const worst = findings.find(({ severity }) => severity === 'grave' || severity === 'marked');
  return worst ? `Worst fault: ${worst.says}` : 'No grave or marked fault was found.';
};

/** What is said first of a filter: flow, what it carries, when it wants cleaning, its worst fault. */
export const summary = (job: AssessedJob, print: Print): string => {
  const { assessment } = job;
  if (assessment.beds.length === 0)
    return [flowSentence(job, print), 'There are no media in it yet, so it carries nothing.']
      .map((text) => wrap(text))
      .join('\n');
  return [flowSentence(job, print), carriesSentence(job, print), cleaningSentence(job), worstSentence(job)]
    .map((text) => wrap(text))
    .join('\n');
};

const bypass = ({ assessment }: AssessedJob): string => {
  const parts = Object.entries(assessment.bypass).map(([stage, value]) =>
    assessment.beds.some((bed) => bed.stage === stage)
      ? `${stage} ${share(value)}`
      : `${stage} all (no bed of it)`,
  );
  return wrap(`Water that misses a stage: ${parts.join(', ')}.`);
};

const chemical = ({ assessment, model }: AssessedJob, print: Print): string =>
  assessment.chemical
    .map(({ bed, substance, capacityKg, openFraction, takenFraction, lastsS }) => {
      const lasts = Number.isFinite(lastsS)
        ? `full after about ${intervalText(lastsS, false)}`
        : 'never full here';
      const holds = `holds ${print(capacityKg, 'mass')} of ${substance.replace('-', ' ')}`;
      return wrap(
        `${placeName(model, assessment, bed)}: ${lasts}, ${intervalDoubt} (${holds}, dirt leaves ${share(openFraction)} of it open, takes ${share(takenFraction)} of what comes into the tank).`,
        2,
      );
    })
    .join('\n');

const cost = ({ assessment }: AssessedJob): string => {
  const { currency, perYear, energyPerYear, energyJPerYear, mediaPerYear, pricePerYear } = assessment.cost;
  const sum = (value: number): string => `${Math.round(value)} ${currency}`;
  const clogged = assessment.cost.media.some((line) => line.because === 'clogs');
  const doubt = clogged
    ? ` Media that are replaced because they clog cost as the interval says, ${intervalDoubt}.`
    : '';
  return wrap(
    `Running it costs ${sum(perYear)} a year: electricity ${sum(energyPerYear)} (${Math.round(energyJPerYear / 3.6e6)} kWh), media ${sum(mediaPerYear)}, price spread over its life ${sum(pricePerYear)}.${doubt}`,
  );
};

const VERDICTS = {
  agrees: 'they agree within their doubts',
  differs: 'they differ by more than their doubts',
  'below-clean':
    'a dirty filter gives less than clean, so this is no contradiction: it shows what cleaning is worth',
  'not-compared': 'there is nothing computed to hold it against',
} as const;

const tests = (job: AssessedJob, print: Print): string =>
  job.comparisons
    .map(({ test, measured, doubt, computed, verdict, used }) => {
      const kind = testDimensions[test.kind];
      const whose = used ? 'stated or assumed' : 'computed clean';
      const ours = computed === undefined ? '' : `, ${whose} ${print(computed, kind)}`;
      const taken = used ? '; the measured figure is used' : '';
      return wrap(
        `${test.kind}, ${test.state}: measured ${print(measured, kind)} ± ${print(doubt, kind)}${ours}: ${VERDICTS[verdict]}${taken}.`,
        2,
      );
    })
    .join('\n');

/** The filter, its family and its tank, as a title. */
export const filterTitle = ({ model }: AssessedJob, print: Print): string => {
  const family = familyById(model.filter.family)!.name;
  const title = model.filter.name === family ? family : `${model.filter.name}: ${family}`;
  return `${title}, on ${print(model.tank.volumeM3, 'volume')}`;
};

const section = (output: Output, title: string, text: string): string[] =>
  text === '' ? [] : [heading(output, title), text];

/** The assessment as a technician reads it, at most 80 columns wide. */
export const printAssessment = (job: AssessedJob, output: Output): string => {
  const print = printer(output.system);
  const { assessment, model } = job;
  return [
    wrap(filterTitle(job, print)),
    summary(job, print),
    ...section(output, 'Findings, worst first', printFindings(job, output.system)),
    ...section(output, 'Routes', `${printRoutes(job)}\n${bypass(job)}`),
    ...section(output, 'Head', printHeadBudget(assessment, print)),
    ...section(output, `Beds, ${days(assessment.carries.day.dayS)} after cleaning`, printBeds(job, print)),
    ...section(output, 'Chemical media', chemical(job, print)),
    ...section(output, 'Bench tests', tests(job, print)),
    ...section(
      output,
      'Claims',
      job.claims.map((claim) => wrap(`${claim.verdict}: “${claim.says}” ${claim.detail}`, 2)).join('\n'),
    ),
    ...section(output, 'Money', cost(job)),
    ...section(output, 'Assumed, with wide doubt', printAssumed(model, print)),
    ...section(
      output,
      'Warnings',
      assessment.warnings
        .map((warning) => wrap(`${placeName(model, assessment, warning.place)}: ${warning.says}`, 2))
        .join('\n'),
    ),
    '',
    wrap(`Model edition ${assessment.edition}. ${rangesMissing}`),
  ].join('\n');
};
