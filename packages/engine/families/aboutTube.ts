import { headHeight, innerWallM } from './geometry.ts';
import type { Box, Chamber, Gap, Measurement, Point, Space } from './layout.ts';

/** What families of which the media lie about a tube have in common. */

/** Measurements of media about a tube, and of the ways past them. */
export const aboutTubeMeasurements = [
  {
    key: 'housingBore',
    label: 'inner diameter of the housing',
    kind: 'length',
    least: 0.06,
    most: 0.6,
    how: 'Measure across the inside of the housing at half its height.',
  },
  {
    key: 'mediaDiameter',
    label: 'outer diameter of the media',
    kind: 'length',
    least: 0.05,
    most: 0.59,
    how: 'Measure across the basket, or round the sleeve with a tape and divide by 3.14.',
  },
  {
    key: 'mediaLength',
    label: 'length of the media between the end caps',
    kind: 'length',
    least: 0.04,
    most: 1.2,
    how: 'Measure from the inside of one end cap to the inside of the other.',
  },
  {
    key: 'tubeDiameter',
    label: 'outer diameter of the tube in the middle',
    kind: 'length',
    least: 0.01,
    most: 0.2,
    how: 'Measure across the outside of the tube, with its ribs.',
  },
  {
    key: 'tubeOpenFraction',
    label: 'open share of the tube',
    kind: 'fraction',
    assumed: {
      value: 0.25,
      doubtFactor: 1.6,
      because: 'slots and holes leave about a quarter of such a tube open; from memory',
    },
    least: 0.02,
    most: 1,
    how: 'Count the holes or slots over one hand of length, measure one, multiply, and divide by the surface of that length.',
  },
  {
    key: 'endCapGap',
    label: 'gap between media and end caps',
    kind: 'length',
    assumed: {
      value: 0.0003,
      doubtFactor: 2,
      because: 'end caps that only lie on leave about a third of a millimetre at each end; from memory',
    },
    least: 0,
    most: 0.01,
    how: 'Lay putty on both end caps, close the filter, open it, measure the putty at both ends and take the mean; 0 where a foam sleeve is squeezed.',
  },
] as const satisfies readonly Measurement[];

type Key = (typeof aboutTubeMeasurements)[number]['key'];
type Reader = (key: Key) => number;

/** Least thickness of media about a tube, m: sizes that leave less are taken as this. */
const thinnestM = 0.003;
/** Height of the lower end cap over the floor on the drawing, m: no measurement depends on it. */
const footM = 0.016;
/** Least clear way between housing and media, m. */
const narrowestM = 0.001;

/** Where the rings lie, m. */
export interface Rings {
  readonly housingRadiusM: number;
  readonly outerRadiusM: number;
  readonly innerRadiusM: number;
  readonly lengthM: number;
  /** Height of the media's lower end over the floor, on the drawing. */
  readonly footY: number;
}

/** Radii from the measurements: media lie inside the housing and outside the tube, whatever was written. */
export const ringsOf = (size: Reader): Rings => {
  const housingRadiusM = size('housingBore') / 2;
  const outerRadiusM = Math.min(size('mediaDiameter') / 2, housingRadiusM - narrowestM);
  const innerRadiusM = Math.min(size('tubeDiameter') / 2, outerRadiusM - thinnestM);
  return { housingRadiusM, outerRadiusM, innerRadiusM, lengthM: size('mediaLength'), footY: footM };
};

/**
 * The slots at both end caps, which the water crosses towards the tube: a plane slot as wide as the logarithmic mean
 * of its two circumferences takes the same head in laminar flow.
 */
const endCapGap = ({ outerRadiusM, innerRadiusM }: Rings, thicknessM: number): Gap => {
  const lengthM = outerRadiusM - innerRadiusM;
  const meanM = (2 * Math.PI * lengthM) / Math.log1p(lengthM / innerRadiusM);
  return { thicknessM, widthM: 2 * meanM, lengthM };
};

/** Mean area of a hollow cylinder, m²: times its thickness it is its volume. */
const meanArea = ({ outerRadiusM, innerRadiusM, lengthM }: Rings): number =>
  Math.PI * (outerRadiusM + innerRadiusM) * lengthM;

/** The chamber about the tube, from the space outside it to that in the tube. */
export const chamberAboutTube = (
  size: Reader,
  named: Pick<Chamber, 'id' | 'label' | 'isNamedByMedia' | 'holds' | 'from' | 'to'>,
): Chamber => {
  const rings = ringsOf(size);
  const { housingRadiusM, outerRadiusM, innerRadiusM, lengthM, footY } = rings;
  const depthM = outerRadiusM - innerRadiusM;
  const cut = { y: footY, width: depthM, height: lengthM };
  return {
    ...named,
    areaM2: meanArea(rings),
    depthM,
    flow: 'right',
    listedInWaterOrder: true,
    gap: endCapGap(rings, size('endCapGap')),
    floorOpenFraction: size('tubeOpenFraction'),
    widthM: lengthM,
    ring: { innerRadiusM, lengthM },
    box: { ...cut, x: housingRadiusM - outerRadiusM },
    twin: { ...cut, x: housingRadiusM + innerRadiusM },
  };
};

/** The water outside the media as far as the section shows it on its left, and that in the tube. */
export const spacesAboutTube = (
  { housingRadiusM, outerRadiusM, innerRadiusM, lengthM, footY }: Rings,
  innerHeightM: number,
): readonly [outside: Box, tube: Box] => [
  { x: 0, y: 0, width: housingRadiusM - outerRadiusM, height: innerHeightM },
  { x: housingRadiusM - innerRadiusM, y: 0, width: 2 * innerRadiusM, height: footY + lengthM },
];

/** The end caps and what the tube is cut of on the drawing, as walls. */
export const capsAndTube = ({
  housingRadiusM,
  outerRadiusM,
  innerRadiusM,
  lengthM,
  footY,
}: Rings): readonly Box[] => {
  const breadth = outerRadiusM - innerRadiusM;
  const halves = [housingRadiusM - outerRadiusM, housingRadiusM + innerRadiusM];
  const ends = [footY - innerWallM, footY + lengthM];
  const caps = ends.flatMap((y) => halves.map((x) => ({ x, y, width: breadth, height: innerWallM })));
  const feet = [housingRadiusM - innerRadiusM - innerWallM, housingRadiusM + innerRadiusM];
  return [...caps, ...feet.map((x) => ({ x, y: footY / 2, width: innerWallM, height: footY / 2 }))];
};

/** A pump in the head over the tube's middle line. */
export const pumpOverTube = ({ housingRadiusM }: Rings, innerHeightM: number): Box => {
  const width = Math.min(housingRadiusM, 0.09);
  return {
    x: housingRadiusM - width / 2,
    y: innerHeightM + innerWallM,
    width,
    height: 0.6 * headHeight(2 * housingRadiusM),
  };
};

/** Whole height inside the housing, m. */
export const heightAboutTube = (rings: Rings, headSpaceM: number): number =>
  rings.footY + rings.lengthM + innerWallM + headSpaceM;

/** A space with its name. */
export const spaceOf = (id: string, label: string, box: Box): Space => ({ id, label, box });

/** The way of the water from outside the media, through them and up the tube. */
export const throughRings = (
  { housingRadiusM, outerRadiusM, lengthM, footY }: Rings,
  fromY: number,
): readonly Point[] => {
  const x = (housingRadiusM - outerRadiusM) / 2;
  const y = footY + 0.4 * lengthM;
  return [
    { x, y: fromY },
    { x, y },
    { x: housingRadiusM, y },
  ];
};
