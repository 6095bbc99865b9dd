import type { Measurements } from '../model/model.ts';
import { floorM, gapAllRound, innerWallM, upTo } from './geometry.ts';
import { heldInBasket } from './holding.ts';
import type { Box, Chamber, Family, GravityFed, Layout, Opening, Space, Weir } from './layout.ts';
import { measurementReader } from './measuring.ts';
import { sumpDrawing } from './sumpDrawing.ts';
import { type SumpFrame, sumpFrame } from './sumpFrame.ts';
import { type SumpKey, sumpMeasurements } from './sumpMeasurements.ts';

type Reader = (key: SumpKey) => number;

function spaceAbove(tray: number, count: number): string {
  if (tray === 1) return 'media-top';
  return tray > count ? 'media-foot' : `between-${tray - 1}-${tray}`;
}

/** The socks as one bed of cloth: their wetted walls and bottoms side by side. */
function sockChamber(size: Reader, { sock }: SumpFrame): Chamber {
  const across = sock.diameterM;
  const areaM2 = size('socks') * Math.PI * across * (sock.wettedM + across / 4);
  const depthM = size('sockThickness');
  return {
    id: 'sock',
    label: 'sock',
    isNamedByMedia: true,
    holds: ['cloth'],
    from: 'in-sock',
    to: 'sock-section',
    areaM2,
    depthM,
    flow: 'down',
    listedInWaterOrder: true,
    gap: { thicknessM: 0, widthM: Math.PI * across, lengthM: depthM },
    floorOpenFraction: 1,
    widthM: across,
    box: { x: sock.middleX - across / 2, y: sock.bottomY, width: across, height: depthM },
  };
}

function trayAt(size: Reader, frame: SumpFrame, tray: number): Chamber {
  const { media } = frame;
  const gap = Math.min(size('mediaGap'), 0.2 * media.width, 0.2 * size('boxDepth'));
  const width = media.width - 2 * gap;
  const depth = size('boxDepth') - 2 * gap;
  const height = media.step - floorM;
  const count = size('trays');
  return {
    id: `tray-${tray}`,
    label: tray === 1 ? 'tray 1 (top)' : `tray ${tray}`,
    holds: heldInBasket,
    from: spaceAbove(tray, count),
    to: spaceAbove(tray + 1, count),
    areaM2: width * depth,
    depthM: height,
    flow: 'down',
    listedInWaterOrder: true,
    gap: gapAllRound({ widthM: width, depthM: depth, heightM: height, thicknessM: gap }),
    floorOpenFraction: size('floorOpenFraction'),
    widthM: Math.min(width, depth),
    box: { x: media.x + gap, y: media.topY - tray * media.step + floorM, width, height },
  };
}

function spacesOf(size: Reader, frame: SumpFrame): readonly Space[] {
  const { sock, media, trap, last, wallY } = frame;
  const count = size('trays');
  const inMedia = (y: number, height: number): Box => ({ x: media.x, y, width: media.width, height });
  return [
    {
      id: 'overflow',
      label: "tank's overflow",
      box: { x: sock.middleX - 0.015, y: wallY, width: 0.03, height: 0.05 },
    },
    {
      id: 'in-sock',
      label: 'inside of the sock',
      box: {
        x: sock.middleX - sock.diameterM / 2,
        y: sock.bottomY + size('sockThickness'),
        width: sock.diameterM,
        height: sock.rimY - sock.bottomY,
      },
    },
    {
      id: 'sock-section',
      label: 'section with the sock',
      box: { x: 0, y: 0, width: sock.sectionWidth, height: sock.bottomY },
    },
    {
      id: 'media-top',
      label: 'space above the media',
      box: inMedia(media.topY, Math.max(wallY - media.topY, innerWallM)),
    },
    ...upTo(count - 1).map((tray) => ({
      id: spaceAbove(tray + 1, count),
      label: `between trays ${tray} and ${tray + 1}`,
      box: inMedia(media.topY - tray * media.step, floorM),
    })),
    { id: 'media-foot', label: 'space under the media', box: inMedia(0, media.footY) },
    { id: 'trap', label: 'bubble trap', box: { x: trap.x, y: 0, width: trap.width, height: trap.edgeY } },
    {
      id: 'return',
      label: 'section with the pump',
      box: { x: last.x, y: 0, width: last.width, height: last.levelY },
    },
  ];
}

