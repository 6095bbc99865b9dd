import type { Measurements } from '../model/model.ts';
import { canisterAlterations, canisterRules } from './canisterRules.ts';
import {
  centreOf,
  floorM,
  floorWithHoles,
  gapAllRound,
  headHeight,
  innerWallM,
  portBoreM,
  roundArea,
  upTo,
} from './geometry.ts';
import { heldInBasket } from './holding.ts';
import type { Box, Chamber, Family, Layout, Measurement, Point, Space } from './layout.ts';
import { floorOpenFraction, headSpace, measurementReader, wallGap } from './measuring.ts';

const measurements = [
  {
    key: 'baskets',
    label: 'number of baskets',
    kind: 'count',
    least: 1,
    most: 6,
    how: 'Count the baskets in the stack.',
  },
  {
    key: 'basketWidth',
    label: 'basket width, inside',
    kind: 'length',
    least: 0.05,
    most: 0.6,
    how: 'Measure inside the basket from left to right at half its height.',
  },
  {
    key: 'basketDepth',
    label: 'basket depth front to back, inside',
    kind: 'length',
    least: 0.05,
    most: 0.6,
    how: 'Measure inside the basket from front to back at half its height.',
  },
  {
    key: 'basketHeight',
    label: 'usable height of a basket',
    kind: 'length',
    least: 0.01,
    most: 0.4,
    how: 'Measure inside from the grid up to where the next basket or the lid comes down.',
  },
  wallGap,
  floorOpenFraction,
  {
    key: 'baseHeight',
    label: 'free height under the lowest basket',
    kind: 'length',
    assumed: {
      value: 0.015,
      doubtFactor: 1.5,
      because: 'feet of about 15 mm (0.6 in) keep the lowest basket off the floor; from memory',
    },
    least: 0.002,
    most: 0.1,
    how: 'Measure the height of the feet under the lowest basket.',
  },
  headSpace,
  {
    key: 'downTubeBore',
    label: 'bore of the tube or corner that leads down',
    kind: 'length',
    assumed: {
      value: 0.02,
      doubtFactor: 1.5,
      because: 'the way down is usually a little wider than a 16 mm (5/8 in) hose; from memory',
    },
    least: 0.004,
    most: 0.1,
    how: 'Measure across the tube; for a corner take the diameter of the round hole with the same area.',
  },
] as const satisfies readonly Measurement[];

type Key = (typeof measurements)[number]['key'];
type Reader = (key: Key) => number;

/** The lengths that both the network's side and the drawing's side of the layout are made from, m. */
interface Frame {
  readonly count: number;
  /** Left edge of the baskets. */
  readonly basketX: number;
  readonly innerWidth: number;
  readonly innerHeight: number;
  readonly step: number;
}

function frameOf(size: Reader): Frame {
  const count = size('baskets');
  const step = size('basketHeight') + floorM;
  const shaft = size('downTubeBore') + innerWallM;
  return {
    count,
    basketX: shaft + size('wallGap'),
    innerWidth: shaft + size('basketWidth') + 2 * size('wallGap'),
    innerHeight: size('baseHeight') + count * step + size('headSpace'),
    step,
  };
}

function spaceUnder(basket: number, count: number): string {
  if (basket === 1) return 'base';
  return basket > count ? 'head' : `between-${basket - 1}-${basket}`;
}

function basketAt(size: Reader, frame: Frame, basket: number): Chamber {
  const width = size('basketWidth');
  const depth = size('basketDepth');
  const height = size('basketHeight');
  return {
    id: `basket-${basket}`,
    label: basket === 1 ? 'basket 1 (lowest)' : `basket ${basket}`,
    holds: heldInBasket,
    from: spaceUnder(basket, frame.count),
    to: spaceUnder(basket + 1, frame.count),
    areaM2: width * depth,
    depthM: height,
    flow: 'up',
    listedInWaterOrder: false,
    gap: gapAllRound({
      widthM: width,
      depthM: depth,
      heightM: height,
      thicknessM: size('wallGap'),
    }),
    floorOpenFraction: size('floorOpenFraction'),
    widthM: Math.min(width, depth),
    box: {
      x: frame.basketX,
      y: size('baseHeight') + floorM + (basket - 1) * frame.step,
      width,
      height,
    },
  };
}

function spacesOf(size: Reader, frame: Frame): readonly Space[] {
  const x = frame.basketX;
  const width = size('basketWidth');
  const between = upTo(frame.count - 1).map((basket) => ({
    id: spaceUnder(basket + 1, frame.count),
    label: `between baskets ${basket} and ${basket + 1}`,
    box: { x, y: size('baseHeight') + basket * frame.step, width, height: floorM },
  }));
  return [
    {
      id: 'down-tube',
      label: 'way down',
      box: { x: 0, y: 0, width: size('downTubeBore'), height: frame.innerHeight },
      volumeM3: roundArea(size('downTubeBore')) * frame.innerHeight,
    },
    {
      id: 'base',
      label: 'space under the baskets',
      box: {
        x: size('downTubeBore'),
        y: 0,
        width: frame.innerWidth - size('downTubeBore'),
        height: size('baseHeight'),
      },
    },
    ...between,
    {
      id: 'head',
      label: 'space under the head',
      box: { x, y: frame.innerHeight - size('headSpace'), width, height: size('headSpace') },
    },
  ];
}

