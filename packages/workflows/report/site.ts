import type { Assessment } from '@fettle/engine/assessment/assessment.ts';
import { levelEdge, levelPlace, roomSaid, siteSaid } from '@fettle/engine/assessment/site/siteSaid.ts';
import { engineEnglish } from '@fettle/engine/wording/english/english.ts';
import { type Fact, type Said, said } from '@fettle/engine/wording/said.ts';
import { word, wordFact } from '@fettle/engine/wording/word.ts';
import { inOneUnit, type Print } from '../printing.ts';
import type { ReportTable } from './reportTable.ts';

const inEnglish = (one: Said, print: Print): string =>
  word(one, { language: engineEnglish, units: print.system });

const placeInEnglish = (fact: Fact, print: Print): string =>
  wordFact(fact, { language: engineEnglish, units: print.system });

/** Which parts stand above and which below the air's pressure while the pump runs, as a table. */
export const pressureTable = ({ site }: Assessment, print: Print): ReportTable => {
  const { pressures } = site;
  const height = inOneUnit(
    print,
    'length',
    pressures.map(({ heightM }) => heightM),
  );
  const pressure = inOneUnit(
    print,
    'pressure',
    pressures.map(({ gaugePa }) => gaugePa),
  );
  return {
    columns: [
      { head: 'part' },
      { head: 'height', align: 'right' },
      { head: 'pressure', align: 'right' },
      { head: 'a leak' },
    ],
    rows: pressures.map((part) => [
      inEnglish(said(`part.${part.part}`), print),
      height(part.heightM),
      pressure(part.gaugePa),
      inEnglish(said(`site.leaks.${part.leaks}`), print),
    ]),
  };
};

/** How high water stands in each part of an open box under the tank, as a table; none without one. */
export const levelsTable = ({ site, layout }: Assessment, print: Print): ReportTable | undefined => {
  if (site.box === undefined) return undefined;
  const { levels } = site.box;
  const height = inOneUnit(
    print,
    'length',
    levels.flatMap(({ runningM, stoppedM, edgeM }) => [runningM, stoppedM ?? 0, edgeM]),
  );
  return {
    columns: [
      { head: 'water, over the floor' },
      { head: 'running', align: 'right' },
      { head: 'stopped', align: 'right' },
      { head: 'edge at', align: 'right' },
      { head: 'runs over' },
    ],
    rows: levels.map((level) => [
      placeInEnglish(levelPlace(layout, level), print),
      height(level.runningM),
      level.stoppedM === undefined ? '' : height(level.stoppedM),
      height(level.edgeM),
      placeInEnglish(levelEdge(layout, level), print),
    ]),
  };
};

/** Room in an open box, water on the floor, and current in the tank, one sentence each. */
export const siteLines = ({ site }: Assessment, print: Print): readonly string[] =>
  [...(site.box === undefined ? [] : [roomSaid(site.box)]), ...siteSaid(site)].map((one) =>
    inEnglish(one, print),
  );
