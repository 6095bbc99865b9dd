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
import { floorM, floorWithHoles, headHeight, portBoreM, roundArea } from './geometry.ts';
import type { Family, Layout, Leak, Measurement, Space } from './layout.ts';
import { headSpace, measurementReader } from './measuring.ts';

const measurements = [
  ...aboutTubeMeasurements,
  {
    key: 'tubeBore',
    label: 'bore of the tube in the middle',
    kind: 'length',
    assumed: {
      value: 0.018,
      doubtFactor: 1.4,
      because: 'such tubes are a little wider inside than a 16 mm (5/8 in) hose; from memory',
    },
    least: 0.004,
    most: 0.15,
    how: 'Measure across the inside of the tube at its upper end.',
  },
  {
    key: 'footGap',
    label: 'gap under the foot of the tube',
    kind: 'length',
    assumed: {
      value: 0.0002,
      doubtFactor: 2,
      because: 'a foot seal that has set leaves about a fifth of a millimetre; from memory',
    },
    least: 0,
    most: 0.01,
    how: 'Lay putty on the seat of the tube, press the tube down, lift it and measure the putty; 0 where its seal is new.',
  },
  headSpace,
] as const satisfies readonly Measurement[];

type Reader = (key: (typeof measurements)[number]['key']) => number;

function drawingOf(size: Reader): Layout['drawing'] {
  const rings = ringsOf(size);
  const width = 2 * rings.housingRadiusM;
  const height = heightAboutTube(rings, size('headSpace'));
  const head = headHeight(width);
  const pump = pumpOverTube(rings, height);
  const endY = height + head + 0.04;
  const inlet = { x: portBoreM / 2 + 0.002, y: endY };
  const outlet = { x: rings.housingRadiusM, y: endY };
  const port = { x: inlet.x - portBoreM / 2, width: portBoreM };
  const middle = rings.housingRadiusM;
  const overMediaY = height - size('headSpace') / 2;
  return {
    housing: [
      { x: 0, y: 0, width, height },
      { x: 0, y: height, width, height: head },
    ],
    pump,
    walls: [
      ...capsAndTube(rings),
      ...floorWithHoles({
        y: height,
        widthM: width,
        holes: [port, { x: middle - size('tubeBore') / 2, width: size('tubeBore') }],
      }),
    ],
    stubs: [
      { side: 'intake', boreM: portBoreM, along: [inlet, { x: inlet.x, y: height }] },
      {
        side: 'outlet',
        boreM: portBoreM,
        along: [{ x: middle, y: pump.y + pump.height }, outlet],
      },
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
    mainPath: [inlet, { x: inlet.x, y: overMediaY }, ...throughRings(rings, overMediaY), outlet],
  };
}

function spacesOf(size: Reader): readonly Space[] {
  const rings = ringsOf(size);
  const height = heightAboutTube(rings, size('headSpace'));
  const [outside, tube] = spacesAboutTube(rings, height);
  const pump = pumpOverTube(rings, height);
  return [
    spaceOf('outside', 'space round the media', outside),
    spaceOf('tube', 'tube in the middle', tube),
    spaceOf('pump-space', 'space under the pump', {
      x: pump.x,
      y: tube.height,
      width: pump.width,
      height: height - tube.height,
    }),
  ];
}

function footGap(size: Reader): Leak {
  const { housingRadiusM, innerRadiusM, footY } = ringsOf(size);
  return {
    id: 'tube-foot',
    label: 'slot under the foot of the tube',
    measurement: 'footGap',
    sealedBy: 'ring',
    from: 'outside',
    to: 'tube',
    thicknessM: size('footGap'),
    widthM: 2 * Math.PI * innerRadiusM,
    lengthM: floorM,
    at: { x: housingRadiusM - innerRadiusM, y: footY / 4 },
  };
}

function layOut(given: Measurements): Layout {
  const size = measurementReader(measurements, given);
  const { housingRadiusM, footY, lengthM } = ringsOf(size);
  return {
    spaces: spacesOf(size),
    chambers: [
      chamberAboutTube(size, {
        id: 'media',
        label: 'media round the tube',
        isNamedByMedia: true,
        holds: ['block', 'sheet', 'floss', 'grains', 'pieces'],
        from: 'outside',
        to: 'tube',
      }),
    ],
    openings: [
      {
        id: 'tube-mouth',
        label: 'mouth of the tube',
        from: 'tube',
        to: 'pump-space',
        areaM2: roundArea(size('tubeBore')),
        bypass: false,
        at: { x: housingRadiusM, y: footY + lengthM },
      },
    ],
    leaks: [footGap(size)],
    weirs: [],
    inletSpace: 'outside',
    outletSpace: 'pump-space',
    pumpPlace: 'last',
    drawing: drawingOf(size),
  };
}

/** External canister with a tube in its middle: in round the media, inward through them, up the tube to the pump. */
export const centralTubeCanister: Family = {
  id: 'central-tube-canister',
  name: 'canister with a tube in the middle',
  says: 'Water comes in round the media, crosses them from all sides towards the tube in the middle, rises in it and the pump in the head sends it back; the seal under the tube and the end caps are the ways past the media.',
  measurements,
  assumedShutoffHeadM: 1.2,
  hoses: { intake: true, outlet: true },
  alterations: ['renew-end-seals', 'trim-sleeve', ...canisterAlterations],
  forbidden: [
    'Never shorten the tube below the height at which dirt gathers.',
    'Never drill the tube: every hole in it is a way past the media.',
    canisterRules.uncutHousing,
    canisterRules.openIntake,
  ],
  layOut,
};
