import type { Assessment } from '@fettle/engine/assessment/assessment.ts';
import type { Jet, PartPressure, Spill } from '@fettle/engine/assessment/site/site.ts';
import { inTradeWords } from '@fettle/engine/reckonings/seenWords.ts';
import { engineEnglish } from '@fettle/engine/wording/english/english.ts';
import { said } from '@fettle/engine/wording/said.ts';
import { word, wordDuration } from '@fettle/engine/wording/word.ts';
import { inOneUnit, type Print } from '../printing.ts';
import type { ReportTable } from './reportTable.ts';

const LEAKS: Readonly<Record<PartPressure['leaks'], string>> = {
  'water-out': 'lets water out',
  'air-in': 'draws air in',
  neither: 'neither drips nor draws',
};

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
  const wording = { language: engineEnglish, units: print.system };
  return {
    columns: [
      { head: 'part' },
      { head: 'height', align: 'right' },
      { head: 'pressure', align: 'right' },
      { head: 'a leak' },
    ],
    rows: pressures.map((part) => [
      word(said(`part.${part.part}`), wording),
      height(part.heightM),
      pressure(part.gaugePa),
      LEAKS[part.leaks],
    ]),
  };
};

const CAUSES: Readonly<Record<Spill['cause'], string>> = {
  'intake-hose-off': 'Intake hose off at the filter',
  'outlet-hose-off-running': 'Outlet hose off, pump running',
  'outlet-hose-off-stopped': 'Outlet hose off, pump standing',
  'power-fails': 'Power fails',
};

const ENDS: Readonly<Record<Spill['endedBy'], string>> = {
  hole: 'down to the air hole',
  mouth: 'down to the mouth of the hose',
  edge: 'down to the edge that the tank runs over',
};

const spillLine = (spill: Spill, print: Print): string => {
  const { volumeM3, fallM, flowM3PerS, timeS, spareM3 } = spill;
  const timed =
    flowM3PerS === undefined || timeS === undefined
      ? ''
      : `, at first ${print(flowM3PerS, 'flow')}, so about ${wordDuration({ durationS: timeS }, { language: engineEnglish })}`;
  const room = spareM3 === undefined ? '' : `; sump or tray take up ${print(spareM3, 'volume')}`;
  return `${CAUSES[spill.cause]}: ${print(volumeM3, 'volume')} leave the tank, ${print(fallM, 'length')} ${ENDS[spill.endedBy]}${timed}${room}.`;
};

const jetLine = (jet: Jet, print: Print): string => {
  const { outlet, boreM, velocityMPerS, standsMPerS, reachM } = jet;
  const whose = outlet === 'outlet' ? 'The outlet' : `Outlet ${outlet.replace('outlet-', '')}`;
  const leaves = `${whose} sends a jet of ${print(boreM, 'length')} into the tank at ${print(velocityMPerS, 'velocity')}`;
  const stands = `${print(standsMPerS, 'velocity')}${jet.standsAssumed ? ` (${inTradeWords('from memory')})` : ''}`;
  return reachM === 0
    ? `${leaves}, no faster than the ${stands} that weak swimmers stand for long.`
    : `${leaves}; its middle is faster than the ${stands} that weak swimmers stand for long over ${print(reachM, 'length')}, in open water (a wall or the surface beside it carries it farther).`;
};

/** Water on the floor, and current in the tank, one sentence each. */
export const siteLines = ({ site }: Assessment, print: Print): readonly string[] => [
  ...site.spills.map((spill) => spillLine(spill, print)),
  ...site.jets.map((jet) => jetLine(jet, print)),
];
