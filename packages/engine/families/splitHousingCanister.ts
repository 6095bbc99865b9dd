import type { Measurements } from '../model/model.ts';
import { canisterAlterations, canisterRules } from './canisterRules.ts';
import { floorM, floorWithHoles, gapAllRound, headHeight, innerWallM, portBoreM, upTo } from './geometry.ts';
import { heldInBasket } from './holding.ts';
import type { Box, Chamber, Family, Layout, Measurement, Point, Space } from './layout.ts';
import { floorOpenFraction, headSpace, measurementReader, wallGap } from './measuring.ts';

const measurements = [
  {
    key: 'innerWidth',
    label: 'inner width across both halves',
    kind: 'length',
    least: 0.08,
    most: 0.8,
    how: 'Measure inside the housing from wall to wall across the partition.',
  },
  {
    key: 'innerDepth',
    label: 'inner depth front to back',
    kind: 'length',
    least: 0.05,
    most: 0.6,
    how: 'Measure inside the housing from front to back, along the partition.',
  },
  {
    key: 'innerHeight',
    label: 'inner height under the head',
    kind: 'length',
    least: 0.1,
    most: 0.8,
    how: 'Measure from the floor to the rim and take off what the head reaches in.',
  },
  {
    key: 'traysPerSide',
    label: 'trays in each half',
    kind: 'count',
    least: 1,
    most: 4,
    how: 'Count the trays in one half.',
  },
  {
    key: 'partitionFoot',
    label: 'height of the opening at the foot of the partition',
    kind: 'length',
    assumed: {
      value: 0.015,
      doubtFactor: 1.5,
      because: 'partitions usually end about 15 mm (0.6 in) above the floor; from memory',
    },
    least: 0.002,
    most: 0.05,
    how: 'Measure from the floor up to the lower edge of the partition.',
  },
  {
    key: 'partitionGap',
    label: 'slot between the top edge of the partition and the head',
    kind: 'length',
    assumed: {
      value: 0.0005,
      doubtFactor: 2,
      because: 'a partition without a seal leaves about half a millimetre; from memory',
    },
    least: 0,
    most: 0.02,
    how: 'Lay a roll of putty on the partition, close the head, open it and measure the putty; 0 where a seal touches all along.',
  },
  wallGap,
  floorOpenFraction,
  headSpace,
  {
    key: 'headTurned',
    label: 'head turned by half a turn',
    kind: 'yes-no',
    assumed: { value: 0, because: 'the head is taken to sit as it left the works' },
    least: 0,
    most: 1,
    how: 'Follow the intake port: yes where it opens over the right-hand half.',
  },
] as const satisfies readonly Measurement[];

type Reader = (key: (typeof measurements)[number]['key']) => number;
type Side = 'left' | 'right';

/** What a half is to the water: the first half is run through downwards, the second upwards. */
interface Half {
  readonly side: Side;
  readonly first: boolean;
  /** Left edge of the half, m. */
  readonly x: number;
  readonly width: number;
  readonly middle: number;
}

function halvesOf(size: Reader): readonly [left: Half, right: Half] {
  const width = (size('innerWidth') - innerWallM) / 2;
  const rightX = width + innerWallM;
  const turned = size('headTurned') !== 0;
  return [
    { side: 'left', first: !turned, x: 0, width, middle: width / 2 },
    { side: 'right', first: turned, x: rightX, width, middle: rightX + width / 2 },
  ];
}

/** Height of one tray with its floor, m. */
function stepOf(size: Reader): number {
  return (size('innerHeight') - size('partitionFoot') - size('headSpace')) / size('traysPerSide');
}

function spaceAbove(side: Side, tray: number, count: number): string {
  if (tray === 1) return `${side}-top`;
  return tray > count ? `${side}-foot` : `${side}-between-${tray - 1}-${tray}`;
}

function trayAt(size: Reader, half: Half, tray: number): Chamber {
  const gap = size('wallGap');
  const width = half.width - 2 * gap;
  const depth = size('innerDepth') - 2 * gap;
  const height = stepOf(size) - floorM;
  const topY = size('innerHeight') - size('headSpace');
  const above = spaceAbove(half.side, tray, size('traysPerSide'));
  const below = spaceAbove(half.side, tray + 1, size('traysPerSide'));
  return {
    id: `${half.side}-${tray}`,
    label: `${half.side} tray ${tray}${tray === 1 ? ' (top)' : ''}`,
    holds: heldInBasket,
    from: half.first ? above : below,
    to: half.first ? below : above,
    areaM2: width * depth,
    depthM: height,
    flow: half.first ? 'down' : 'up',
    listedInWaterOrder: half.first,
    gap: gapAllRound({ widthM: width, depthM: depth, heightM: height, thicknessM: gap }),
    floorOpenFraction: size('floorOpenFraction'),
    widthM: Math.min(width, depth),
    box: { x: half.x + gap, y: topY - tray * stepOf(size) + floorM, width, height },
  };
}

function spacesOf(size: Reader, half: Half): readonly Space[] {
  const { side, x, width } = half;
  const count = size('traysPerSide');
  const topY = size('innerHeight') - size('headSpace');
  const between = upTo(count - 1).map((tray) => ({
    id: spaceAbove(side, tray + 1, count),
    label: `between ${side} trays ${tray} and ${tray + 1}`,
    box: { x, y: topY - tray * stepOf(size), width, height: floorM },
  }));
  return [
    {
      id: `${side}-top`,
      label: `space above the ${side} half`,
      box: { x, y: topY, width, height: size('headSpace') },
    },
    ...between,
    {
      id: `${side}-foot`,
      label: `space under the ${side} half`,
      box: { x, y: 0, width, height: size('partitionFoot') },
    },
  ];
}

