import { type LdlPlan, planLdl, slotOf } from '../numerics/ldl.ts';
import type { LinkLaw, NetworkSpec } from './links.ts';
import { layTopology, type Topology, type TopologyProblem } from './topology.ts';

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

/**
 * A network as flat arrays, with the room that a solve needs; solving allocates nothing.
 * `flow` holds the last answer and is where the next solve starts. `resistanceRatio` multiplies what a
 * `resistance`, `one-way` or `conduit` link takes, and may be changed between solves.
 */
export interface CompiledNetwork {
  readonly spec: NetworkSpec;
  readonly topology: Topology;
  readonly linkIndex: ReadonlyMap<string, number>;
  readonly kind: Uint8Array;
  readonly parameters: Float64Array;
  /** Points of `pump-points` curves: flow, head, slope in turn. */
  readonly tables: Float64Array;
  readonly resistanceRatio: Float64Array;
  /** Head slope at the usual flow, s/m²: the first step from rest takes it instead of the slope at rest. */
  readonly usualSlope: Float64Array;
  /** Least head slope that the loop matrix is given, s/m²: keeps it positive definite where a law is flat. */
  readonly leastSlope: Float64Array;
  /** Largest head that is given whatever flows, m: the heads of pumps at no flow and the fixed heads. */
  readonly givenHeadM: number;
  readonly oneWayChord: Uint8Array;
  /** Loops as flat arrays: links and senses by chord. */
  readonly loopStart: Int32Array;
  readonly loopLink: Int32Array;
  readonly loopSign: Int8Array;
  /** For each link, where its slope goes in the loop matrix, and with which sign. */
  readonly entryStart: Int32Array;
  readonly entrySlot: Int32Array;
  readonly entrySign: Int8Array;
  readonly diagonalSlot: Int32Array;
  readonly matrix: LdlPlan;
  readonly chordFlow: Float64Array;
  readonly trialFlow: Float64Array;
  readonly step: Float64Array;
  readonly residual: Float64Array;
  readonly negativeResidual: Float64Array;
  readonly held: Uint8Array;
  readonly flow: Float64Array;
  readonly drop: Float64Array;
  readonly slope: Float64Array;
  readonly nodeHead: Float64Array;
}

/** Part of its usual slope that a link keeps in the loop matrix at least, and the least of all, s/m². */
const LEAST_SLOPE_RATIO = 1e-9;
const LEAST_SLOPE = 1e-30;

