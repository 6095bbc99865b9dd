import type { Measurements } from '../model/model.ts';
import { innerWallM, upTo } from './geometry.ts';
import { heldInBasket } from './holding.ts';
import type { Chamber, DimensionLine, Family, Layout, Measurement, Space, Weir } from './layout.ts';
import { floorOpenFraction, measurementReader } from './measuring.ts';

const measurements = [
  {
    key: 'boxWidth',
    label: 'inner width of the box across the flow',
    kind: 'length',
    least: 0.03,
    most: 0.6,
    how: 'Measure inside the box along the tank wall it hangs on.',
  },
  {
    key: 'waterDepth',
    label: 'water depth at the slots while running',
    kind: 'length',
    least: 0.03,
    most: 0.4,
    how: 'With the filter running, measure from the floor of the box up to the water line at the slots.',
  },
  {
    key: 'slots',
    label: 'number of slots',
    kind: 'count',
    least: 1,
    most: 4,
    how: 'Count the slots or frames that media can stand in, one behind the other.',
  },
  {
    key: 'slotThickness',
    label: 'thickness of a slot along the flow',
    kind: 'length',
    least: 0.003,
    most: 0.2,
    how: 'Measure inside the slot from the face that the water enters to the one that it leaves.',
  },
  {
    key: 'railGap',
    label: 'gap beside and under the media in a slot',
    kind: 'length',
    assumed: {
      value: 0.001,
      doubtFactor: 2,
      because: 'a pad that slides in its rails leaves about a millimetre; from memory',
    },
    least: 0,
    most: 0.02,
    how: 'Push the pad to one side, measure the opening on the other, and halve it.',
  },
  floorOpenFraction,
  {
    key: 'outletCrestHeight',
    label: 'outlet edge above the tank surface',
    kind: 'length',
    assumed: {
      value: 0.01,
      doubtFactor: 2,
      because: 'boxes are hung with the outlet about a centimetre above the water; from memory',
    },
    least: -0.05,
    most: 0.3,
    how: "Measure from the tank's water surface up to the edge that the water falls over; below 0 where the tank stands above the edge.",
  },
  {
    key: 'overflowCrestHeight',
    label: 'overflow lip above the tank surface',
    kind: 'length',
    assumed: {
      value: 0.022,
      doubtFactor: 1.5,
      because: 'the lip usually stands about 12 mm above the outlet edge; from memory',
    },
    least: 0,
    most: 0.35,
    how: "Measure from the tank's water surface up to the lip over which the well spills when the media clog.",
  },
  {
    key: 'weirWidth',
    label: 'width of the outlet edge',
    kind: 'length',
    least: 0.01,
    most: 0.6,
    how: 'Measure along the edge that the water falls over.',
  },
  {
    key: 'overflowWidth',
    label: 'width of the overflow lip',
    kind: 'length',
    least: 0.005,
    most: 0.6,
    how: 'Measure along the lip over which the well spills.',
  },
] as const satisfies readonly Measurement[];

type Key = (typeof measurements)[number]['key'];
type Reader = (key: Key) => number;

/** Lengths along the flow of the spaces beside the slots, m, for the drawing alone; from memory. */
const along = { well: 0.04, between: 0.006, last: 0.02, tank: 0.075 } as const;

/** Left edge of a slot counted from 1 at the pump's side, m. */
function slotX(size: Reader, slot: number): number {
  return along.well + (slot - 1) * (size('slotThickness') + along.between);
}

function innerLength(size: Reader): number {
  return slotX(size, size('slots')) + size('slotThickness') + along.last;
}

/** Height of the overflow lip over the floor of the box, m. */
function overflowY(size: Reader): number {
  const rise = size('overflowCrestHeight') - size('outletCrestHeight');
  return size('waterDepth') + Math.max(rise, 0);
}

function spaceBefore(slot: number, count: number): string {
  if (slot === 1) return 'well';
  return slot > count ? 'last' : `between-${slot - 1}-${slot}`;
}

function slotAt(size: Reader, slot: number): Chamber {
  const width = size('boxWidth');
  const depth = size('waterDepth');
  const count = size('slots');
  return {
    id: `slot-${slot}`,
    label: slot === 1 ? "slot 1 (pump's side)" : `slot ${slot}`,
    holds: heldInBasket,
    from: spaceBefore(slot, count),
    to: spaceBefore(slot + 1, count),
    areaM2: width * depth,
    depthM: size('slotThickness'),
    flow: 'right',
    listedInWaterOrder: true,
    gap: { thicknessM: size('railGap'), widthM: 2 * depth + width, lengthM: size('slotThickness') },
    floorOpenFraction: size('floorOpenFraction'),
    widthM: Math.min(width, depth),
    box: { x: slotX(size, slot), y: 0, width: size('slotThickness'), height: depth },
  };
}

