import type { PatternOutcome } from '@fettle/engine/assessment/forecast/compare.ts';
import type { CleaningPattern } from '@fettle/engine/assessment/forecast/pattern.ts';
import type { Block } from '../../content/document.ts';
import { ownersFlow } from '../care/jug.ts';
import { hasMechanical } from '../interval.ts';
import { comparedFlow, money, share } from '../quantities.ts';
import { lastState, type Writer } from '../writer.ts';

/** A pattern of cleaning in words. */
export const patternWords = (writer: Writer, pattern: CleaningPattern): string => {
  if (pattern.kind === 'flow') return writer.say('pattern.flow', { share: share(1 - pattern.lossShare) });
  if (pattern.kind !== 'parts') return writer.say(`pattern.${pattern.kind}`);
  return pattern.rules
    .map(({ what, everyDays }) => writer.say(`pattern.part.${what}`, { days: everyDays }))
    .join(', ');
};

const namesMechanical = ({ kind, ...of }: CleaningPattern): boolean =>
  kind === 'parts' && 'rules' in of && of.rules.some(({ what }) => what === 'mechanical');

/** What each pattern comes to; one that names mechanical media only where there are any. */
export const outcomesTold = ({ source }: Pick<Writer, 'source'>): readonly PatternOutcome[] => {
  const { assessment, outlook } = lastState(source);
  return outlook.outcomes().filter(({ pattern }) => hasMechanical(assessment) || !namesMechanical(pattern));
};

/** What each pattern of cleaning gives, and what it costs in work and media. */
export const patternsTable = (writer: Writer): Block => {
  const { model, outlook } = lastState(writer.source);
  const { currency } = model.money;
  // Where the clean flow was timed, all that is computed is held against that.
  const perComputed = ownersFlow(writer).flowM3PerS / outlook.forecast().days.flowM3PerS[0]!;
  const columns = ['mean-flow', 'least-flow', 'work', 'late', 'media-a-year'];
  return {
    kind: 'table',
    id: 'forecast-patterns',
    caption: writer.say('table.forecast-patterns'),
    columns: [
      { head: writer.say('column.pattern'), align: 'left', share: 2 },
      ...columns.map((column) => ({ head: writer.say(`column.${column}`), align: 'right' }) as const),
    ],
    rows: outcomesTold(writer).map((outcome) => [
      patternWords(writer, outcome.pattern),
      writer.fact(comparedFlow(perComputed * outcome.meanFlowM3PerS)),
      writer.fact(share(outcome.leastFlowRatio)),
      writer.fact(Math.round(outcome.workDaysPerYear)),
      writer.fact(Math.round(outcome.overdueDaysPerYear)),
      writer.fact(money(outcome.mediaPerYear, currency)),
    ]),
  };
};