/** The middle lines of the ports in the head and what stands around them, m. */
interface Ports {
  readonly first: Half;
  readonly second: Half;
  readonly inlet: Point;
  readonly outlet: Point;
  readonly pump: Box;
}

function portsOf(size: Reader, first: Half, second: Half): Ports {
  const height = size('innerHeight');
  const head = headHeight(size('innerWidth'));
  const width = Math.min(0.7 * second.width, 0.09);
  const endY = height + head + 0.04;
  return {
    first,
    second,
    inlet: { x: first.middle, y: endY },
    outlet: { x: second.middle, y: endY },
    pump: { x: second.middle - width / 2, y: height + innerWallM, width, height: 0.6 * head },
  };
}

/** The partition, and the floor of the head with the holes for the intake and the pump. */
function wallsOf(size: Reader, ports: Ports): readonly Box[] {
  const width = size('innerWidth');
  const height = size('innerHeight');
  const foot = size('partitionFoot');
  const intake = { x: ports.inlet.x - portBoreM / 2, width: portBoreM };
  const partition = {
    x: (width - innerWallM) / 2,
    y: foot,
    width: innerWallM,
    height: height - foot - size('partitionGap'),
  };
  return [partition, ...floorWithHoles({ y: height, widthM: width, holes: [intake, ports.pump] })];
}

function drawingOf(size: Reader, ports: Ports): Layout['drawing'] {
  const { inlet, outlet, pump } = ports;
  const width = size('innerWidth');
  const height = size('innerHeight');
  return {
    housing: [
      { x: 0, y: 0, width, height },
      { x: 0, y: height, width, height: headHeight(width) },
    ],
    pump,
    walls: wallsOf(size, ports),
    stubs: [
      { side: 'intake', boreM: portBoreM, along: [inlet, { x: inlet.x, y: height + innerWallM }] },
      { side: 'outlet', boreM: portBoreM, along: [{ x: outlet.x, y: pump.y + pump.height }, outlet] },
    ],
    inlet,
    outlet,
    dimensions: [
      { measurement: 'innerWidth', from: { x: 0, y: 0 }, to: { x: width, y: 0 } },
      { measurement: 'innerHeight', from: { x: width, y: 0 }, to: { x: width, y: height } },
    ],
    mainPath: mainPath(size, ports),
  };
}

function mainPath(size: Reader, ports: Ports): readonly Point[] {
  const { first, second, inlet, outlet } = ports;
  const topY = size('innerHeight') - size('headSpace') / 2;
  const footY = size('partitionFoot') / 2;
  const turns = [
    { x: first.middle, y: topY },
    { x: first.middle, y: footY },
    { x: second.middle, y: footY },
    { x: second.middle, y: topY },
  ];
  return [inlet, ...turns, outlet];
}

function layOut(given: Measurements): Layout {
  const size = measurementReader(measurements, given);
  const [left, right] = halvesOf(size);
  const [first, second] = left.first ? [left, right] : [right, left];
  const trays = upTo(size('traysPerSide'));
  const middle = size('innerWidth') / 2;
  return {
    spaces: [...spacesOf(size, left), ...spacesOf(size, right)],
    chambers: [left, right].flatMap((half) => trays.map((tray) => trayAt(size, half, tray))),
    openings: [
      {
        id: 'partition-foot',
        label: 'opening at the foot of the partition',
        from: `${first.side}-foot`,
        to: `${second.side}-foot`,
        areaM2: size('partitionFoot') * size('innerDepth'),
        bypass: false,
        at: { x: middle, y: size('partitionFoot') / 2 },
      },
    ],
    leaks: [
      {
        id: 'partition-top',
        label: 'slot over the partition',
        measurement: 'partitionGap',
        sealedBy: 'strip',
        from: `${first.side}-top`,
        to: `${second.side}-top`,
        thicknessM: size('partitionGap'),
        widthM: size('innerDepth'),
        lengthM: innerWallM,
        at: { x: middle, y: size('innerHeight') - size('partitionGap') / 2 },
      },
    ],
    weirs: [],
    inletSpace: `${first.side}-top`,
    outletSpace: `${second.side}-top`,
    pumpPlace: 'last',
    drawing: drawingOf(size, portsOf(size, first, second)),
  };
}

/** External canister whose partition sends the water down one half and up the other. */
export const splitHousingCanister: Family = {
  id: 'split-housing-canister',
  name: 'canister with two halves',
  says: 'Water runs down through one half, passes under the partition, rises through the other half, and the pump in the head sends it back; turning the head swaps the halves.',
  measurements,
  assumedShutoffHeadM: 1.2,
  hoses: { intake: true, outlet: true },
  alterations: ['turn-head', 'seal-gaps', 'move-trays', ...canisterAlterations],
  forbidden: [canisterRules.uncutHousing, canisterRules.openIntake],
  forbiddenIn: {
    'turn-head': [
      'Never turn the head where a lug, a safety catch or the priming tube fits one way only.',
      'Never turn the head where that leaves a float or heater port dry.',
    ],
  },
  layOut,
};