function spacesOf(size: Reader): readonly Space[] {
  const count = size('slots');
  const height = size('waterDepth');
  const between = upTo(count - 1).map((slot) => ({
    id: spaceBefore(slot + 1, count),
    label: `between slots ${slot} and ${slot + 1}`,
    box: { x: slotX(size, slot) + size('slotThickness'), y: 0, width: along.between, height },
  }));
  return [
    { id: 'well', label: 'well at the pump', box: { x: 0, y: 0, width: along.well, height } },
    ...between,
    {
      id: 'last',
      label: 'space before the outlet edge',
      box: { x: innerLength(size) - along.last, y: 0, width: along.last, height },
    },
  ];
}

function weirsOf(size: Reader): readonly Weir[] {
  return [
    {
      id: 'outlet-edge',
      label: 'outlet edge',
      from: 'last',
      crestWidthM: size('weirWidth'),
      crestHeightM: size('outletCrestHeight'),
      purpose: 'outlet',
      at: { x: innerLength(size), y: size('waterDepth') },
    },
    {
      id: 'overflow-lip',
      label: 'overflow lip',
      from: 'well',
      crestWidthM: size('overflowWidth'),
      crestHeightM: size('overflowCrestHeight'),
      purpose: 'overflow',
      at: { x: along.well, y: overflowY(size) },
    },
  ];
}

function dimensionsOf(size: Reader): readonly DimensionLine[] {
  const first = slotX(size, 1);
  const behind = first + size('slotThickness');
  return [
    { measurement: 'slotThickness', from: { x: first, y: 0 }, to: { x: behind, y: 0 } },
    { measurement: 'waterDepth', from: { x: 0, y: 0 }, to: { x: 0, y: size('waterDepth') } },
  ];
}

function drawingOf(size: Reader): Layout['drawing'] {
  const length = innerLength(size);
  const depth = size('waterDepth');
  const lip = overflowY(size);
  const height = lip + 0.02;
  const pump = { x: 0.004, y: 0.002, width: along.well - 0.008, height: Math.min(0.3 * depth, 0.035) };
  const pumpY = pump.y + pump.height / 2;
  const waterLevelY = depth - size('outletCrestHeight');
  const inlet = { x: length + along.tank, y: waterLevelY - 0.6 * depth };
  const over = height + 0.012;
  const down = 0.3 * along.well;
  const up = 0.7 * along.well;
  const intake = [inlet, { x: inlet.x, y: over }, { x: down, y: over }, { x: down, y: pump.y + pump.height }];
  const outlet = { x: length + 0.02, y: waterLevelY };
  return {
    housing: [{ x: 0, y: 0, width: length, height }],
    pump,
    walls:
      lip > depth ? [{ x: along.well - innerWallM, y: depth, width: innerWallM, height: lip - depth }] : [],
    stubs: [{ side: 'intake', boreM: 0.012, along: intake }],
    waterLevelY,
    inlet,
    outlet,
    dimensions: dimensionsOf(size),
    mainPath: [
      ...intake,
      { x: down, y: pumpY },
      { x: up, y: pumpY },
      { x: up, y: 0.5 * depth },
      { x: length - along.last / 2, y: 0.5 * depth },
      { x: length - along.last / 2, y: depth + 0.004 },
      { x: outlet.x, y: depth + 0.004 },
      outlet,
    ],
  };
}

function layOut(given: Measurements): Layout {
  const size = measurementReader(measurements, given);
  return {
    spaces: spacesOf(size),
    chambers: upTo(size('slots')).map((slot) => slotAt(size, slot)),
    openings: [],
    leaks: [],
    weirs: weirsOf(size),
    inletSpace: 'well',
    outletSpace: 'last',
    pumpPlace: 'first',
    drawing: drawingOf(size),
  };
}

/** Box hung on the tank's edge: pumped into a well, across through slots, back over a weir. */
export const hangOnBack: Family = {
  id: 'hang-on-back',
  name: 'hang-on-back box',
  says: 'The pump lifts water into a well, it crosses the slots and falls over the outlet edge into the tank; as the media clog the well rises until it spills over its lip.',
  measurements,
  assumedShutoffHeadM: 0.2,
  hoses: { intake: true, outlet: false },
  alterations: ['seal-gaps', 'move-trays'],
  forbidden: [
    'Never close the overflow lip: it keeps a clogged box from spilling on the floor.',
    'Never let media stand higher than the outlet edge.',
    "Never load the box beyond what its bracket and the tank's edge can carry.",
    'Never run it with the tank below the lowest water mark.',
  ],
  layOut,
};
