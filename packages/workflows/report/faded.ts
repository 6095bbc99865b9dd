import type { RankedQuestion } from '@fettle/engine/elimination/questions.ts';
import type { Question } from '@fettle/engine/elimination/trials.ts';
import { engineEnglish } from '@fettle/engine/wording/english/english.ts';
import { quantity } from '@fettle/engine/wording/facts.ts';
import { type Said, said } from '@fettle/engine/wording/said.ts';
import { word } from '@fettle/engine/wording/word.ts';
import type { FadedCase } from '../fadedFlow.ts';
import { inOneUnit, type Print } from '../printing.ts';
import type { ReportTable } from './reportTable.ts';

/** Below so many sets of causes the shares are those of a handful of cases. */
const FEW = 60;
/** A question that settles less than this is not worth its time. */
const WORTH_ASKING = 0.02;

const codeOf = (question: Question): string => {
  switch (question.kind) {
    case 'look':
      return `question.${question.sign}`;
    case 'trial':
      return `trial.${question.trial}`;
    case 'shutoff':
      return 'question.shutoff';
  }
};

const text = (saying: Said, { system }: Print): string =>
  word(saying, { language: engineEnglish, units: system });

/** A chance in whole per cent: it is known to no more. */
export const chanceText = (chance: number): string =>
  chance > 0 && chance < 0.01 ? 'under 1 %' : `${Math.round(100 * chance)} %`;

/** What is to be done for an answer, in one sentence. */
export const questionText = ({ question }: RankedQuestion, print: Print): string =>
  text(said(codeOf(question)), print);

/** A cause whose share is this part of the first one's is about as likely: the shares start from memory. */
const ABOUT_AS_LIKELY = 0.75;

/** What most likely lies behind it, or the two that do; nothing where no cause can. */
const chiefSaid = ({ causes: [chief, second], faded }: FadedCase['found']): readonly Said[] => {
  if (chief === undefined) return [];
  const cause = said(`cause.${chief.cause}`);
  if (faded === 'back') return [said('faded.was', { cause })];
  if (second === undefined || second.mainShare < ABOUT_AS_LIKELY * chief.mainShare)
    return [said('faded.chief', { cause })];
  return [said('faded.chief-of-two', { cause, other: said(`cause.${second.cause}`) })];
};

/** How far the flow has faded, what most likely lies behind it, and what these figures rest on. */
export const fadedSentences = ({ readings, found }: FadedCase, print: Print): readonly string[] => {
  const before = readings.flowNow.value / found.leftRatio;
  const last = readings.done.at(-1)?.flowAfter.value ?? readings.flowNow.value;
  const isComputed = found.faded === 'not' && readings.flowBefore === undefined;
  const how = said(`faded.${found.faded}${isComputed ? '.computed' : ''}`, {
    share: { share: found.faded === 'back' ? last / before : found.leftRatio },
    ...(found.faded === 'yes'
      ? { now: quantity(readings.flowNow.value, 'flow'), before: quantity(before, 'flow') }
      : {}),
  });
  const what = chiefSaid(found);
  return [
    how,
    ...(found.explained ? what : [said('faded.unexplained')]),
    ...(readings.flowBefore === undefined ? [said('faded.computed-before')] : []),
    ...(found.effective < FEW && found.faded !== 'not' ? [said('faded.few')] : []),
  ].map((saying) => text(saying, print));
};

/** What the shares start from. */
export const fadedFootnote = (print: Print): string => text(said('faded.from-memory'), print);

const rangeText = ({ low, high }: { readonly low: number; readonly high: number }, print: Print): string => {
  const flow = inOneUnit(print, 'flow', [high]);
  const [from, to] = [flow(low), flow(high)];
  return from === to ? to : `${from.replace(/ .*$/, '')} to ${to}`;
};

/** Causes with their chances, most likely first; those that cannot be behind it are left out. */
export const causeTable = ({ found }: FadedCase, print: Print): ReportTable => ({
  columns: [
    { head: 'cause' },
    { head: 'takes most', align: 'right' },
    { head: 'is there', align: 'right' },
    { head: 'flow once cured alone', align: 'right' },
  ],
  rows: found.causes
    .filter(({ presentShare }) => presentShare > 0)
    .map(({ cause, mainShare, presentShare, flowCuredM3PerS }) => [
      text(said(`cause.${cause}`), print),
      chanceText(mainShare),
      chanceText(presentShare),
      flowCuredM3PerS === undefined ? '' : rangeText(flowCuredM3PerS, print),
    ]),
});

/** Questions that are worth their time, best first. */
export const questionsWorthAsking = ({ found }: FadedCase): readonly RankedQuestion[] =>
  found.questions.filter(({ settles }) => settles >= WORTH_ASKING).slice(0, 5);
