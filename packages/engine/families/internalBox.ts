import type { Measurements } from '../model/model.ts';
import { floorM, gapAllRound, roundArea, upTo } from './geometry.ts';
import { heldInBasket } from './holding.ts';
import type { Box, Chamber, DimensionLine, Family, Layout, Measurement, Opening, Space } from './layout.ts';
import { floorOpenFraction, headSpace, measurementReader, wallGap } from './measuring.ts';

const measurements = [
  {
    key: 'innerWidth',
    label: 'inner width',
    kind: 'length',
    least: 0.03,
    most: 0.5,
    how: 'Measure inside the box from left to right.',
  },
  {
    key: 'innerDepth',
    label: 'inner depth front to back',
    kind: 'length',
    least: 0.03,
    most: 0.5,
    how: 'Measure inside the box from front to back.',
  },
  {
    key: 'innerHeight',
    label: 'inner height from the floor to the pump',
    kind: 'length',
    least: 0.08,
    most: 0.8,
    how: 'Measure from the floor of the box up to the underside of the pump.',
  },
  {
    key: 'chambers',
    label: 'number of chambers',
    kind: 'count',
    least: 1,
    most: 3,
    how: 'Count the parts, one above the other, that grids divide the box into.',
  },
  {
    key: 'slotArea',
    label: 'area of the slots at the base',
    kind: 'area',
    least: 0.00002,
    most: 0.05,
    how: 'Count the slots below the lowest medium, measure one, and multiply.',
  },
  {
    key: 'upperSlotArea',
    label: 'area of the slots beside or above the media',
    kind: 'area',
    assumed: { value: 0, because: 'no slots are taken to open past the media unless they were seen' },
    least: 0,
    most: 0.05,
    how: 'Count the slots through which water reaches the pump without passing the media, measure one, and multiply.',
  },
  wallGap,
  floorOpenFraction,
  {
    key: 'baseHeight',
    label: 'free height under the lowest medium',
    kind: 'length',
    assumed: {
      value: 0.006,
      doubtFactor: 2,
      because: 'ribs of a few millimetres keep the media off the floor; from memory',
    },
    least: 0.001,
    most: 0.02,
    how: 'Measure the height of the ribs or the grid over the floor.',
  },
  headSpace,
  {
    key: 'nozzleBore',
    label: 'bore of the nozzle',
    kind: 'length',
    assumed: {
      value: 0.012,
      doubtFactor: 1.3,
      because: 'nozzles of small internal pumps measure about 12 mm; from memory',
    },
    least: 0.003,
    most: 0.05,
    how: 'Measure across the opening that the water leaves through.',
  },
] as const satisfies readonly Measurement[];

type Key = (typeof measurements)[number]['key'];
type Reader = (key: Key) => number;

/** Height of one chamber with its grid, m. */
function stepOf(size: Reader): number {
  return (size('innerHeight') - size('baseHeight') - size('headSpace')) / size('chambers');
}

function spaceUnder(chamber: number, count: number): string {
  if (chamber === 1) return 'base';
  return chamber > count ? 'pump-space' : `between-${chamber - 1}-${chamber}`;
}

function chamberAt(size: Reader, chamber: number): Chamber {
  const gap = size('wallGap');
  const width = size('innerWidth') - 2 * gap;
  const depth = size('innerDepth') - 2 * gap;
  const height = stepOf(size) - floorM;
  const count = size('chambers');
  return {
    id: `chamber-${chamber}`,
    label: chamber === 1 ? 'chamber 1 (lowest)' : `chamber ${chamber}`,
    holds: heldInBasket,
    from: spaceUnder(chamber, count),
    to: spaceUnder(chamber + 1, count),
    areaM2: width * depth,
    depthM: height,
    flow: 'up',
    listedInWaterOrder: false,
    gap: gapAllRound({ widthM: width, depthM: depth, heightM: height, thicknessM: gap }),
    floorOpenFraction: size('floorOpenFraction'),
    widthM: Math.min(width, depth),
    box: { x: gap, y: size('baseHeight') + floorM + (chamber - 1) * stepOf(size), width, height },
  };
}

/** Extent of the tank's water on the intake side of the drawing, m. */
const tankSideM = 0.025;

function spacesOf(size: Reader): readonly Space[] {
  const count = size('chambers');
  const width = size('innerWidth');
  const top = size('innerHeight');
  const between = upTo(count - 1).map((chamber) => ({
    id: spaceUnder(chamber + 1, count),
    label: `between chambers ${chamber} and ${chamber + 1}`,
    box: { x: 0, y: size('baseHeight') + chamber * stepOf(size), width, height: floorM },
  }));
  return [
    {
      id: 'tank-side',
      label: 'tank water at the slots',
      box: { x: -tankSideM, y: 0, width: tankSideM, height: top },
      volumeM3: 0,
    },
    { id: 'base', label: 'space under the media', box: { x: 0, y: 0, width, height: size('baseHeight') } },
    ...between,
    {
      id: 'pump-space',
      label: 'space under the pump',
      box: { x: 0, y: top - size('headSpace'), width, height: size('headSpace') },
    },
    {
      id: 'nozzle',
      label: 'nozzle',
      box: nozzleBox(size),
      volumeM3: roundArea(size('nozzleBore')) * nozzleBox(size).width,
    },
  ];
}

