import type { Measurements } from '../model/model.ts';
import type { Drive } from '../model/pump.ts';
import { innerWallM } from './geometry.ts';
import type { Chamber, DimensionLine, Family, Layout, Measurement, Opening } from './layout.ts';
import {
  checkValveInAirLine,
  type DrawnLift,
  drawLift,
  liftDrawing,
  liftTubeMeasurements,
  liftTubeOf,
} from './liftTube.ts';
import { measurementReader, screenSlot } from './measuring.ts';

const measurements = [
  {
    key: 'innerWidth',
    label: 'inner width of the chamber',
    kind: 'length',
    least: 0.03,
    most: 1.5,
    how: 'Measure inside the chamber from left to right, without the lift tube.',
  },
  {
    key: 'innerDepth',
    label: 'inner depth front to back',
    kind: 'length',
    least: 0.03,
    most: 1.5,
    how: 'Measure inside the chamber from front to back.',
  },
  {
    key: 'innerHeight',
    label: 'height of the water in the chamber',
    kind: 'length',
    least: 0.05,
    most: 1.5,
    how: 'Measure from the floor of the chamber up to the water in it.',
  },
  {
    key: 'inletArea',
    label: 'open area of the screen in',
    kind: 'area',
    least: 0.00005,
    most: 0.5,
    how: 'Count the slots that water comes in by, measure one, and multiply.',
  },
  {
    key: 'outletArea',
    label: 'open area of the screen out',
    kind: 'area',
    least: 0.00005,
    most: 0.5,
    how: 'Count the slots that water leaves by, measure one, and multiply.',
  },
  screenSlot,
  ...liftTubeMeasurements,
] as const satisfies readonly Measurement[];

type Reader = (key: (typeof measurements)[number]['key']) => number;

/** Width of the shaft for the lift tube beside its bore, and how high the chamber's floor stands, m. */
const shaftRoomM = 0.02;
const floorM = 0.02;

/** Depth of the tank's water that is drawn before the chamber, m. */
const besideM = 0.05;

const shaftOf = (size: Reader): { readonly x: number; readonly width: number } => ({
  x: size('innerWidth') + innerWallM,
  width: size('tubeBore') + shaftRoomM,
});

function chamberOf(size: Reader): Chamber {
  const width = size('innerWidth');
  const depth = size('innerDepth');
  const depthM = size('innerHeight');
  return {
    id: 'carriers',
    label: 'chamber of the carriers',
    holds: ['carriers'],
    from: 'over-carriers',
    to: 'under-carriers',
    areaM2: width * depth,
    depthM,
    flow: 'down',
    listedInWaterOrder: true,
    gap: { thicknessM: 0, widthM: 2 * (width + depth), lengthM: depthM },
    floorOpenFraction: 1,
    widthM: Math.min(width, depth),
    moved: 'stirred',
    screenSlotM: size('screenSlot'),
    box: { x: 0, y: floorM, width, height: depthM },
  };
}

function openingsOf(size: Reader): readonly Opening[] {
  const top = floorM + size('innerHeight');
  return [
    {
      id: 'screen-in',
      label: 'screen in',
      from: 'tank-side',
      to: 'over-carriers',
      areaM2: size('inletArea'),
      bypass: false,
      at: { x: 0, y: top + 0.01 },
    },
    {
      id: 'screen-out',
      label: 'screen out',
      from: 'under-carriers',
      to: 'shaft',
      areaM2: size('outletArea'),
      bypass: false,
      at: { x: size('innerWidth'), y: floorM / 2 },
    },
  ];
}

function dimensionsOf(size: Reader, lift: DrawnLift): readonly DimensionLine[] {
  const shaft = shaftOf(size);
  const right = shaft.x + shaft.width;
  const top = floorM + size('innerHeight');
  const air: DimensionLine = {
    measurement: 'airDepth',
    from: { x: right, y: lift.airY },
    to: { x: right, y: lift.waterLevelY },
  };
  return [
    { measurement: 'innerWidth', from: { x: 0, y: 0 }, to: { x: size('innerWidth'), y: 0 } },
    { measurement: 'innerHeight', from: { x: 0, y: floorM }, to: { x: 0, y: top } },
    ...(lift.airLine ? [air] : []),
  ];
}

function drawingOf(size: Reader, drive: Drive): Layout['drawing'] {
  const width = size('innerWidth');
  const shaft = shaftOf(size);
  const top = floorM + size('innerHeight');
  const x = shaft.x + shaft.width / 2;
  const lift = drawLift(size, { x, footY: 0.005, airY: 0.025, aboveY: top + 0.02, turnsTo: 'right', drive });
  const entry = top + 0.01;
  const inlet = { x: -besideM, y: entry };
  return {
    housing: [{ x: 0, y: 0, width: shaft.x + shaft.width, height: lift.topY }],
    openTop: true,
    ...liftDrawing(lift),
    walls: [{ x: width, y: floorM, width: innerWallM, height: lift.topY - floorM }],
    stubs: [lift.stub],
    inlet,
    outlet: lift.outlet,
    dimensions: dimensionsOf(size, lift),
    mainPath: [
      inlet,
      { x: width / 2, y: entry },
      { x: width / 2, y: floorM / 2 },
      { x, y: floorM / 2 },
      lift.mouth,
      lift.outlet,
    ],
  };
}

function layOut(given: Measurements, drive: Drive = 'air-lift'): Layout {
  const size = measurementReader(measurements, given);
  const width = size('innerWidth');
  const shaft = shaftOf(size);
  const top = floorM + size('innerHeight');
  return {
    spaces: [
      {
        id: 'tank-side',
        label: 'tank water before the screen',
        box: { x: -besideM, y: 0, width: besideM, height: top + 0.02 },
      },
      { id: 'over-carriers', label: 'water over the carriers', box: { x: 0, y: top, width, height: 0.02 } },
      { id: 'under-carriers', label: 'water under the carriers', box: { x: 0, y: 0, width, height: floorM } },
      { id: 'shaft', label: 'shaft of the lift tube', box: { ...shaft, y: 0, height: top + 0.02 } },
    ],
    chambers: [chamberOf(size)],
    openings: openingsOf(size),
    leaks: [],
    weirs: [],
    inletSpace: 'tank-side',
    outletSpace: 'shaft',
    pumpPlace: 'last',
    liftTube: liftTubeOf(size, 1),
    drawing: drawingOf(size, drive),
  };
}

/** Chamber in which carriers tumble in air or a jet. */
export const movingBed: Family = {
  id: 'moving-bed',
  name: 'moving bed',
  says: 'Water enters through a screen over carriers that air or a jet keeps tumbling, leaves through a screen under them, and rises with bubbles, or by a pump, through the lift tube.',
  measurements,
  assumedShutoffHeadM: 0.6,
  drives: ['air-lift', 'pump'],
  hoses: { intake: false, outlet: false },
  alterations: ['lengthen-lift-tube'],
  forbidden: [
    'Never let it stand for hours and start it again into the tank.',
    'Never fill more than seven tenths of the chamber: carriers that do not tumble gather mud.',
    'Never fit a screen that is wider than the carriers are.',
    checkValveInAirLine,
  ],
  layOut,
};
