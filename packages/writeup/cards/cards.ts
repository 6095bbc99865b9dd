import type { CardFigure } from '@fettle/drawing/factCard.ts';
import type { Assessment } from '@fettle/engine/assessment/assessment.ts';
import type { Fact } from '@fettle/engine/wording/said.ts';
import { changeCost } from '../parts/changes.ts';
import { flows, hasInterval, hasMechanical, interval, missed } from '../parts/interval.ts';
import { timedTests } from '../parts/measured.ts';
import { computedFlow, duration, feed, flow, money, volume } from '../parts/quantities.ts';
import { totalsOf } from '../parts/quote/lines.ts';
import { inBoth } from '../parts/summary.ts';
import { lastState, tense, type Writer } from '../parts/writer.ts';

/** One idea with its figures, before it is drawn. */
export interface FactCard {
  /** Short name, which its files bear. */
  readonly id: string;
  readonly headline: string;
  readonly figures: readonly CardFigure[];
  readonly note: string;
}

interface Shown {
  readonly label: string;
  readonly fact: Fact;
  /** What its bar is as long as; none where no bars are drawn. */
  readonly size?: number;
}

/** Figures with bars against the greatest of them; none where all are written alike, and none for one alone. */
const figuresOf = (writer: Writer, shown: readonly Shown[]): readonly CardFigure[] => {
  const greatest = Math.max(...shown.map(({ size = 0 }) => size));
  const isSame = new Set(shown.map(({ fact }) => writer.fact(fact))).size === 1;
  const hasBars = !isSame && greatest > 0 && shown.every(({ size }) => size !== undefined);
  return shown.map(({ label, fact, size = 0 }) => ({
    label,
    ...inBoth(writer, fact),
    ...(hasBars ? { bar: size / greatest } : {}),
  }));
};

/** A figure of the clean filter packed as before and, where it is changed, as planned or left. */
const beforeAndAfter = (
  writer: Writer,
  of: (assessment: Assessment) => Omit<Shown, 'label'>,
): readonly CardFigure[] => {
  const { found, after } = writer.source;
  if (after === undefined)
    return figuresOf(writer, [{ label: writer.say('card.state.alone'), ...of(found.assessment) }]);
  return figuresOf(writer, [
    { label: writer.say('card.state.before'), ...of(found.assessment) },
    { label: writer.say(`column.state.${tense(writer.source)}`), ...of(after.assessment) },
  ]);
};

/** Flows in the order of the work, each with how it is known: the steps are credited apart. */
const flowCard = (writer: Writer): readonly FactCard[] => {
  const timed = timedTests(writer).filter(({ state }) => state !== 'clean-empty');
  const { assessment, model } = lastState(writer.source);
  const { dutyPoint } = assessment;
  const shown: Shown[] = timed.map((test) => ({
    label: writer.say('card.timed', { state: writer.say(`state.${test.state}`) }),
    fact: flow(test.flowM3PerS, test.doubtM3PerS),
    size: test.flowM3PerS,
  }));
  const isOpen = !timed.some(({ state }) => state === 'as-left') && dutyPoint.flowM3PerS > 0;
  const computed: Shown = {
    label: writer.say(`card.computed.${tense(writer.source)}`),
    fact: computedFlow(dutyPoint.flowM3PerS, model),
    size: dutyPoint.flowM3PerS,
  };
  const all = [...shown, ...(isOpen ? [computed] : [])].slice(-3);
  if (all.length === 0) return [];
  const note = writer.say(
    isOpen ? (shown.length > 0 ? 'card.flow.both' : 'card.flow.computed') : 'card.flow.timed',
  );
  return [{ id: 'flow', headline: writer.say('card.flow'), figures: figuresOf(writer, all), note }];
};

const bypassCard = (writer: Writer): readonly FactCard[] => {
  if (!hasMechanical(lastState(writer.source).assessment)) return [];
  return [
    {
      id: 'bypass',
      headline: writer.say('card.bypass'),
      figures: beforeAndAfter(writer, (assessment) => ({
        fact: missed(assessment),
        ...(flows(assessment) && hasMechanical(assessment) ? { size: assessment.bypass.mechanical } : {}),
      })),
      note: writer.say('card.bypass.note'),
    },
  ];
};

const carriesCard = (writer: Writer): readonly FactCard[] => {
  const { day } = lastState(writer.source).assessment.carries;
  return [
    {
      id: 'carries',
      headline: writer.say('card.carries'),
      figures: beforeAndAfter(writer, ({ carries }) => ({
        fact: feed(carries.day.feedKgPerS),
        size: carries.day.feedKgPerS,
      })),
      note: writer.say('card.carries.note', {
        day: duration(day.dayS),
        heavy: volume(day.servedM3.heavy),
        light: volume(day.servedM3.light),
      }),
    },
  ];
};

/** What the change costs once: what was quoted where that is whole, and media and parts. */
const changeCard = (writer: Writer): readonly FactCard[] => {
  if (writer.source.after === undefined) return [];
  const { total, currency } = changeCost(writer.source);
  const totals = totalsOf(writer);
  const isWhole = totals !== undefined && totals.missing.length === 0;
  return [
    {
      id: 'change',
      headline: writer.say('card.change'),
      figures: figuresOf(writer, [
        { label: writer.say('card.change.parts'), fact: money(total, currency) },
        ...(isWhole
          ? [{ label: writer.say('card.change.quoted'), fact: money(totals.total, totals.currency) }]
          : []),
      ]),
      note: writer.say(isWhole ? 'card.change.note.quoted' : 'card.change.note'),
    },
  ];
};

const yearCard = (writer: Writer): readonly FactCard[] => [
  {
    id: 'year',
    headline: writer.say('card.year'),
    figures: beforeAndAfter(writer, ({ cost }) => ({
      fact: money(cost.perYear, cost.currency),
      size: cost.perYear,
    })),
    note: writer.say('card.year.note'),
  },
];

/** How sure a time until cleaning is; where none was found there is nothing to be sure of. */
const cleaningNote = (writer: Writer): string => {
  const { found, after } = writer.source;
  const states = [found.assessment, ...(after === undefined ? [] : [after.assessment])];
  if (states.some(hasInterval)) return writer.say('doubt.interval');
  return writer.say(states.some(flows) ? 'cleaning.beyond' : 'cleaning.no-flow');
};

const cleaningCard = (writer: Writer): readonly FactCard[] => [
  {
    id: 'cleaning',
    headline: writer.say('card.cleaning'),
    figures: beforeAndAfter(writer, (assessment) => ({
      fact: interval(assessment),
      ...(flows(assessment) ? { size: assessment.cleaning.timeS } : {}),
    })),
    note: cleaningNote(writer),
  },
];

/** The cards of a job, in the order in which they are told: six at most. */
export const factCards = (writer: Writer): readonly FactCard[] =>
  [flowCard, bypassCard, carriesCard, changeCard, yearCard, cleaningCard].flatMap((card) => card(writer));

/** What one card says, line by line. */
export const cardLines = (writer: Writer, { headline, figures, note }: FactCard): readonly string[] => [
  `${headline}.`,
  ...figures.map(({ label, metric, us }) =>
    writer.say('card.read', { label, figure: us === undefined ? metric : `${metric} (${us})` }),
  ),
  note,
];

/** The cards to read out, one paragraph each. */
export const cardsText = (writer: Writer): string =>
  factCards(writer)
    .map((card) => cardLines(writer, card).join('\n'))
    .join('\n\n')
    .concat('\n');
