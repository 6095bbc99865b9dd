import { monotoneSpline } from '../numerics/monotone.ts';
import { bytesOn, floatsFrom, floatsOn, type Slab } from '../numerics/slab.ts';
import type { LinkLaw, NetworkSpec } from './links.ts';

export const LINK_KIND = {
  resistance: 0,
  conduit: 1,
  pump: 2,
  'pump-points': 3,
  weir: 4,
  'one-way': 5,
  'fixed-head': 6,
} as const;

/** Numbers that a link's law needs, in `parameters` from `link * PARAMETER_STRIDE` on. */
export const PARAMETER_STRIDE = 10;

/** Place of a conduit's curvature among its numbers. */
export const CURVATURE = 7;

/** Head slope of a law at a usual flow, s/m². */
export const usualSlopeOf = (law: LinkLaw, flow: number, gravity: number): number => {
  switch (law.kind) {
    case 'resistance':
    case 'one-way':
      return law.linear + 2 * law.quadratic * flow;
    case 'conduit': {
      const k = (0.04 * law.lengthM) / law.hydraulicDiameterM + law.minorK;
      return law.linear + (k * flow) / (gravity * law.areaM2 ** 2);
    }
    case 'pump':
      return law.coefficient * law.exponent * flow ** (law.exponent - 1);
    case 'pump-points':
      return (law.headM[0]! - law.headM.at(-1)!) / (law.flowM3PerS.at(-1)! - law.flowM3PerS[0]!);
    case 'weir':
      return ((2 / 3) * (flow / law.coefficient) ** (2 / 3)) / flow;
  }
};

/** Largest head that is given or asked whatever flows, m: by pumps at no flow, fixed heads and check valves. */
export const givenHead = (spec: NetworkSpec): number => {
  let largest = 0;
  for (const head of Object.values(spec.fixedHeadsM)) largest = Math.max(largest, Math.abs(head));
  for (const { law } of spec.links) {
    if (law.kind === 'pump') largest = Math.max(largest, Math.abs(law.shutoffHeadM));
    if (law.kind === 'pump-points') largest = Math.max(largest, Math.abs(law.headM[0]!));
    if (law.kind === 'one-way') largest = Math.max(largest, law.crackingHeadM ?? 0);
  }
  return largest;
};

/** Whether a law lets water one way only. */
export const letsOneWay = (law: LinkLaw): boolean => law.kind === 'weir' || law.kind === 'one-way';

/** What the numbers of laws are written into. */
interface Filling {
  readonly spec: NetworkSpec;
  readonly parameters: Float64Array;
  readonly tables: number[];
}

/** Losses first, as a resistance has them: per flow, per flow squared, and the latter for a friction factor of 1. */
const fillConduit = (filling: Filling, at: number, law: Extract<LinkLaw, { kind: 'conduit' }>): void => {
  const { parameters: p, spec } = filling;
  const velocityHead = 1 / (2 * spec.gravityMPerS2 * law.areaM2 ** 2);
  p[at] = law.linear;
  p[at + 1] = velocityHead * law.minorK;
  p[at + 2] = (velocityHead * law.lengthM) / law.hydraulicDiameterM;
  p[at + 3] = law.hydraulicDiameterM / (law.areaM2 * spec.kinematicViscosityM2PerS);
  p[at + 4] = law.relativeRoughness;
  p[at + 5] = law.laminarConstant;
  p[at + 6] = law.friction === 'churchill' ? 0 : 1;
  p[at + CURVATURE] = law.curvature ?? 0;
};

const fillLaw = (filling: Filling, at: number, law: LinkLaw): void => {
  const { parameters: p, tables } = filling;
  switch (law.kind) {
    case 'resistance':
    case 'one-way':
      p[at] = law.linear;
      p[at + 1] = law.quadratic;
      if (law.kind === 'one-way') p[at + 2] = law.crackingHeadM ?? 0;
      break;
    case 'conduit':
      fillConduit(filling, at, law);
      break;
    case 'pump':
      p[at] = law.shutoffHeadM;
      p[at + 1] = law.coefficient;
      p[at + 2] = law.exponent;
      break;
    case 'pump-points':
      p[at] = tables.length;
      p[at + 1] = law.flowM3PerS.length;
      tables.push(...pumpTable(law));
      break;
    case 'weir':
      p[at] = law.coefficient;
      p[at + 1] = law.tailwaterM ?? 0;
  }
};

/**
 * Kind and numbers of every link, those that tie the fixed heads to the ground last.
 * @param fixed nodes with fixed heads, in the order of their ties
 */
export const fillParameters = (spec: NetworkSpec, fixed: readonly string[], slab: Slab) => {
  const { links, fixedHeadsM } = spec;
  const linkCount = links.length + fixed.length;
  const kind = bytesOn(slab, linkCount);
  const parameters = floatsOn(slab, linkCount * PARAMETER_STRIDE);
  const filling: Filling = { spec, parameters, tables: [] };
  for (let link = 0; link < links.length; link += 1) {
    const { law } = links[link]!;
    kind[link] = LINK_KIND[law.kind];
    fillLaw(filling, link * PARAMETER_STRIDE, law);
  }
  for (let place = 0; place < fixed.length; place += 1) {
    const tie = links.length + place;
    kind[tie] = LINK_KIND['fixed-head'];
    parameters[tie * PARAMETER_STRIDE] = fixedHeadsM[fixed[place]!]!;
  }
  return { kind, parameters, tables: floatsFrom(slab, filling.tables) };
};

/** Least fall of a measured pump curve, as a part of its mean fall: where points are level, flow must still be told. */
const LEAST_FALL_RATIO = 1e-9;

/** Least greatest head that such a curve is taken to have, m. */
const LEAST_SCALE_M = 1e-6;

/** Measured heads so that each is below the one before, if only just. */
const fallingHeads = ({ flowM3PerS: x, headM: y }: Extract<LinkLaw, { kind: 'pump-points' }>): number[] => {
  const scale = Math.max(Math.abs(y[0]! - y.at(-1)!), Math.abs(y[0]!), LEAST_SCALE_M);
  const leastFall = (LEAST_FALL_RATIO * scale) / (x.at(-1)! - x[0]!);
  const heads = [y[0]!];
  for (let i = 1; i < x.length; i += 1) {
    heads.push(Math.min(y[i]!, heads[i - 1]! - leastFall * (x[i]! - x[i - 1]!)));
  }
  return heads;
};

/** Flow, head and slope at the points of a monotone cubic. */
export const pumpTable = (law: Extract<LinkLaw, { kind: 'pump-points' }>): number[] => {
  const { x, y, slope } = monotoneSpline({ x: law.flowM3PerS, y: fallingHeads(law) });
  return x.flatMap((value, i) => [value, y[i]!, slope[i]!]);
};
