import type { Measurements } from '../model/model.ts';
import type { Drive } from '../model/pump.ts';
import { innerWallM } from './geometry.ts';
import type { Chamber, DimensionLine, Family, Layout, Measurement } from './layout.ts';
import {
  checkValveInAirLine,
  type DrawnLift,
  drawLift,
  liftDrawing,
  liftTubeMeasurements,
  liftTubeOf,
} from './liftTube.ts';
import { measurementReader } from './measuring.ts';

const measurements = [
  {
    key: 'spongeThickness',
    label: 'thickness of the sponge from its outside to the core',
    kind: 'length',
    least: 0.005,
    most: 0.2,
    how: 'Measure across the sponge and across the core tube, and halve the difference.',
  },
  {
    key: 'coreDiameter',
    label: 'outer diameter of the core tube',
    kind: 'length',
    least: 0.005,
    most: 0.1,
    how: 'Pull the sponge off and measure across the slotted tube inside it.',
  },
  {
    key: 'spongeHeight',
    label: 'height of the sponge',
    kind: 'length',
    least: 0.02,
    most: 0.6,
    how: 'Measure along the tube, over the part of the sponge that lies over slots.',
  },
  {
    key: 'coreOpenFraction',
    label: 'open share of the core tube',
    kind: 'fraction',
    assumed: {
      value: 0.25,
      doubtFactor: 1.6,
      because: 'slots take about a quarter of the core of a sponge; from memory',
    },
    least: 0.02,
    most: 1,
    how: 'Count the slots of the core, measure one, multiply, and divide by the outside of the core.',
  },
  {
    key: 'coreGap',
    label: 'gap between the end of the sponge and its foot or cap',
    kind: 'length',
    assumed: {
      value: 0,
      because: 'a sponge that sits on its tube closes its own ends; a loose one would have been seen',
    },
    least: 0,
    most: 0.005,
    how: 'Press the sponge aside at its ends and feel for open slots with a gauge or folded paper.',
  },
  ...liftTubeMeasurements,
] as const satisfies readonly Measurement[];

type Reader = (key: (typeof measurements)[number]['key']) => number;

/** Extent of the tank's water that is drawn beside the sponge, and height of its foot, m. */
const besideM = 0.1;

/** Where the water's way begins to be drawn before the sponge, m. */
const wayM = 0.045;
const footM = 0.012;

const axisOf = (size: Reader): number => size('spongeThickness') + size('coreDiameter') / 2;

function chamberOf(size: Reader): Chamber {
  const innerRadiusM = size('coreDiameter') / 2;
  const depthM = size('spongeThickness');
  const heightM = size('spongeHeight');
  const outerRadiusM = innerRadiusM + depthM;
  return {
    id: 'sponge',
    label: 'sponge',
    isNamedByMedia: true,
    holds: ['block'],
    from: 'tank-side',
    to: 'core',
    areaM2: Math.PI * (innerRadiusM + outerRadiusM) * heightM,
    depthM,
    flow: 'right',
    listedInWaterOrder: true,
    gap: {
      thicknessM: size('coreGap'),
      widthM: Math.PI * (innerRadiusM + outerRadiusM),
      lengthM: depthM,
    },
    floorOpenFraction: size('coreOpenFraction'),
    widthM: heightM,
    ring: { innerRadiusM, lengthM: heightM },
    box: { x: 0, y: footM, width: depthM, height: heightM },
    twin: { x: 2 * axisOf(size) - depthM, y: footM, width: depthM, height: heightM },
  };
}

function dimensionsOf(size: Reader, lift: DrawnLift): readonly DimensionLine[] {
  const width = 2 * axisOf(size);
  const right = width + besideM;
  const top = footM + size('spongeHeight');
  const air: DimensionLine = {
    measurement: 'airDepth',
    from: { x: right, y: lift.airY },
    to: { x: right, y: lift.waterLevelY },
  };
  return [
    {
      measurement: 'spongeThickness',
      from: { x: width - size('spongeThickness'), y: 0 },
      to: { x: width, y: 0 },
    },
    { measurement: 'spongeHeight', from: { x: -besideM, y: footM }, to: { x: -besideM, y: top } },
    ...(lift.airLine ? [air] : []),
  ];
}

function drawingOf(size: Reader, drive: Drive): Layout['drawing'] {
  const x = axisOf(size);
  const height = size('spongeHeight');
  const middle = footM + height / 2;
  const lift = drawLift(size, {
    x,
    footY: footM + height,
    airY: footM + 0.8 * height,
    aboveY: footM + height + 0.02,
    turnsTo: 'right',
    drive,
  });
  const inlet = { x: -wayM, y: middle };
  return {
    housing: [{ x: -besideM, y: 0, width: 2 * (x + besideM), height: lift.topY }],
    openTop: true,
    ...liftDrawing(lift),
    walls: [
      { x: 0, y: footM - innerWallM, width: 2 * x, height: innerWallM },
      { x: x - 0.008, y: 0, width: 0.016, height: footM },
    ],
    stubs: [lift.stub],
    inlet,
    outlet: lift.outlet,
    dimensions: dimensionsOf(size, lift),
    mainPath: [inlet, { x, y: middle }, lift.mouth, lift.outlet],
  };
}

function layOut(given: Measurements, drive: Drive = 'air-lift'): Layout {
  const size = measurementReader(measurements, given);
  const drawing = drawingOf(size, drive);
  const core = size('coreDiameter');
  return {
    spaces: [
      {
        id: 'tank-side',
        label: 'tank water round the sponge',
        box: { x: -besideM, y: 0, width: besideM, height: drawing.housing[0]!.height },
      },
      {
        id: 'core',
        label: 'core of the sponge',
        box: { x: size('spongeThickness'), y: footM, width: core, height: size('spongeHeight') },
      },
    ],
    chambers: [chamberOf(size)],
    openings: [],
    leaks: [],
    weirs: [],
    inletSpace: 'tank-side',
    outletSpace: 'core',
    pumpPlace: 'last',
    liftTube: liftTubeOf(size, 1),
    drawing,
  };
}

/** Sponge on a lift tube: in from all round, out by bubbles. */
export const spongeFilter: Family = {
  id: 'sponge-filter',
  name: 'sponge filter',
  says: 'Water comes in through the sponge from all round, gathers in its core and rises with bubbles, or by a small pump, through the lift tube.',
  measurements,
  assumedShutoffHeadM: 0.6,
  drives: ['air-lift', 'pump'],
  hoses: { intake: false, outlet: false },
  alterations: ['lengthen-lift-tube', 'seal-gaps'],
  forbidden: [
    'Never lift a dirty sponge out bare: put a bag round it under water first, or the dirt goes back into the tank.',
    'Never leave the lift tube off: without it the bubbles lift half as much.',
    checkValveInAirLine,
    'Never wring the whole sponge out in tap water.',
  ],
  layOut,
};
