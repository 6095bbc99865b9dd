import type { Measurements } from '../model/model.ts';
import { floorM, innerWallM, roundArea, upTo } from './geometry.ts';
import type { Box, Chamber, Family, Layout, Measurement, Opening, Space, Weir } from './layout.ts';
import { measurementReader } from './measuring.ts';
import { boxMeasurements } from './sumpMeasurements.ts';
import { towerDrawing } from './towerDrawing.ts';
import { type TowerFrame, towerFrame } from './towerFrame.ts';

const measurements = [
  ...boxMeasurements,
  {
    key: 'boxLength',
    label: 'inner length of the box',
    kind: 'length',
    least: 0.15,
    most: 3,
    how: 'Measure inside the box along its longest side.',
  },
  {
    key: 'towerLength',
    label: 'inner length of the tower',
    kind: 'length',
    least: 0.06,
    most: 1.5,
    how: 'Measure inside the tower along the box.',
  },
  {
    key: 'towerDepth',
    label: 'inner depth of the tower front to back',
    kind: 'length',
    least: 0.06,
    most: 1.2,
    how: 'Measure inside the tower from front to back.',
  },
  {
    key: 'towerHeight',
    label: 'height that media can fill in the tower',
    kind: 'length',
    least: 0.06,
    most: 2,
    how: 'Measure from the lowest grid up to under the drip plate.',
  },
  {
    key: 'layers',
    label: 'number of layers in the tower',
    kind: 'count',
    assumed: { value: 1, because: 'one layer is taken where no grids were counted' },
    least: 1,
    most: 5,
    how: 'Count the grids, drawers or baskets that stand one above the other.',
  },
  {
    key: 'padRoom',
    label: 'room for a pad on the drip plate',
    kind: 'length',
    assumed: {
      value: 0.03,
      doubtFactor: 1.5,
      because: 'pads on drip plates are 2 to 4 cm (0.8 to 1.6 in) thick; from memory',
    },
    least: 0.005,
    most: 0.2,
    how: 'Measure from the plate up to where a pad may reach.',
  },
  {
    key: 'plateRim',
    label: 'height of the rim of the drip plate',
    kind: 'length',
    least: 0.01,
    most: 0.3,
    how: 'Measure from the plate up to the edge over which water runs down outside the media.',
  },
  {
    key: 'holes',
    label: 'number of holes in the drip plate',
    kind: 'count',
    least: 4,
    most: 4000,
    how: 'Count the holes of one row and multiply.',
  },
  {
    key: 'holeBore',
    label: 'bore of a hole in the drip plate',
    kind: 'length',
    assumed: {
      value: 0.004,
      doubtFactor: 1.3,
      because: 'drip holes are usually drilled 3 to 5 mm (0.12 to 0.2 in) wide; from memory',
    },
    least: 0.001,
    most: 0.02,
    how: 'Try the shanks of drills until one just goes in.',
  },
  {
    key: 'holesBlocked',
    label: 'share of the holes that are blocked',
    kind: 'fraction',
    assumed: { value: 0, because: 'all holes are taken as open unless blocked ones were counted' },
    least: 0,
    most: 0.98,
    how: 'Count the holes that do not drip, and divide by all of them.',
  },
] as const satisfies readonly Measurement[];

type Reader = (key: (typeof measurements)[number]['key']) => number;

function spaceAbove(layer: number, count: number): string {
  if (layer === 1) return 'tower-top';
  return layer > count ? 'return' : `between-${layer - 1}-${layer}`;
}

function padChamber(size: Reader, { tower, plateY, padRoomM }: TowerFrame): Chamber {
  const acrossM = 2 * (tower.width + size('towerDepth'));
  return {
    id: 'pad',
    label: 'pad on the drip plate',
    isNamedByMedia: true,
    holds: ['block', 'sheet', 'floss'],
    from: 'on-plate',
    to: 'under-pad',
    areaM2: tower.width * size('towerDepth'),
    depthM: padRoomM,
    flow: 'down',
    listedInWaterOrder: true,
    gap: { thicknessM: 0, widthM: acrossM, lengthM: padRoomM },
    floorOpenFraction: 1,
    widthM: Math.min(tower.width, size('towerDepth')),
    box: { x: tower.x, y: plateY, width: tower.width, height: padRoomM },
  };
}

function layerAt(size: Reader, { tower }: TowerFrame, layer: number): Chamber {
  const count = size('layers');
  const height = tower.step - floorM;
  return {
    id: `layer-${layer}`,
    label: layer === 1 ? 'layer 1 (top)' : `layer ${layer}`,
    holds: ['grains', 'pieces', 'bagged'],
    from: spaceAbove(layer, count),
    to: spaceAbove(layer + 1, count),
    areaM2: tower.width * size('towerDepth'),
    depthM: height,
    flow: 'down',
    listedInWaterOrder: true,
    trickles: true,
    gap: { thicknessM: 0, widthM: 2 * (tower.width + size('towerDepth')), lengthM: height },
    floorOpenFraction: 1,
    widthM: Math.min(tower.width, size('towerDepth')),
    box: { x: tower.x, y: tower.topY - layer * tower.step + floorM, width: tower.width, height },
  };
}