/** Head slope of a law at a usual flow, s/m². */
const usualSlopeOf = (law: LinkLaw, flow: number, gravity: number): number => {
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

const givenHead = (spec: NetworkSpec): number => {
  const pumps = spec.links.map(({ law }) =>
    law.kind === 'pump' ? law.shutoffHeadM : law.kind === 'pump-points' ? law.headM[0]! : 0,
  );
  return Math.max(...pumps.map(Math.abs), ...Object.values(spec.fixedHeadsM).map(Math.abs));
};

const isOneWay = (law: LinkLaw): boolean => law.kind === 'weir' || law.kind === 'one-way';

const conduitParameters = (law: Extract<LinkLaw, { kind: 'conduit' }>, spec: NetworkSpec): number[] => [
  1 / law.areaM2,
  law.hydraulicDiameterM / (law.areaM2 * spec.kinematicViscosityM2PerS),
  law.lengthM / law.hydraulicDiameterM,
  law.minorK,
  law.relativeRoughness,
  law.laminarConstant,
  law.friction === 'churchill' ? 0 : 1,
  1 / (2 * spec.gravityMPerS2),
  law.linear,
];

const linkParameters = (law: LinkLaw, spec: NetworkSpec): number[] => {
  switch (law.kind) {
    case 'resistance':
    case 'one-way':
      return [law.linear, law.quadratic];
    case 'conduit':
      return conduitParameters(law, spec);
    case 'pump':
      return [law.shutoffHeadM, law.coefficient, law.exponent];
    case 'pump-points':
      return [];
    case 'weir':
      return [law.coefficient];
  }
};

const fillParameters = (spec: NetworkSpec, linkCount: number) => {
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

/** Slopes of a monotone cubic through the points (Fritsch & Carlson 1980), never quite flat. */
const pumpTable = (law: Extract<LinkLaw, { kind: 'pump-points' }>): number[] => {
  const { flowM3PerS: x, headM: y } = law;
  const secant = x.slice(1).map((value, i) => (y[i + 1]! - y[i]!) / (value - x[i]!));
  const gentlest = -1e-9 * Math.abs((y[0]! - y.at(-1)!) / (x.at(-1)! - x[0]!));
  return x.flatMap((value, i) => {
    const left = secant[i - 1] ?? secant[i]!;
    const right = secant[i] ?? secant[i - 1]!;
    const mean = left * right <= 0 ? 0 : (2 * left * right) / (left + right);
    return [value, y[i]!, Math.min(mean, gentlest)];
  });
};

const layLoops = (topology: Topology, linkCount: number) => {
  const through: { chord: number; sign: number }[][] = Array.from({ length: linkCount }, () => []);
  topology.loops.forEach((loop, chord) => {
    for (const { link, sign } of loop) through[link]!.push({ chord, sign });
  });
  const pattern = topology.loops.map(() => new Set<number>());
  for (const chords of through)
    for (const a of chords) for (const b of chords) if (a.chord !== b.chord) pattern[a.chord]!.add(b.chord);
  const matrix = planLdl(pattern);
  const slots: number[] = [];
  const signs: number[] = [];
  const entryStart = new Int32Array(linkCount + 1);
  through.forEach((chords, link) => {
    chords.forEach((a, i) => {
      for (const b of chords.slice(i)) {
        slots.push(slotOf(matrix, a.chord, b.chord));
        signs.push(a.sign * b.sign);
      }
    });
    entryStart[link + 1] = slots.length;
  });
  return { matrix, entryStart, entrySlot: Int32Array.from(slots), entrySign: Int8Array.from(signs) };
};

/**
 * Turns a network into flat arrays once, to be solved many times.
 * @returns the compiled network, or why there is none: no node with a fixed head, or nodes that no link
 *   joins to one
 */
export const compileNetwork = (
  spec: NetworkSpec,
): { ok: true; network: CompiledNetwork } | { ok: false; problem: TopologyProblem } => {
  const slopes = spec.links.map(({ law }) => usualSlopeOf(law, spec.usualFlowM3PerS, spec.gravityMPerS2));
  const laid = layTopology(spec, (link, place) =>
    isOneWay(link.law) ? Number.POSITIVE_INFINITY : slopes[place]!,
  );
  if (!laid.ok) return laid;
  const { topology } = laid;
  const linkCount = topology.from.length;
  const chordCount = topology.chords.length;
  const loops = layLoops(topology, linkCount);
  const flat = topology.loops.flat();
  const loopStart = new Int32Array(chordCount + 1);
  topology.loops.forEach((loop, chord) => {
    loopStart[chord + 1] = loopStart[chord]! + loop.length;
  });
  const { kind, parameters, tables } = fillParameters(spec, linkCount);
  const oneWay = (link: number): boolean =>
    kind[link] === LINK_KIND.weir || kind[link] === LINK_KIND['one-way'];
  const usualSlope = new Float64Array(linkCount);
  usualSlope.set(slopes);
  const numbers = (length: number): Float64Array => new Float64Array(length);
  return {
    ok: true,
    network: {
      spec,
      topology,
      linkIndex: new Map(spec.links.map((link, place) => [link.id, place])),
      kind,
      parameters,
      tables,
      resistanceRatio: numbers(linkCount).fill(1),
      usualSlope,
      leastSlope: usualSlope.map((slope) => Math.max(LEAST_SLOPE, LEAST_SLOPE_RATIO * slope)),
      givenHeadM: givenHead(spec),
      oneWayChord: Uint8Array.from(topology.chords, (link) => (oneWay(link) ? 1 : 0)),
      loopStart,
      loopLink: Int32Array.from(flat, ({ link }) => link),
      loopSign: Int8Array.from(flat, ({ sign }) => sign),
      ...loops,
      diagonalSlot: Int32Array.from(topology.chords, (_, chord) => slotOf(loops.matrix, chord, chord)),
      chordFlow: numbers(chordCount),
      trialFlow: numbers(chordCount),
      step: numbers(chordCount),
      residual: numbers(chordCount),
      negativeResidual: numbers(chordCount),
      held: new Uint8Array(chordCount),
      flow: numbers(linkCount),
      drop: numbers(linkCount),
      slope: numbers(linkCount),
      nodeHead: numbers(topology.nodes.length),
    },
  };
};
