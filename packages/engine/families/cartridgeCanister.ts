import type { Measurements } from '../model/model.ts';
import {
  aboutTubeMeasurements,
  capsAndTube,
  chamberAboutTube,
  heightAboutTube,
  pumpOverTube,
  ringsOf,
  spaceOf,
  spacesAboutTube,
  throughRings,
} from './aboutTube.ts';
import { canisterAlterations, canisterRules } from './canisterRules.ts';
import { floorM, floorWithHoles, headHeight, innerWallM, portBoreM, roundArea } from './geometry.ts';
import type { Family, Layout, Leak, Measurement, Opening, Point, Space } from './layout.ts';
import { headSpace, measurementReader } from './measuring.ts';

const measurements = [
  ...aboutTubeMeasurements,
  {
    key: 'spigotBore',
    label: 'bore of the spigot that the cartridge sits on',
    kind: 'length',
    assumed: {
      value: 0.016,
      doubtFactor: 1.4,
      because: 'spigots are about as wide inside as the outlet hose; from memory',
    },
    least: 0.004,
    most: 0.15,
    how: 'Measure across the inside of the spigot or of the opening into the pump.',
  },
  {
    key: 'spigotGap',
    label: 'gap round the spigot',
    kind: 'length',
    assumed: {
      value: 0.0002,
      doubtFactor: 2,
      because: 'a cartridge that slides on by hand leaves about a fifth of a millimetre; from memory',
    },
    least: 0,
    most: 0.01,
    how: 'Measure the bore of the end cap and the spigot across, and take half the difference; 0 where a seal ring is tight.',
  },
  headSpace,
] as const satisfies readonly Measurement[];

type Reader = (key: (typeof measurements)[number]['key']) => number;

/** How far the port in the side stands out on the drawing, m. */
const portOutM = 0.03;

/** Where the water comes in: at the side, by the upper end of the cartridge. */
function sidePort(size: Reader): Point {
  const { footY, lengthM } = ringsOf(size);
  return { x: 0, y: footY + 0.85 * lengthM };
}

function drawingOf(size: Reader): Layout['drawing'] {
  const rings = ringsOf(size);
  const width = 2 * rings.housingRadiusM;
  const middle = rings.housingRadiusM;
  const height = heightAboutTube(rings, size('headSpace'));
  const head = headHeight(width);
  const pump = pumpOverTube(rings, height);
  const port = sidePort(size);
  const inlet = { x: -portOutM, y: port.y };
  const outlet = { x: middle, y: height + head + 0.04 };
  const spigot = { x: middle - size('spigotBore') / 2, width: size('spigotBore') };
  return {
    housing: [
      { x: 0, y: 0, width, height },
      { x: 0, y: height, width, height: head },
    ],
    pump,
    walls: [...capsAndTube(rings), ...floorWithHoles({ y: height, widthM: width, holes: [spigot] })],
    stubs: [
      { side: 'intake', boreM: portBoreM, along: [inlet, port] },
      { side: 'outlet', boreM: portBoreM, along: [{ x: middle, y: pump.y + pump.height }, outlet] },
    ],
    inlet,
    outlet,
    dimensions: [
      {
        measurement: 'mediaLength',
        from: { x: width, y: rings.footY },
        to: { x: width, y: rings.footY + rings.lengthM },
      },
      {
        measurement: 'mediaDiameter',
        from: { x: middle - rings.outerRadiusM, y: 0 },
        to: { x: middle + rings.outerRadiusM, y: 0 },
      },
    ],
    mainPath: [inlet, ...throughRings(rings, inlet.y), outlet],
  };
}

function spacesOf(size: Reader): readonly Space[] {
  const rings = ringsOf(size);
  const height = heightAboutTube(rings, size('headSpace'));
  const [outside, core] = spacesAboutTube(rings, height);
  const pump = pumpOverTube(rings, height);
  return [
    spaceOf('outside', 'space round the cartridge', outside),
    spaceOf('core', 'core of the cartridge', core),
    spaceOf('pump-space', 'space under the pump', {
      x: pump.x,
      y: core.height,
      width: pump.width,
      height: height - core.height,
    }),
  ];
}

function openingsOf(size: Reader): readonly Opening[] {
  const { housingRadiusM, footY, lengthM } = ringsOf(size);
  return [
    {
      id: 'spigot',
      label: 'spigot',
      from: 'core',
      to: 'pump-space',
      areaM2: roundArea(size('spigotBore')),
      bypass: false,
      at: { x: housingRadiusM, y: footY + lengthM },
    },
  ];
}

function spigotGap(size: Reader): Leak {
  const { housingRadiusM, innerRadiusM, footY, lengthM } = ringsOf(size);
  return {
    id: 'spigot-gap',
    label: 'gap round the spigot',
    measurement: 'spigotGap',
    sealedBy: 'ring',
    from: 'outside',
    to: 'pump-space',
    thicknessM: size('spigotGap'),
    widthM: Math.PI * size('spigotBore'),
    lengthM: 2 * floorM,
    at: { x: housingRadiusM - innerRadiusM, y: footY + lengthM + innerWallM + size('headSpace') / 2 },
  };
}

function layOut(given: Measurements): Layout {
  const size = measurementReader(measurements, given);
  return {
    spaces: spacesOf(size),
    chambers: [
      chamberAboutTube(size, {
        id: 'cartridge',
        label: 'cartridge',
        holds: ['block', 'sheet'],
        from: 'outside',
        to: 'core',
      }),
    ],
    openings: openingsOf(size),
    leaks: [spigotGap(size)],
    weirs: [],
    inletSpace: 'outside',
    outletSpace: 'pump-space',
    pumpPlace: 'last',
    drawing: drawingOf(size),
  };
}

/** External canister with a port in its side: round a cartridge, inward through it, out of its core to the pump. */
export const cartridgeCanister: Family = {
  id: 'cartridge-canister',
  name: 'canister with a cartridge',
  says: 'Water comes in at the side, crosses the cartridge from all sides towards its core and leaves by the spigot to the pump; the area is large and the depth small, and the end caps and the spigot are the ways past the media.',
  measurements,
  assumedShutoffHeadM: 1.4,
  hoses: { intake: true, outlet: true },
  alterations: ['renew-end-seals', 'trim-sleeve', 'turn-cartridge', ...canisterAlterations],
  forbidden: [
    'Never let the water run through the cartridge backwards for good: it washes the dirt into the core.',
    'Never stretch a sleeve over a core that is cracked or crushed: replace the core first.',
    'Never press a cartridge home with a tool, and never grease its seals with petroleum jelly: it swells rubber.',
    canisterRules.uncutHousing,
  ],
  layOut,
};