function pumpBox(size: Reader): Box {
  const width = Math.min(0.7 * size('innerWidth'), 0.07);
  return {
    x: (size('innerWidth') - width) / 2,
    y: size('innerHeight'),
    width,
    height: Math.max(0.03, 0.8 * width),
  };
}

function nozzleBox(size: Reader): Box {
  const pump = pumpBox(size);
  const bore = Math.min(size('nozzleBore'), pump.height);
  const x = pump.x + pump.width;
  return { x, y: pump.y + (pump.height - bore) / 2, width: size('innerWidth') - x + 0.015, height: bore };
}

function openingsOf(size: Reader): readonly Opening[] {
  const upper: Opening = {
    id: 'upper-slots',
    label: 'slots past the media',
    from: 'tank-side',
    to: 'pump-space',
    areaM2: size('upperSlotArea'),
    bypass: true,
    closedBy: 'upperSlotArea',
    at: { x: 0, y: size('innerHeight') - size('headSpace') / 2 },
  };
  return [
    {
      id: 'base-slots',
      label: 'slots at the base',
      from: 'tank-side',
      to: 'base',
      areaM2: size('slotArea'),
      bypass: false,
      at: { x: 0, y: size('baseHeight') / 2 },
    },
    ...(size('upperSlotArea') > 0 ? [upper] : []),
    {
      id: 'nozzle-mouth',
      label: 'mouth of the nozzle',
      from: 'pump-space',
      to: 'nozzle',
      areaM2: roundArea(size('nozzleBore')),
      bypass: false,
      at: { x: nozzleBox(size).x + nozzleBox(size).width, y: nozzleBox(size).y + nozzleBox(size).height / 2 },
    },
  ];
}

function dimensionsOf(size: Reader): readonly DimensionLine[] {
  const width = size('innerWidth');
  return [
    { measurement: 'innerWidth', from: { x: 0, y: 0 }, to: { x: width, y: 0 } },
    { measurement: 'innerHeight', from: { x: width, y: 0 }, to: { x: width, y: size('innerHeight') } },
  ];
}

function drawingOf(size: Reader): Layout['drawing'] {
  const width = size('innerWidth');
  const top = size('innerHeight');
  const pump = pumpBox(size);
  const nozzle = nozzleBox(size);
  const middle = width / 2;
  const baseY = size('baseHeight') / 2;
  const nozzleY = nozzle.y + nozzle.height / 2;
  const inlet = { x: -tankSideM, y: baseY };
  const outlet = { x: nozzle.x + nozzle.width, y: nozzleY };
  return {
    housing: [
      { x: 0, y: 0, width, height: top },
      { x: 0, y: top, width, height: pump.height + 0.008 },
    ],
    pump,
    walls: [],
    stubs: [
      {
        side: 'outlet',
        boreM: nozzle.height,
        along: [{ x: nozzle.x, y: nozzleY }, outlet],
      },
    ],
    waterLevelY: top + pump.height + 0.03,
    inlet,
    outlet,
    dimensions: dimensionsOf(size),
    mainPath: [inlet, { x: middle, y: baseY }, { x: middle, y: nozzleY }, outlet],
  };
}

function layOut(given: Measurements): Layout {
  const size = measurementReader(measurements, given);
  return {
    spaces: spacesOf(size),
    chambers: upTo(size('chambers'))
      .map((chamber) => chamberAt(size, chamber))
      .toReversed(),
    openings: openingsOf(size),
    leaks: [],
    weirs: [],
    inletSpace: 'tank-side',
    outletSpace: 'nozzle',
    pumpPlace: 'last',
    drawing: drawingOf(size),
  };
}

/** Box inside the tank: in through slots at the base, up through the media, out of the pump on top. */
export const internalBox: Family = {
  id: 'internal-box',
  name: 'internal box',
  says: 'Water enters through slots at the base, rises through the chambers to the pump on top and leaves by its nozzle; slots higher up let water reach the pump past the media.',
  measurements,
  assumedShutoffHeadM: 0.6,
  hoses: { intake: false, outlet: false },
  alterations: ['close-upper-slots', 'seal-gaps', 'move-trays'],
  forbidden: ['Never run it dry.', 'Never open the motor.'],
  forbiddenIn: {
    'close-upper-slots': [
      "Never close so many slots that less than three times the pump's own inlet stays open.",
    ],
  },
  layOut,
};
