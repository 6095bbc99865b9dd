import type { LiftTube } from '../laws/hydraulics/airLift.ts';
import type { Drive } from '../model/pump.ts';
import type { Box, Layout, Measurement, Point, Stub } from './layout.ts';

/** Inside diameter of the lift tube. */
const tubeBore = {
  key: 'tubeBore',
  label: 'bore of the lift tube',
  kind: 'length',
  least: 0.004,
  most: 0.08,
  how: 'Measure across the inside of the tube in which the bubbles rise.',
} as const satisfies Measurement;

const tubeRise = {
  key: 'tubeRise',
  label: 'height of the lift tube over the air',
  kind: 'length',
  least: 0.03,
  most: 2,
  how: 'Measure from where the air comes out up to the mouth of the tube, along the tube.',
} as const satisfies Measurement;

const airDepth = {
  key: 'airDepth',
  label: 'depth of the air under the surface',
  kind: 'length',
  least: 0.03,
  most: 2,
  how: 'Measure from the water surface down to where the air comes out of its line, with the tank filled as usual.',
} as const satisfies Measurement;

const tubeTurned = {
  key: 'tubeTurned',
  label: 'whether the tube turns at its mouth',
  kind: 'yes-no',
  assumed: { value: 1, because: 'most lift tubes end in an elbow; common practice, no source' },
  least: 0,
  most: 1,
  how: 'Look whether the tube ends in an elbow or open, straight up.',
} as const satisfies Measurement;

/** A short elbow by Hooper 1981 at high Reynolds numbers: 0.4(1 + 1 in/D). */
const elbowK = (boreM: number): number => 0.4 * (1 + 0.0254 / boreM);

/** What a technician measures on a lift tube; where a pump stands on the tube the depth of the air says nothing. */
export const liftTubeMeasurements = [tubeBore, tubeRise, airDepth, tubeTurned] as const;

/** How many lift tubes share the air. */
export const tubeCount = {
  key: 'tubes',
  label: 'number of lift tubes',
  kind: 'count',
  assumed: {
    value: 1,
    because: 'one lift tube is taken where none were counted; common practice, no source',
  },
  least: 1,
  most: 8,
  how: 'Count the tubes in which bubbles rise.',
} as const satisfies Measurement;

type Reader = (key: 'tubeBore' | 'tubeRise' | 'airDepth' | 'tubeTurned') => number;

export function liftTubeOf(size: Reader, tubes: number): LiftTube {
  return {
    tubes,
    boreM: size('tubeBore'),
    riseM: size('tubeRise'),
    airDepthM: size('airDepth'),
    bendK: size('tubeTurned') * elbowK(size('tubeBore')),
  };
}

/** Height of glass that is drawn above the water, m. */
const freeboardM = 0.03;

/** A mouth is drawn no higher than this times the height of the water. */
const MOST_OVER_WATER = 1.3;

/** How far the mouth reaches to the side, m. */
const mouthReachM = 0.04;

/** Where a lift tube stands in a section of the tank. */
interface Standing {
  /** Middle line of the tube. */
  readonly x: number;
  /** Where the tube begins, and the least height of its air. */
  readonly footY: number;
  readonly airY: number;
  /** Height that the water must be drawn above, and the greatest at which it is drawn, m: deeper tanks are shortened. */
  readonly aboveY: number;
  readonly atMostY?: number;
  /** The mouth is drawn no lower than this. */
  readonly leastMouthY?: number;
  readonly turnsTo: 'left' | 'right';
  readonly drive: Drive;
}

/** What a lift tube adds to the drawing of the tank that it stands in. */
export interface DrawnLift {
  readonly waterLevelY: number;
  readonly topY: number;
  /** Height of the air's entry. */
  readonly airY: number;
  readonly mouth: Point;
  readonly outlet: Point;
  readonly stub: Stub;
  readonly pump: Box;
  readonly airLine?: readonly Point[];
}

/** The tube with its mouth, its air line or the pump on it, and the water's surface by the depth of the air. */
export function drawLift(size: Reader, standing: Standing): DrawnLift {
  const { x, airY, drive } = standing;
  const bore = size('tubeBore');
  const isAir = drive === 'air-lift';
  const atMostY = Math.max(standing.aboveY, standing.atMostY ?? Number.POSITIVE_INFINITY);
  const waterLevelY = Math.min(atMostY, Math.max(airY + size('airDepth'), standing.aboveY));
  const shown = Math.min(
    size('tubeRise'),
    (MOST_OVER_WATER * waterLevelY * size('tubeRise')) / size('airDepth'),
  );
  const mouthY = Math.min(
    Math.max(airY + shown, standing.footY + bore, standing.leastMouthY ?? 0),
    MOST_OVER_WATER * waterLevelY,
  );
  const mouth = { x, y: mouthY };
  const reach = mouthReachM + bore / 2;
  const outlet = { x: x + (standing.turnsTo === 'right' ? reach : -reach), y: mouthY };
  const stub = { side: 'outlet', boreM: bore, along: [{ x, y: standing.footY }, mouth, outlet] } as const;
  const pump = isAir
    ? { x: x - bore / 2, y: airY - bore / 2, width: bore, height: bore }
    : { x: x - 0.02, y: mouthY - 0.02, width: 0.04, height: 0.04 };
  const topY = Math.max(waterLevelY, mouthY + bore / 2, pump.y + pump.height) + freeboardM;
  const lineX = x - bore / 4;
  const airLine = [
    { x: lineX, y: topY + 0.01 },
    { x: lineX, y: airY },
  ];
  return { waterLevelY, topY, airY, mouth, outlet, stub, pump, ...(isAir ? { airLine } : {}) };
}

/** The parts of a drawing that every lift tube in a tank has. */
export function liftDrawing(lift: DrawnLift): Pick<Layout['drawing'], 'pump' | 'airLine' | 'waterLevelY'> {
  const { pump, waterLevelY, airLine } = lift;
  return { pump, waterLevelY, ...(airLine === undefined ? {} : { airLine }) };
}

/** What must never be done to any filter on air. */
export const checkValveInAirLine =
  'Never stand the air pump below the water surface without a check valve in the air line: water can run back into it.';
