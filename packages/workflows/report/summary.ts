import type { Assessment } from '@fettle/engine/assessment/assessment.ts';
import { boundByAndWhy } from '@fettle/engine/assessment/boundBy.ts';
import { intervalEnd } from '@fettle/engine/assessment/intervalEnd.ts';
import { familyById } from '@fettle/engine/families/families.ts';
import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';
import { printDay } from '@fettle/engine/quantities/printShort.ts';
import { fedText, feedText, intervalDoubt, intervalText } from '../amounts.ts';
import type { AssessedJob } from '../assessJob.ts';
import type { Print } from '../printing.ts';

const flowSentence = ({ assessment }: AssessedJob, print: Print): string => {
  const { dutyPoint, turnoverPerS } = assessment;
  const turnover = Number((turnoverPerS * 3600).toPrecision(2));
  return `Clean, ${print(dutyPoint.flowM3PerS, 'flow')} flows at ${print(dutyPoint.headM, 'length')} of head: the tank's water ${turnover} times an hour.`;
};

/** Whether it wants cleaning before the day of the comparison. */
const isDueBefore = ({ cleaning, carries }: Assessment): boolean => cleaning.timeS < carries.day.dayS;

/** The served volume with its range, where some was drawn; it knows no more of the timed flow than the volume does. */
const servedText = ({ assessment, doubts }: AssessedJob, { system }: Print): string => {
  const value = assessment.carries.day.servedM3.normal;
  const printable = { value, dimension: 'volume', system } as const;
  if (doubts === undefined) return printQuantity(printable);
  const { low, high } = doubts.ranges['day.servedM3'];
  return printQuantity({ ...printable, low, high });
};

const carriesSentence = (job: AssessedJob, print: Print): string => {
  const { assessment, model } = job;
  const { day, clean } = assessment.carries;
  const { light, heavy } = day.servedM3;
  const volumes = `${servedText(job, print)} at a normal stock (light ${print(light, 'volume')}, heavy ${print(heavy, 'volume')})`;
  const fed = model.tank.feedKgPerS;
  const against = day.feedKgPerS >= fed ? 'which is enough for' : 'which is less than';
  const flow = print(day.flowM3PerS, 'flow');
  const when = isDueBefore(assessment)
    ? `Left uncleaned to ${printDay(day.dayS)}`
    : `On ${printDay(day.dayS)} after every bed was cleaned, nothing cleaned between`;
  return `${when}, ${flow} still flows and it carries ${feedText(day.feedKgPerS)} of dry feed, ${against} the ${fedText(model)} that the tank gets: ${volumes}. It is bound ${boundByAndWhy(day.bindingLimit)}. Clean it carries ${feedText(clean.feedKgPerS)}.`;
};

const cleaningSentence = ({ assessment, model }: AssessedJob): string => {
  const { timeS, beyond } = assessment.cleaning;
  if (assessment.dutyPoint.flowM3PerS <= 0) return 'No water flows.';
  if (beyond) return 'Nothing asks for cleaning within a year.';
  return `It wants cleaning after about ${intervalText(timeS, beyond)} (${intervalDoubt}): then ${intervalEnd(model, assessment)}.`;
};

const worstSentence = ({ findings }: AssessedJob): string => {
  const worst = findings.find(({ severity }) => severity === 'grave' || severity === 'marked');
  return worst ? `Worst fault: ${worst.says}` : 'No grave or marked fault was found.';
};

/** What is said first of a filter: flow, when it wants cleaning and what it carries in the order of time, its worst fault. */
export const summarySentences = (job: AssessedJob, print: Print): readonly string[] => {
  const { assessment } = job;
  if (assessment.beds.length === 0)
    return [flowSentence(job, print), 'There are no media in it yet, so it carries nothing.'];
  const inTime = [carriesSentence(job, print), cleaningSentence(job)];
  if (isDueBefore(assessment)) inTime.reverse();
  return [flowSentence(job, print), ...inTime, worstSentence(job)];
};

/** The filter, its family and its tank, as a title. */
export const filterTitle = ({ model }: AssessedJob, print: Print): string => {
  const family = familyById(model.filter.family)!.name;
  const title = model.filter.name === family ? family : `${model.filter.name}: ${family}`;
  return `${title}, on ${print(model.tank.volumeM3, 'volume')}`;
};
