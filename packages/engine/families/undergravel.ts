import type { Measurements } from '../model/model.ts';
import type { Drive } from '../model/pump.ts';
import { floorM } from './geometry.ts';
import type { Chamber, DimensionLine, Family, Layout, Measurement, Opening } from './layout.ts';
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
    key: 'plateLength',
    label: 'length of the plate',
    kind: 'length',
    least: 0.1,
    most: 3,
    how: 'Measure the plates together from left to right.',
  },
  {
    key: 'plateWidth',
    label: 'width of the plate front to back',
    kind: 'length',
    least: 0.1,
    most: 1.2,
    how: 'Measure the plates together from front to back.',
  },
  {
    key: 'gravelDepth',
    label: 'height of the gravel over the plate',
    kind: 'length',
    least: 0.02,
    most: 0.25,
    how: 'Push a ruler down to the plate at five places and take the mean.',
  },
  {
    key: 'plateHeight',
    label: 'height of the space under the plate',
    kind: 'length',
    assumed: {
      value: 0.02,
      doubtFactor: 1.5,
      because: 'plates stand about 2 cm over the glass; from memory',
    },
    least: 0.005,
    most: 0.08,
    how: 'Measure the feet of the plate.',
  },
  {
    key: 'plateOpenFraction',
    label: 'open share of the plate',
    kind: 'fraction',
    assumed: { value: 0.05, doubtFactor: 2, because: 'slots take about a twentieth of a plate; from memory' },
    least: 0.005,
    most: 0.6,
    how: 'Count the slots on a hand’s breadth, measure one, multiply, and divide by that area.',
  },
  {
    key: 'bareArea',
    label: 'area of plate that lies bare',
    kind: 'area',
    assumed: { value: 0, because: 'the gravel is taken to cover the plate unless bare places were seen' },
    least: 0,
    most: 0.5,
    how: 'Measure each place where fish or a hand have dug down to the plate, and add them up.',
  },
  tubeCount,
  ...liftTubeMeasurements,
] as const satisfies readonly Measurement[];

type Reader = (key: (typeof measurements)[number]['key']) => number;

/** Clear between gravel and lift tube on the drawing, and thickness of the plate's edge there, m. */
const besideTubeM = 0.015;

const areaOf = (size: Reader): number => size('plateLength') * size('plateWidth');

/** Less than a slot or two is no bare place, m². */
const LEAST_BARE_M2 = 1e-5;

/** No more than the whole plate can lie bare, and some of it must carry gravel for there to be a bed. */
const bareOf = (size: Reader): number => Math.min(size('bareArea'), 0.9 * areaOf(size));

/** What a section of the tank shows of the plate, m: a long tank is drawn shortened. */
const drawnLength = (size: Reader): number => Math.min(size('plateLength'), 0.4);

function chamberOf(size: Reader): Chamber {
  const depthM = size('gravelDepth');
  return {
    id: 'gravel',
    label: 'gravel over the plate',
    isNamedByMedia: true,
    holds: ['grains'],
    from: 'tank-side',
    to: 'under-plate',
    areaM2: areaOf(size) - bareOf(size),
    depthM,
    flow: 'down',
    listedInWaterOrder: true,
    gap: { thicknessM: 0, widthM: 2 * (size('plateLength') + size('plateWidth')), lengthM: depthM },
    floorOpenFraction: size('plateOpenFraction'),
    widthM: Math.min(size('plateLength'), size('plateWidth')),
    box: { x: 0, y: size('plateHeight') + floorM, width: drawnLength(size), height: depthM },
  };
}

function openingsOf(size: Reader): readonly Opening[] {
  if (size('bareArea') < LEAST_BARE_M2) return [];
  return [
    {
      id: 'bare-plate',
      label: 'bare plate',
      from: 'tank-side',
      to: 'under-plate',
      areaM2: bareOf(size) * size('plateOpenFraction'),
      bypass: true,
      closedBy: 'bareArea',
      at: { x: drawnLength(size), y: size('plateHeight') + floorM / 2 },
    },
  ];
}