function spacesOf(size: Reader, frame: TowerFrame): readonly Space[] {
  const { tower, plateY, padRoomM, rimY, topY, box } = frame;
  const over = (y: number, height: number): Box => ({ x: tower.x, y, width: tower.width, height });
  return [
    { id: 'overflow', label: "tank's overflow", box: over(topY, 0.05) },
    {
      id: 'on-plate',
      label: 'water on the drip plate',
      box: over(plateY + padRoomM, Math.max(rimY - plateY - padRoomM, innerWallM)),
    },
    { id: 'under-pad', label: 'space under the pad', box: over(plateY - innerWallM, innerWallM) },
    {
      id: 'tower-top',
      label: 'space under the drip plate',
      box: over(tower.topY, Math.max(plateY - innerWallM - tower.topY, innerWallM)),
    },
    ...upTo(size('layers') - 1).map((layer) => ({
      id: spaceAbove(layer + 1, size('layers')),
      label: `between layers ${layer} and ${layer + 1}`,
      box: over(tower.topY - layer * tower.step, floorM),
    })),
    {
      id: 'return',
      label: 'box under the tower',
      box: { x: 0, y: 0, width: box.width, height: box.levelY },
    },
  ];
}

function weirsOf(size: Reader, { tower, rimY, topY, floorHeightM }: TowerFrame): readonly Weir[] {
  return [
    {
      id: 'tank-overflow',
      label: "tank's overflow",
      from: 'overflow',
      to: 'on-plate',
      crestWidthM: size('overflowWidth'),
      crestHeightM: 0,
      purpose: 'passage',
      at: { x: tower.x + tower.width / 2, y: topY + 0.05 },
    },
    {
      id: 'plate-rim',
      label: 'rim of the drip plate',
      from: 'on-plate',
      to: 'return',
      crestWidthM: 2 * (tower.width + size('towerDepth')),
      crestHeightM: floorHeightM + rimY,
      purpose: 'overflow',
      at: { x: tower.x + tower.width, y: rimY },
    },
  ];
}

function dripHoles(size: Reader, { tower, plateY, floorHeightM }: TowerFrame): Opening {
  const open = size('holes') * (1 - size('holesBlocked'));
  return {
    id: 'drip-holes',
    label: 'holes of the drip plate',
    from: 'under-pad',
    to: 'tower-top',
    areaM2: open * roundArea(size('holeBore')),
    bypass: false,
    fallsAtM: floorHeightM + plateY,
    at: { x: tower.x + tower.width / 2, y: plateY },
  };
}

function layOut(given: Measurements): Layout {
  const size = measurementReader(measurements, given);
  const frame = towerFrame(size);
  const { box, floorHeightM, wallY } = frame;
  return {
    spaces: spacesOf(size, frame),
    chambers: [padChamber(size, frame), ...upTo(size('layers')).map((layer) => layerAt(size, frame, layer))],
    openings: [dripHoles(size, frame)],
    leaks: [],
    weirs: weirsOf(size, frame),
    inletSpace: 'overflow',
    outletSpace: 'return',
    pumpPlace: 'last',
    gravityFed: {
      floorHeightM,
      returnLevelM: box.levelY,
      wallHeightM: wallY,
      sections: [{ space: 'return', areaM2: box.width * size('boxDepth'), restLevelM: box.levelY }],
    },
    drawing: towerDrawing(frame),
  };
}

/** Tower over an open box: from the overflow onto a drip plate, down over media in air, back by a pump that lifts. */
export const trickleTower: Family = {
  id: 'trickle-tower',
  name: 'trickle tower',
  says: "The tank's overflow feeds a plate with holes, water drips from it over media that stand in air and gathers in the box below, and the pump lifts it back to the tank; where holes or pad block, water runs over the plate's rim, past the media.",
  measurements,
  assumedShutoffHeadM: 2.5,
  hoses: { intake: false, outlet: true },
  alterations: ['clear-holes', 'hose-bore', 'shorten-hose', 'move-trays', 'siphon-hole'],
  forbidden: [
    'Never rely on a check valve alone against water that runs back: it sticks and it leaks.',
    "Never narrow the tank's overflow or its pipe, and never close the emergency drain.",
    'Never fill the box higher than leaves room for all that comes down when the power fails.',
    'Never let the media stand under water: what they carry hangs on the air between them.',
  ],
  layOut,
};
