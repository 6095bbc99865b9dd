import { monotoneSpline } from '../numerics/monotone.ts';
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
export const isOneWay = (law: LinkLaw): boolean => law.kind === 'weir' || law.kind === 'one-way';

/** Losses first, as a resistance has them: per flow, per flow squared, and the latter for a friction factor of 1. */
const conduitParameters = (law: Extract<LinkLaw, { kind: 'conduit' }>, spec: NetworkSpec): number[] => {
  const velocityHead = 1 / (2 * spec.gravityMPerS2 * law.areaM2 ** 2);
  return [
    law.linear,
    velocityHead * law.minorK,
    (velocityHead * law.lengthM) / law.hydraulicDiameterM,
    law.hydraulicDiameterM / (law.areaM2 * spec.kinematicViscosityM2PerS),
    law.relativeRoughness,
    law.laminarConstant,
    law.friction === 'churchill' ? 0 : 1,
    law.curvature ?? 0,
  ];
};

const linkParameters = (law: LinkLaw, spec: NetworkSpec): number[] => {
  switch (law.kind) {
    case 'resistance':
      return [law.linear, law.quadratic];
    case 'one-way':
      return [law.linear, law.quadratic, law.crackingHeadM ?? 0];
    case 'conduit':
      return conduitParameters(law, spec);
    case 'pump':
      return [law.shutoffHeadM, law.coefficient, law.exponent];
    case 'pump-points':
      return [];
    case 'weir':
      return [law.coefficient, law.tailwaterM ?? 0];
  }
};

/** Kind and numbers of every link, those that tie the fixed heads to the ground last. */
export const fillParameters = (spec: NetworkSpec, linkCount: number) => {
  const fixed = Object.keys(spec.fixedHeadsM).sort();
  const kind = new Uint8Array(linkCount).fill(LINK_KIND['fixed-head']);
  const parameters = new Float64Array(linkCount * PARAMETER_STRIDE);
  const tables: number[] = [];
  spec.links.forEach((link, place) => {
    kind[place] = LINK_KIND[link.law.kind];
    parameters.set(linkParameters(link.law, spec), place * PARAMETER_STRIDE);
    if (link.law.kind === 'pump-points') {
      parameters.set([tables.length, link.law.flowM3PerS.length], place * PARAMETER_STRIDE);
      tables.push(...pumpTable(link.law));
    }
  });
  fixed.forEach((node, place) => {
    parameters[(spec.links.length + place) * PARAMETER_STRIDE] = spec.fixedHeadsM[node]!;
  });
  return { kind, parameters, tables: Float64Array.from(tables) };
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