function pumpBox(size: Reader, frame: Frame): Box {
  const height = headHeight(frame.innerWidth);
  const width = Math.min(0.5 * size('basketWidth'), 0.09);
  return {
    x: frame.basketX + (size('basketWidth') - width) / 2,
    y: frame.innerHeight + innerWallM,
    width,
    height: 0.6 * height,
  };
}

function mainPath(size: Reader, frame: Frame, ends: { inlet: Point; outlet: Point }): readonly Point[] {
  const middle = frame.basketX + size('basketWidth') / 2;
  const tube = size('downTubeBore') / 2;
  const baseMiddle = size('baseHeight') / 2;
  return [
    ends.inlet,
    { x: tube, y: baseMiddle },
    { x: middle, y: baseMiddle },
    { x: middle, y: frame.innerHeight - size('headSpace') / 2 },
    centreOf(pumpBox(size, frame)),
    ends.outlet,
  ];
}

function drawingOf(size: Reader, frame: Frame): Layout['drawing'] {
  const { innerWidth, innerHeight, basketX } = frame;
  const height = headHeight(innerWidth);
  const bore = size('downTubeBore');
  const pump = pumpBox(size, frame);
  const top = innerHeight + height;
  const outletX = pump.x + pump.width / 2;
  const inlet = { x: bore / 2, y: top + 0.04 };
  const outlet = { x: outletX, y: top + 0.04 };
  const firstY = size('baseHeight') + floorM;
  const right = basketX + size('basketWidth');
  return {
    housing: [
      { x: 0, y: 0, width: innerWidth, height: innerHeight },
      { x: 0, y: innerHeight, width: innerWidth, height },
    ],
    pump,
    walls: [
      { x: bore, y: size('baseHeight'), width: innerWallM, height: innerHeight - size('baseHeight') },
      ...floorWithHoles({ y: innerHeight, widthM: innerWidth, holes: [{ x: 0, width: bore }, pump] }),
    ],
    stubs: [
      { side: 'intake', boreM: Math.min(bore, portBoreM), along: [inlet, { x: bore / 2, y: innerHeight }] },
      { side: 'outlet', boreM: portBoreM, along: [{ x: outletX, y: pump.y + pump.height }, outlet] },
    ],
    inlet,
    outlet,
    dimensions: [
      { measurement: 'basketWidth', from: { x: basketX, y: firstY }, to: { x: right, y: firstY } },
      {
        measurement: 'basketHeight',
        from: { x: right, y: firstY },
        to: { x: right, y: firstY + size('basketHeight') },
      },
      { measurement: 'baseHeight', from: { x: right, y: 0 }, to: { x: right, y: size('baseHeight') } },
    ],
    mainPath: mainPath(size, frame, { inlet, outlet }),
  };
}

function layOut(given: Measurements): Layout {
  const size = measurementReader(measurements, given);
  const frame = frameOf(size);
  return {
    spaces: spacesOf(size, frame),
    chambers: upTo(frame.count)
      .map((basket) => basketAt(size, frame, basket))
      .toReversed(),
    openings: [
      {
        id: 'tube-foot',
        label: 'foot of the way down',
        from: 'down-tube',
        to: 'base',
        areaM2: roundArea(size('downTubeBore')),
        bypass: false,
        at: { x: size('downTubeBore'), y: size('baseHeight') / 2 },
      },
    ],
    leaks: [],
    weirs: [],
    inletSpace: 'down-tube',
    outletSpace: 'head',
    pumpPlace: 'last',
    drawing: drawingOf(size, frame),
  };
}

/** External canister with a stack of baskets: down a tube to the base, then up through all of them. */
export const basketStackCanister: Family = {
  id: 'basket-stack-canister',
  name: 'canister with a stack of baskets',
  says: 'Water runs down a tube or corner to the base, rises through the baskets from the lowest to the highest, and the pump in the head sends it back.',
  measurements,
  assumedShutoffHeadM: 1.2,
  hoses: { intake: true, outlet: true },
  alterations: ['seal-gaps', 'move-trays', ...canisterAlterations],
  forbidden: [
    canisterRules.uncutHousing,
    'Never glue a basket in for good: it must lift out for cleaning.',
    canisterRules.openIntake,
    'Never close a relief hole that belongs to the design.',
  ],
  layOut,
};