function sockWeirs(size: Reader, { sock, wallY, floorHeightM }: SumpFrame): readonly Weir[] {
  return [
    {
      id: 'tank-overflow',
      label: "tank's overflow",
      from: 'overflow',
      to: 'in-sock',
      crestWidthM: size('overflowWidth'),
      crestHeightM: 0,
      purpose: 'passage',
      at: { x: sock.middleX, y: wallY + 0.05 },
    },
    {
      id: 'sock-rim',
      label: "sock's rim",
      from: 'in-sock',
      to: 'sock-section',
      crestWidthM: size('socks') * Math.PI * sock.diameterM,
      crestHeightM: floorHeightM + sock.rimY,
      purpose: 'overflow',
      at: { x: sock.middleX + sock.diameterM / 2, y: sock.rimY },
    },
  ];
}

function baffleWeirs(size: Reader, { sock, media, trap, floorHeightM }: SumpFrame): readonly Weir[] {
  const edge = (y: number) => ({ crestWidthM: size('boxDepth'), crestHeightM: floorHeightM + y });
  return [
    {
      id: 'first-baffle',
      label: 'first baffle',
      from: 'sock-section',
      to: 'media-top',
      ...edge(sock.edgeY),
      purpose: 'passage',
      at: { x: media.x - innerWallM, y: sock.edgeY },
    },
    {
      id: 'over-media-baffle',
      label: 'edge of the baffle behind the media',
      from: 'media-top',
      to: 'trap',
      ...edge(media.edgeY),
      purpose: 'overflow',
      at: { x: trap.x - innerWallM, y: media.edgeY },
    },
    {
      id: 'last-baffle',
      label: 'last baffle',
      from: 'trap',
      to: 'return',
      ...edge(trap.edgeY),
      purpose: 'passage',
      at: { x: trap.x + trap.width, y: trap.edgeY },
    },
  ];
}

function openingsOf(size: Reader, { trap, media }: SumpFrame): readonly Opening[] {
  return [
    {
      id: 'under-baffle',
      label: 'opening under the baffle',
      from: 'media-foot',
      to: 'trap',
      areaM2: media.openingM * size('boxDepth'),
      bypass: false,
      at: { x: trap.x, y: media.openingM / 2 },
    },
  ];
}

function gravityOf(size: Reader, frame: SumpFrame): GravityFed {
  const across = size('boxDepth');
  const { sock, media, trap, last, floorHeightM, wallY } = frame;
  return {
    floorHeightM,
    returnLevelM: last.levelY,
    wallHeightM: wallY,
    sections: [
      { space: 'sock-section', areaM2: sock.sectionWidth * across, restLevelM: sock.edgeY },
      // What stands in the media section runs on under its baffle, down to the last edge.
      { space: 'media-top', areaM2: media.width * across, restLevelM: trap.edgeY },
      { space: 'trap', areaM2: trap.width * across, restLevelM: trap.edgeY },
      { space: 'return', areaM2: last.width * across, restLevelM: last.levelY },
    ],
  };
}

function layOut(given: Measurements): Layout {
  const size = measurementReader(sumpMeasurements, given);
  const frame = sumpFrame(size);
  return {
    spaces: spacesOf(size, frame),
    chambers: [sockChamber(size, frame), ...upTo(size('trays')).map((tray) => trayAt(size, frame, tray))],
    openings: openingsOf(size, frame),
    leaks: [],
    weirs: [...sockWeirs(size, frame), ...baffleWeirs(size, frame)],
    inletSpace: 'overflow',
    outletSpace: 'return',
    pumpPlace: 'last',
    gravityFed: gravityOf(size, frame),
    drawing: sumpDrawing(frame),
  };
}

/** Open box under the tank: from the overflow through a sock, over and under baffles, back by a pump that lifts. */
export const sump: Family = {
  id: 'sump',
  name: 'sump',
  says: "The tank's overflow feeds a sock, water falls over the first baffle onto the media, passes under the next and over the last one, and the pump lifts it back to the tank; a full sock spills over its rim, past its cloth.",
  measurements: sumpMeasurements,
  assumedShutoffHeadM: 2.5,
  hoses: { intake: false, outlet: true },
  alterations: ['more-socks', 'seal-gaps', 'hose-bore', 'shorten-hose', 'move-trays', 'siphon-hole'],
  forbidden: [
    'Never rely on a check valve alone against water that runs back: it sticks and it leaks.',
    "Never narrow the tank's overflow or its pipe, and never close the emergency drain.",
    'Never fill the box higher than leaves room for all that comes down when the power fails.',
    'Never close the rim that a full sock spills over.',
  ],
  layOut,
};
