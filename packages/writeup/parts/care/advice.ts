import type { PatternOutcome } from '@fettle/engine/assessment/forecast/compare.ts';
import { HIDDEN_FROM } from '@fettle/engine/assessment/intervalEnd.ts';
import { isDrivenByAir } from '@fettle/engine/planning/handling.ts';
import { said } from '@fettle/engine/wording/said.ts';
import type { Block } from '../../content/document.ts';
import { flowWay } from '../flowWay.ts';
import { foretold, isEventful, monthDays } from '../forecast/foretold.ts';
import { outcomesTold, patternWords } from '../forecast/patterns.ts';
import { hasInterval } from '../interval.ts';
import { duration, money, share, volume } from '../quantities.ts';
import { heading, lastState, paragraph, type Writer } from '../writer.ts';
import { bagVolumes } from './bagVolumes.ts';
import { doubtful, markedIn, ownersFlow } from './jug.ts';
import { jugTimes } from './jugTimes.ts';

/** More days of work a year than an owner keeps up: once a week (our own choice). */
const MOST_WORK = 52;

/** The calendar that an owner would keep instead: the least work among those that are never late, else the least late. */
const besideIt = (writer: Writer): PatternOutcome | undefined =>
  outcomesTold(writer)
    .filter(({ pattern }) => pattern.kind === 'parts')
    .toSorted(
      (one, other) =>
        one.overdueDaysPerYear - other.overdueDaysPerYear || one.workDaysPerYear - other.workDaysPerYear,
    )[0];

const besideSentence = (writer: Writer): string => {
  const beside = besideIt(writer);
  if (beside === undefined) return '';
  const late = Math.round(beside.overdueDaysPerYear);
  return writer.say(late > 0 ? 'care.advice.late' : 'care.advice.as-well', {
    pattern: patternWords(writer, beside.pattern),
    work: Math.round(beside.workDaysPerYear),
    late,
  });
};

const usualOutcome = (writer: Writer): PatternOutcome =>
  outcomesTold(writer).find(({ pattern }) => pattern.kind === 'usual')!;

/** Which pattern is advised, what it comes to, and why no other. */
const adviceSentences = (writer: Writer): readonly string[] => {
  const { model, assessment, outlook } = lastState(writer.source);
  if (!hasInterval(assessment)) {
    const { flowRatio } = outlook.forecast().days;
    const facts = { share: share(Math.min(...flowRatio)), days: flowRatio.length - 1 };
    return [writer.say('care.advice.beyond', facts)];
  }
  const usual = usualOutcome(writer);
  const work = Math.round(usual.workDaysPerYear);
  return [
    writer.say('care.advice.interval', { interval: duration(assessment.cleaning.timeS) }),
    work === 0
      ? ''
      : writer.say(usual.mediaPerYear > 0 ? 'care.advice.work' : 'care.advice.work.alone', {
          work,
          media: money(usual.mediaPerYear, model.money.currency),
          share: share(usual.leastFlowRatio),
        }),
    besideSentence(writer),
    work > MOST_WORK ? writer.say('care.advice.too-often', { cure: said('cure.clogs-soon') }) : '',
  ];
};

/** What a vessel or a bag shows at a share of the clean flow. */
const shownAt = (writer: Writer): { readonly given: string; readonly at: (ratio: number) => string } => {
  const clean = ownersFlow(writer);
  if (flowWay(writer) === 'bag') {
    const [bag] = bagVolumes(clean);
    return {
      given: writer.fact(duration(bag!.catchS)),
      at: (ratio) => writer.fact(doubtful(bag!.cleanM3 * ratio, bag!.doubtM3 * ratio, 'volume')),
    };
  }
  const [jug] = jugTimes(clean, markedIn(writer));
  return {
    given: writer.fact(volume(jug!.volumeM3, 3)),
    at: (ratio) => writer.fact(doubtful(jug!.cleanS / ratio, jug!.doubtS / ratio, 'time')),
  };
};

/** What the jug should show by when. */
const jugMonths = (writer: Writer): readonly Block[] => {
  if (!isEventful(writer)) return [];
  const { assessment, outlook } = lastState(writer.source);
  const { flowRatio } = outlook.forecast().days;
  const { given, at } = shownAt(writer);
  const row = (when: string, ratio: number): readonly string[] => [
    when,
    at(ratio),
    writer.fact(share(ratio)),
  ];
  return [
    {
      kind: 'table',
      id: 'care-jug-months',
      caption: writer.say(`table.jug-months.${flowWay(writer)}`, { given }),
      columns: [
        { head: writer.say('column.when'), align: 'left', share: 1.6 },
        { head: writer.say(`column.shown.${flowWay(writer)}`), align: 'right' },
        { head: writer.say('column.of-clean'), align: 'right' },
      ],
      rows: [
        row(writer.say('forecast.clean'), 1),
        ...(hasInterval(assessment)
          ? [row(writer.say('care.before-cleaning'), usualOutcome(writer).leastFlowRatio)]
          : []),
        ...monthDays.map((day) => row(writer.say('care.uncleaned', { day }), flowRatio[day]!)),
      ],
    },
  ];
};

/** That dirt in the media hardly shows in the test of the flow, and what to look for where it is low even so. */
const hiddenSentence = (writer: Writer): string => {
  const { outlook, model } = lastState(writer.source);
  if (outlook.forecast().days.flowRatio[monthDays.at(-1)!]! < HIDDEN_FROM) return '';
  return writer.say(`care.jug.hidden.${isDrivenByAir(model) ? 'air' : 'pump'}`);
};

/** How often it wants cleaning, why so, and what the jug should show by when. */
export const advicePart = (writer: Writer): readonly Block[] =>
  foretold(writer) === 'all'
    ? [
        heading(writer, 'care-pattern'),
        ...paragraph('care-pattern', adviceSentences(writer)),
        ...jugMonths(writer),
        ...paragraph('care-jug-hidden', [hiddenSentence(writer)]),
      ]
    : [];
