import type { Measurements } from '../model/model.ts';
import { portBoreM, roundArea } from './geometry.ts';
import type { Chamber, DimensionLine, Family, Layout, Measurement } from './layout.ts';
import { measurementReader, screenSlot } from './measuring.ts';

const measurements = [
  {
    key: 'columnBore',
    label: 'inner diameter of the column',
    kind: 'length',
    least: 0.02,
    most: 0.6,
    how: 'Measure across the inside of the column.',
  },
  {
    key: 'columnHeight',
    label: 'clear height from the spreader to the screen',
    kind: 'length',
    least: 0.1,
    most: 2.5,
    how: 'Measure inside from the plate or the jets that the water comes in by up to the screen under the lid.',
  },
  {
    key: 'spreaderArea',
    label: 'open area of the spreader',
    kind: 'area',
    least: 0.000005,
    most: 0.05,
    how: 'Count the holes or jets that the water comes in by, measure one, and multiply.',
  },
  screenSlot,
  {
    key: 'screenArea',
    label: 'open area of the screen',
    kind: 'area',
    least: 0.00002,
    most: 0.2,
    how: 'Count the slots or meshes of the screen, measure one, and multiply.',
  },
] as const satisfies readonly Measurement[];

type Reader = (key: (typeof measurements)[number]['key']) => number;

/** Height under the spreader and over the screen, m; from memory. */
const baseM = 0.025;
const headM = 0.03;

/** Open share of the spreader as its plate would have it; more holes than plate are taken as all open. */
const openShare = (size: Reader): number => Math.min(1, size('spreaderArea') / roundArea(size('columnBore')));

function chamberOf(size: Reader): Chamber {
  const bore = size('columnBore');
  const depthM = size('columnHeight');
  return {
    id: 'column',
    label: 'column',
    holds: ['grains'],
    from: 'base',
    to: 'under-screen',
    areaM2: roundArea(bore),
    depthM,
    flow: 'up',
    listedInWaterOrder: false,
    gap: { thicknessM: 0, widthM: Math.PI * bore, lengthM: depthM },
    floorOpenFraction: openShare(size),
    widthM: bore,
    moved: 'carried-by-water',
    screenSlotM: size('screenSlot'),
    box: { x: 0, y: baseM, width: bore, height: depthM },
  };
}

function dimensionsOf(size: Reader): readonly DimensionLine[] {
  const bore = size('columnBore');
  const top = baseM + size('columnHeight');
  return [
    { measurement: 'columnBore', from: { x: 0, y: 0 }, to: { x: bore, y: 0 } },
    { measurement: 'columnHeight', from: { x: bore, y: baseM }, to: { x: bore, y: top } },
  ];
}

function drawingOf(size: Reader): Layout['drawing'] {
  const bore = size('columnBore');
  const height = baseM + size('columnHeight') + headM;
  const low = baseM / 2;
  const high = height - headM / 2;
  const inlet = { x: -0.14, y: low };
  const outlet = { x: bore + 0.05, y: high };
  const port = Math.min(portBoreM, 0.7 * baseM);
  return {
    housing: [{ x: 0, y: 0, width: bore, height }],
    pump: { x: -0.1, y: low - 0.02, width: 0.045, height: 0.04 },
    walls: [{ x: 0, y: height - headM, width: bore, height: 0.001 }],
    stubs: [
      { side: 'intake', boreM: port, along: [inlet, { x: 0, y: low }] },
      { side: 'outlet', boreM: port, along: [{ x: bore, y: high }, outlet] },
    ],
    inlet,
    outlet,
    dimensions: dimensionsOf(size),
    mainPath: [inlet, { x: bore / 2, y: low }, { x: bore / 2, y: high }, outlet],
  };
}

function layOut(given: Measurements): Layout {
  const size = measurementReader(measurements, given);
  const bore = size('columnBore');
  const top = baseM + size('columnHeight');
  return {
    spaces: [
      { id: 'base', label: 'space under the spreader', box: { x: 0, y: 0, width: bore, height: baseM } },
      {
        id: 'under-screen',
        label: 'water over the bed',
        box: { x: 0, y: top - 0.001, width: bore, height: 0.001 },
      },
      { id: 'head', label: 'space over the screen', box: { x: 0, y: top, width: bore, height: headM } },
    ],
    chambers: [chamberOf(size)],
    openings: [
      {
        id: 'screen',
        label: 'screen',
        from: 'under-screen',
        to: 'head',
        areaM2: size('screenArea'),
        bypass: false,
        at: { x: bore / 2, y: top },
      },
    ],
    leaks: [],
    weirs: [],
    inletSpace: 'base',
    outletSpace: 'head',
    pumpPlace: 'first',
    drawing: drawingOf(size),
  };
}

/** Column in which rising water carries a bed of sand. */
export const fluidisedBed: Family = {
  id: 'fluidised-bed',
  name: 'fluidised bed',
  says: 'A pump presses water through a spreader at the foot of a column; it rises through a bed of sand that it carries, and leaves through a screen at the top.',
  measurements,
  assumedShutoffHeadM: 1.2,
  hoses: { intake: true, outlet: true },
  alterations: ['hose-bore', 'shorten-hose', 'lower-outlet'],
  forbidden: [
    'Never start it into the tank after a stop of hours: flush the column to a bucket first.',
    'Never run it without a check valve or a siphon break ahead of the spreader: sand that falls back blocks spreader and pump.',
    'Never fit a screen that is wider than the smallest grain.',
    'Never put dirty water in: a pre-filter belongs ahead of it.',
  ],
  layOut,
};
