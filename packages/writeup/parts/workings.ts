import type { HeadShare } from '@fettle/engine/assessment/assessment.ts';
import type { Block } from '../content/document.ts';
import { assumedTable } from './assumed.ts';
import { rangesPart } from './doubt.ts';
import { duration, feed, length, money, share, velocity } from './quantities.ts';
import { heading, lastState, paragraph, placeIn, type Writer } from './writer.ts';

const routesTable = (writer: Writer): Block => {
  const state = lastState(writer.source);
  const nameOf = (bed: string): string => {
    const medium = state.assessment.beds.find(({ id }) => id === bed)?.medium;
    return medium === undefined ? bed : writer.name(state.model.media[medium]!.name);
  };
  return {
    kind: 'table',
    id: 'routes',
    caption: writer.say('table.routes'),
    columns: [
      { head: writer.say('column.route'), align: 'left', share: 3 },
      { head: writer.say('column.share'), align: 'right', share: 0.7 },
      { head: writer.say('column.contact'), align: 'right' },
    ],
    rows: state.assessment.routes.map(({ id, share: part, beds, past, contactTimeS }) => {
      const meets = [
        ...beds.map(nameOf),
        ...past.map((way) => writer.say('route.past', { place: placeIn(writer, state, way) })),
      ];
      const text = id === 'rest' ? writer.say('route.rest') : meets.join(', ') || writer.say('route.nothing');
      return [text, writer.fact(share(part)), contactTimeS > 0 ? writer.fact(duration(contactTimeS)) : '–'];
    }),
  };
};

/** What each kind of part takes of the pump's head, the greatest first. */
const headRows = (writer: Writer): readonly (readonly string[])[] => {
  const { headBudget } = lastState(writer.source).assessment;
  const kinds = [...new Set(headBudget.map(({ part }) => part))];
  const sum = (part: HeadShare['part'], of: (entry: HeadShare) => number): number =>
    headBudget.filter((entry) => entry.part === part).reduce((total, entry) => total + of(entry), 0);
  return kinds
    .map((part) => ({ part, headM: sum(part, (one) => one.headM), share: sum(part, (one) => one.share) }))
    .toSorted((one, other) => other.headM - one.headM)
    .map((entry) => [
      writer.say(`head.${entry.part}`),
      writer.fact(length(entry.headM, 2)),
      writer.fact(share(entry.share)),
    ]);
};

const headTable = (writer: Writer): Block => {
  const { dutyPoint } = lastState(writer.source).assessment;
  return {
    kind: 'table',
    id: 'head',
    caption: writer.say('table.head', { head: length(dutyPoint.headM, 2) }),
    columns: [
      { head: writer.say('column.part'), align: 'left', share: 2 },
      { head: writer.say('column.head'), align: 'right' },
      { head: writer.say('column.share'), align: 'right' },
    ],
    rows: headRows(writer),
  };
};

const bedsTable = (writer: Writer): readonly Block[] => {
  const state = lastState(writer.source);
  if (state.assessment.beds.length === 0) return [];
  return [
    {
      kind: 'table',
      id: 'beds',
      caption: writer.say('table.beds', { day: duration(state.assessment.carries.day.dayS) }),
      columns: [
        { head: writer.say('column.bed'), align: 'left', share: 2 },
        { head: writer.say('column.speed'), align: 'right', share: 1.4 },
        { head: writer.say('column.catch'), align: 'right' },
        { head: writer.say('column.filled'), align: 'right' },
        { head: writer.say('column.active'), align: 'right' },
      ],
      rows: state.assessment.beds.map((bed) => [
        placeIn(writer, state, bed.id),
        writer.fact(velocity(bed.velocityMPerS)),
        writer.fact(share(bed.catchFraction)),
        writer.fact(share(bed.dirtFraction)),
        writer.fact(share(bed.carbonFactor * bed.cleaningFactor)),
      ]),
    },
    ...paragraph('beds-key', [writer.say('beds.key')], 'soft'),
  ];
};

/** What each bed that is replaced costs, how often it is, and what decides that. */
const mediaCosts = (writer: Writer): readonly Block[] => {
  const state = lastState(writer.source);
  const { cost } = state.assessment;
  const items = cost.media.map(({ bed, perYear, because, everyS }) =>
    writer.say(`cost.media.${because}`, {
      bed: placeIn(writer, state, bed),
      cost: money(perYear, cost.currency),
      time: duration(everyS),
    }),
  );
  return items.length === 0 ? [] : [{ kind: 'list', id: 'media-costs', items }];
};

const warningList = (writer: Writer): readonly Block[] => {
  const state = lastState(writer.source);
  const items = state.assessment.warnings.map(({ place, said }) =>
    writer.say('warning.at', { place: placeIn(writer, state, place), says: said }),
  );
  return items.length === 0
    ? []
    : [heading(writer, 'warnings', 3), { kind: 'list', id: 'warnings', items } as const];
};

/** Where the figures come from: ways of the water, head, beds, what was assumed, warnings, edition of the models. */
export const workingsPart = (writer: Writer): readonly Block[] => {
  const { assessment } = lastState(writer.source);
  return [
    heading(writer, 'workings'),
    ...paragraph('workings-how', [
      writer.say('workings.how', { edition: assessment.edition }),
      writer.say('workings.oxidised', { feed: feed(assessment.carries.day.feedKgPerS) }),
    ]),
    routesTable(writer),
    headTable(writer),
    ...bedsTable(writer),
    ...mediaCosts(writer),
    ...rangesPart(writer),
    ...assumedTable(writer),
    ...warningList(writer),
  ];
};
