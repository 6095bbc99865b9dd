import type { Measurements } from '../model/model.ts';
import type { Drive } from '../model/pump.ts';
import type { Chamber, DimensionLine, Family, Layout, Measurement } from './layout.ts';
import {
  checkValveInAirLine,
  type DrawnLift,
  drawLift,
  liftDrawing,
  liftTubeMeasurements,
  liftTubeOf,
  tubeCount,
} from './liftTube.ts';
import { measurementReader } from './measuring.ts';

const measurements = [
  {
    key: 'matWidth',
    label: 'width of the mat across the tank',
    kind: 'length',
    least: 0.05,
    most: 2,
    how: 'Measure between the panes that the mat stands between, inside.',
  },
  {
    key: 'matWetHeight',
    label: 'height of the mat under water',
    kind: 'length',
    least: 0.1,
    most: 1.2,
    how: 'Measure from the foot of the mat up to the water surface.',
  },
  {
    key: 'matThickness',
    label: 'thickness of the mat',
    kind: 'length',
    least: 0.01,
    most: 0.2,
    how: 'Measure through the mat at its edge, without pressing.',
  },
  {
    key: 'spaceBehind',
    label: 'clear space behind the mat',
    kind: 'length',
    least: 0.005,
    most: 0.5,
    how: 'Measure from the back of the mat to the pane behind it, where it comes nearest.',
  },
  {
    key: 'edgeGap',
    label: 'gap between the mat and the panes',
    kind: 'length',
    assumed: {
      value: 0.0002,
      doubtFactor: 3,
      because: 'a mat cut a few millimetres too large presses itself tight to the panes; from memory',
    },
    least: 0,
    most: 0.02,
    how: 'Feel along the panes and the floor with a gauge or folded paper; a mat that bows leaves the most at its foot.',
  },
  tubeCount,
  ...liftTubeMeasurements,
] as const satisfies readonly Measurement[];

type Reader = (key: (typeof measurements)[number]['key']) => number;

/** Extent of the tank that is drawn before the mat, m. */
const tankBeforeM = 0.12;

/** What is drawn of the space behind, m: a chamber is drawn shortened. */
const drawnBehind = (size: Reader): number => Math.min(size('spaceBehind'), 0.15);

/** Open share of what the mat leans on: nothing but strips at its edges. */
const openBehind = 0.95;

function chamberOf(size: Reader): Chamber {
  const width = size('matWidth');
  const height = size('matWetHeight');
  const thickness = size('matThickness');
  return {
    id: 'mat',
    label: 'mat',
    isNamedByMedia: true,
    holds: ['block', 'sheet'],
    from: 'tank-side',
    to: 'behind',
    areaM2: width * height,
    depthM: thickness,
    flow: 'right',
    listedInWaterOrder: true,
    gap: { thicknessM: size('edgeGap'), widthM: width + 2 * height, lengthM: thickness },
    floorOpenFraction: openBehind,
    widthM: Math.min(width, height),
    box: { x: tankBeforeM, y: 0, width: thickness, height },
  };
}

function dimensionsOf(size: Reader, lift: DrawnLift): readonly DimensionLine[] {
  const back = tankBeforeM + size('matThickness');
  const right = back + drawnBehind(size);
  const air: DimensionLine = {
    measurement: 'airDepth',
    from: { x: right, y: lift.airY },
    to: { x: right, y: lift.waterLevelY },
  };
  return [
    { measurement: 'spaceBehind', from: { x: back, y: 0 }, to: { x: right, y: 0 } },
    { measurement: 'matWetHeight', from: { x: 0, y: 0 }, to: { x: 0, y: size('matWetHeight') } },
    ...(lift.airLine ? [air] : []),
  ];
}

function drawingOf(size: Reader, drive: Drive): Layout['drawing'] {
  const height = size('matWetHeight');
  const behind = tankBeforeM + size('matThickness');
  const width = behind + drawnBehind(size);
  const x = behind + drawnBehind(size) / 2;
  const airY = Math.max(0.01, height - size('airDepth'));
  const footY = Math.max(0.005, airY - 0.02);
  const lift = drawLift(size, {
    x,
    footY,
    airY,
    aboveY: height,
    atMostY: height,
    leastMouthY: 0.7 * height,
    turnsTo: 'left',
    drive,
  });
  const wayY = 0.2 * height;
  const inlet = { x: 0.4 * tankBeforeM, y: wayY };
  const outlet = { x: tankBeforeM - 0.03, y: lift.mouth.y };
  const along = [{ x, y: footY }, lift.mouth, outlet];
  return {
    housing: [{ x: 0, y: 0, width, height: lift.topY }],
    openTop: true,
    ...liftDrawing(lift),
    walls: [],
    stubs: [{ ...lift.stub, along }],
    inlet,
    outlet,
    dimensions: dimensionsOf(size, lift),
    mainPath: [inlet, { x, y: wayY }, lift.mouth, outlet],
  };
}

function layOut(given: Measurements, drive: Drive = 'air-lift'): Layout {
  const size = measurementReader(measurements, given);
  const height = size('matWetHeight');
  const behind = { x: tankBeforeM + size('matThickness'), width: drawnBehind(size) };
  return {
    spaces: [
      { id: 'tank-side', label: 'tank', box: { x: 0, y: 0, width: tankBeforeM, height } },
      { id: 'behind', label: 'space behind the mat', box: { ...behind, y: 0, height } },
    ],
    chambers: [chamberOf(size)],
    openings: [],
    leaks: [],
    weirs: [],
    inletSpace: 'tank-side',
    outletSpace: 'behind',
    pumpPlace: 'last',
    liftTube: liftTubeOf(size, size('tubes')),
    drawing: drawingOf(size, drive),
  };
}

/** A mat of foam from pane to pane; the water behind it goes back by bubbles or a pump. */
export const matFilter: Family = {
  id: 'mat-filter',
  staysInTank: true,
  name: 'mat filter',
  says: 'The whole tank seeps through a mat of foam that stands from pane to pane; bubbles in a lift tube, or a pump, take the water from behind it back to the front.',
  measurements,
  assumedShutoffHeadM: 0.6,
  drives: ['air-lift', 'pump'],
  hoses: { intake: false, outlet: false },
  alterations: ['lengthen-lift-tube', 'seal-gaps'],
  forbidden: [
    'Never stand the mat nearer than 2 cm to the pane behind it.',
    'Never leave a way round or over the mat: animals that get behind it do not come back.',
    'Never wash the whole mat at once: draw the dirt off its face, and take no more than half out.',
    checkValveInAirLine,
  ],
  layOut,
};
