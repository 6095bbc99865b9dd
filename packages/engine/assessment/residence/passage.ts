import { type Complex, ONE, plus, scaled, times } from '../../numerics/complex.ts';
import type { Compiled } from '../compiled.ts';
import { type Moments, momentsThrough, type Stretch, transformOf } from './stretch.ts';
import { stretchesOf, type WaterBodies } from './waterBodies.ts';

/** A way as the times of its water need it. */
interface TimedWay {
  readonly from: number;
  readonly to: number;
  readonly flowM3PerS: number;
  readonly stretches: readonly Stretch[];
}

/** The flows of a solved filter with the stretches that its water passes. */
export interface Passage {
  readonly flowM3PerS: number;
  /** Time in the hoses, which all of the water takes alike, s. */
  readonly hosesS: number;
  readonly spaces: readonly Stretch[];
  /** By the place of the compiled ways; those without water are undefined. */
  readonly ways: readonly (TimedWay | undefined)[];
}

/** The passage at the flows of the last solve; undefined where no water flows. */
export const passageOf = (compiled: Compiled, bodies: WaterBodies): Passage | undefined => {
  const { network } = compiled;
  const ways = compiled.ways.map((way, place): TimedWay | undefined => {
    const flowM3PerS = network.flow[way.link]!;
    if (flowM3PerS <= 0) return undefined;
    const { from, to } = way;
    return { from, to, flowM3PerS, stretches: stretchesOf(compiled, bodies.ways[place]!, way) };
  });
  const through = (space: number): number =>
    ways.reduce((sum, way) => (way?.from === space ? sum + way.flowM3PerS : sum), 0);
  const flowM3PerS = through(0);
  if (flowM3PerS <= 0) return undefined;
  const spaces = bodies.spacesM3.map((volumeM3, space): Stretch => {
    const water = through(space);
    return { kind: 'mixed', meanS: water > 0 ? volumeM3 / water : 0 };
  });
  return { flowM3PerS, hosesS: bodies.hosesM3 / flowM3PerS, spaces, ways };
};

const through = (before: Moments, stretches: readonly Stretch[]): Moments =>
  stretches.reduce(momentsThrough, before);

/**
 * Moments of the times of all the water, exactly, hoses included; s and s².
 * Spaces mix what comes into them, each way by its flow.
 */
export const momentsOf = ({ flowM3PerS, hosesS, spaces, ways }: Passage): Moments => {
  const into = spaces.map(() => ({ water: 0, firstS: 0, secondS2: 0 }));
  const out = { firstS: 0, secondS2: 0 };
  const behind = (space: number): Moments => {
    const { water, firstS, secondS2 } = into[space]!;
    const mixed =
      water > 0 ? { firstS: firstS / water, secondS2: secondS2 / water } : { firstS: 0, secondS2: 0 };
    return momentsThrough(mixed, spaces[space]!);
  };
  for (const way of ways) {
    if (way === undefined) continue;
    const moments = through(behind(way.from), way.stretches);
    const target = way.to < 0 ? out : into[way.to]!;
    target.firstS += way.flowM3PerS * moments.firstS;
    target.secondS2 += way.flowM3PerS * moments.secondS2;
    if (way.to >= 0) into[way.to]!.water += way.flowM3PerS;
  }
  const inside = { firstS: out.firstS / flowM3PerS, secondS2: out.secondS2 / flowM3PerS };
  return momentsThrough(inside, { kind: 'plug', meanS: hosesS });
};

const product = (from: Complex, stretches: readonly Stretch[], s: Complex): Complex =>
  stretches.reduce((sum, stretch) => times(sum, transformOf(stretch, s)), from);

/** Laplace transform of the times of all the water, hoses left out. */
export const transformOfAll = ({ flowM3PerS, spaces, ways }: Passage, s: Complex): Complex => {
  const level: Complex[] = spaces.map(() => ({ re: 0, im: 0 }));
  const water = spaces.map(() => 0);
  const behind: (Complex | undefined)[] = spaces.map(() => undefined);
  let out: Complex = { re: 0, im: 0 };
  for (const way of ways) {
    if (way === undefined) continue;
    const { from, to } = way;
    behind[from] ??= times(
      from === 0 ? ONE : scaled(level[from]!, 1 / water[from]!),
      transformOf(spaces[from]!, s),
    );
    const arrives = scaled(product(behind[from]!, way.stretches, s), way.flowM3PerS);
    if (to < 0) out = plus(out, arrives);
    else {
      level[to] = plus(level[to]!, arrives);
      water[to]! += way.flowM3PerS;
    }
  }
  return scaled(out, 1 / flowM3PerS);
};

/** The stretches of one path by its ways, hoses left out. */
export const stretchesOfPath = ({ spaces, ways }: Passage, path: readonly number[]): readonly Stretch[] =>
  path.flatMap((place) => [spaces[ways[place]!.from]!, ...ways[place]!.stretches]);

/** Laplace transform of the times of a stretch after stretch. */
export const transformOfPath = (stretches: readonly Stretch[], s: Complex): Complex =>
  product(ONE, stretches, s);

/** Moments of the times of a stretch after stretch with the hoses, s and s². */
export const momentsOfPath = (stretches: readonly Stretch[], hosesS: number): Moments =>
  through({ firstS: hosesS, secondS2: hosesS ** 2 }, stretches);
