import { levelEdge, levelPlace, roomSaid, siteSaid } from '@fettle/engine/assessment/site/siteSaid.ts';
import { said } from '@fettle/engine/wording/said.ts';
import type { Block } from '../content/document.ts';
import { length, pressure } from './quantities.ts';
import { heading, lastState, type Writer } from './writer.ts';

const pressuresTable = (writer: Writer): readonly Block[] => {
  const { pressures } = lastState(writer.source).assessment.site;
  if (pressures.length === 0) return [];
  return [
    {
      kind: 'table',
      id: 'pressures',
      caption: writer.say('table.pressures'),
      columns: [
        { head: writer.say('column.place'), align: 'left', share: 1.6 },
        { head: writer.say('column.above-surface'), align: 'right' },
        { head: writer.say('column.pressure'), align: 'right' },
        { head: writer.say('column.leak'), align: 'left', share: 1.1 },
      ],
      rows: pressures.map(({ part, heightM, gaugePa, leaks }) => [
        writer.say(`part.${part}`),
        writer.fact(length(heightM, 2)),
        writer.fact(pressure(gaugePa)),
        writer.fact(said(`site.leaks.${leaks}`)),
      ]),
    },
  ];
};

/** How high water stands in each part of an open box under the tank, running and stopped. */
const levelsTable = (writer: Writer): readonly Block[] => {
  const { site, layout } = lastState(writer.source).assessment;
  if (site.box === undefined) return [];
  return [
    {
      kind: 'table',
      id: 'levels',
      caption: writer.say('table.levels'),
      columns: [
        { head: writer.say('column.place'), align: 'left', share: 1.5 },
        { head: writer.say('column.running'), align: 'right' },
        { head: writer.say('column.stopped'), align: 'right' },
        { head: writer.say('column.edge'), align: 'right' },
        { head: writer.say('column.over'), align: 'left', share: 1.4 },
      ],
      rows: site.box.levels.map((level) => [
        writer.fact(levelPlace(layout, level)),
        writer.fact(length(level.runningM)),
        level.stoppedM === undefined ? '–' : writer.fact(length(level.stoppedM)),
        writer.fact(length(level.edgeM)),
        writer.fact(levelEdge(layout, level)),
      ]),
    },
  ];
};

/** Leak side, levels, water on the floor and current; nothing where there is nothing to tell. */
export const sitePart = (writer: Writer): readonly Block[] => {
  const { site } = lastState(writer.source).assessment;
  const sayings = [...(site.box === undefined ? [] : [roomSaid(site.box)]), ...siteSaid(site)];
  const tables = [...pressuresTable(writer), ...levelsTable(writer)];
  if (sayings.length + tables.length === 0) return [];
  return [
    heading(writer, 'site'),
    ...tables,
    ...(sayings.length === 0
      ? []
      : [{ kind: 'list', id: 'site', items: sayings.map((one) => writer.fact(one)) } as const]),
  ];
};