function dimensionsOf(size: Reader, lift: DrawnLift): readonly DimensionLine[] {
  const bottom = size('plateHeight') + floorM;
  const right = tankWidth(size);
  const air: DimensionLine = {
    measurement: 'airDepth',
    from: { x: right, y: lift.airY },
    to: { x: right, y: lift.waterLevelY },
  };
  return [
    { measurement: 'gravelDepth', from: { x: 0, y: bottom }, to: { x: 0, y: bottom + size('gravelDepth') } },
    ...(lift.airLine ? [air] : []),
  ];
}

const tankWidth = (size: Reader): number => drawnLength(size) + 2 * besideTubeM + size('tubeBore');

function drawingOf(size: Reader, drive: Drive): Layout['drawing'] {
  const gravelTop = size('plateHeight') + floorM + size('gravelDepth');
  const open = Math.max(0.06, 0.5 * tankWidth(size));
  const x = drawnLength(size) + besideTubeM + size('tubeBore') / 2;
  const airY = size('plateHeight') + floorM + 0.01;
  const footY = size('plateHeight');
  const lift = drawLift(size, {
    x,
    footY,
    airY,
    aboveY: gravelTop + open,
    atMostY: 1.2 * tankWidth(size),
    leastMouthY: gravelTop + 0.8 * open,
    turnsTo: 'left',
    drive,
  });
  const middle = drawnLength(size) / 2;
  const inlet = { x: middle, y: gravelTop + 0.25 * open };
  const under = size('plateHeight') / 2;
  return {
    housing: [{ x: 0, y: 0, width: tankWidth(size), height: lift.topY }],
    openTop: true,
    ...liftDrawing(lift),
    walls: [],
    stubs: [lift.stub],
    inlet,
    outlet: lift.outlet,
    dimensions: dimensionsOf(size, lift),
    mainPath: [inlet, { x: middle, y: under }, { x, y: under }, lift.mouth, lift.outlet],
  };
}

function layOut(given: Measurements, drive: Drive = 'air-lift'): Layout {
  const size = measurementReader(measurements, given);
  const drawing = drawingOf(size, drive);
  const gravelTop = size('plateHeight') + floorM + size('gravelDepth');
  const width = drawnLength(size);
  return {
    spaces: [
      {
        id: 'tank-side',
        label: 'tank over the gravel',
        box: { x: 0, y: gravelTop, width, height: drawing.waterLevelY! - gravelTop },
      },
      {
        id: 'under-plate',
        label: 'space under the plate',
        box: { x: 0, y: 0, width: tankWidth(size), height: size('plateHeight') },
      },
    ],
    chambers: [chamberOf(size)],
    openings: openingsOf(size),
    leaks: [],
    weirs: [],
    inletSpace: 'tank-side',
    outletSpace: 'under-plate',
    pumpPlace: 'last',
    liftTube: liftTubeOf(size, size('tubes')),
    drawing,
  };
}

/** Plate under the gravel with lift tubes: the gravel is the medium. */
export const undergravel: Family = {
  id: 'undergravel',
  staysInTank: true,
  name: 'undergravel filter',
  says: 'Water seeps down through the gravel and the slotted plate under it, and rises with bubbles, or by a pump, through tubes at the back.',
  measurements,
  assumedShutoffHeadM: 0.6,
  drives: ['air-lift', 'pump'],
  hoses: { intake: false, outlet: false },
  alterations: ['lengthen-lift-tube', 'level-gravel'],
  forbidden: [
    'Never let it stand for hours: what lives in the gravel uses up its oxygen, and foul water must not be lifted into the tank.',
    'Never disturb more than a third of the gravel on one day.',
    'Never lift the plate with animals in the tank.',
    checkValveInAirLine,
  ],
  layOut,
};
