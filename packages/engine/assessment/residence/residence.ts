import { morrillIndex, type ResidenceSummary } from '../../laws/residence/routes.ts';
import type { Model } from '../../model/model.ts';
import { solveNetwork } from '../../network/solve.ts';
import { type Complex, scaled, times } from '../../numerics/complex.ts';
import { inverseLaplace, laplacePoints } from '../../numerics/inverseLaplace.ts';
import { bracketedRoot } from '../../numerics/roots.ts';
import { compiledOf } from '../compile.ts';
import type { Compiled } from '../compiled.ts';
import { cleanState } from '../dirt/state.ts';
import { solveAt } from '../dirt/step.ts';
import { tracedRoutes } from '../hydraulics/routes.ts';
import {
  momentsOf,
  momentsOfPath,
  type Passage,
  passageOf,
  stretchesOfPath,
  transformOfAll,
  transformOfPath,
} from './passage.ts';
import type { Moments } from './stretch.ts';
import { type WaterBodies, waterBodies } from './waterBodies.ts';

/** One point of the curves of times. */
export interface ResidencePoint {
  readonly timeS: number;
  /** E: share of the water that comes out per second, 1/s; what a shot of dye draws. */
  readonly densityPerS: number;
  /** F: share of the water that has come out, 0 to 1; what a step of dye draws. */
  readonly share: number;
}

/** The times of all the water or of one route, from where it is drawn in to where it comes back to the tank. */
export interface ResidenceCurve extends ResidenceSummary {
  /** Times rising evenly from 0 to where all but a thousandth has come out, or a little beyond. */
  readonly points: readonly ResidencePoint[];
}

export interface RouteResidence extends ResidenceCurve {
  /** As the assessment's routes. */
  readonly id: string;
  readonly share: number;
}

/** How long the water stays in a filter with clean media. */
export interface ResidenceFigures {
  readonly flowM3PerS: number;
  /** Water in hoses, spaces and pores, without the pores inside pieces and the pump, m³. */
  readonly volumeM3: number;
  /** Of it in the hoses, m³. */
  readonly hosesM3: number;
  /** Time in the hoses, s. */
  readonly hosesS: number;
  /** Share of the volume that no water passes, by mean time against volume over flow; 0 to 1. */
  readonly deadShare: number;
  readonly whole: ResidenceSummary;
}

/** The same with its curves. */
export interface Residence extends ResidenceFigures {
  readonly whole: ResidenceCurve;
  readonly routes: readonly RouteResidence[];
}

/** Points of a curve. */
const POINTS = 160;
/** What is left to come out at the end of a curve. */
const LEFT_OUT = 1e-3;

/** What a stream of water needs for its curve: moments, and the transform beyond its delay. */
interface Timed {
  readonly moments: Moments;
  readonly delayS: number;
  readonly transform: (s: Complex) => Complex;
}

const reciprocal = ({ re, im }: Complex): Complex => {
  const size = re ** 2 + im ** 2;
  return { re: re / size, im: -im / size };
};

/** Share that has come out by a time, 0 to 1, and the density then, 1/s. */
const pointAt = ({ delayS, transform }: Timed, timeS: number): ResidencePoint => {
  const pastS = timeS - delayS;
  if (pastS <= 0) return { timeS, densityPerS: 0, share: 0 };
  const at = laplacePoints(pastS);
  const density = at.map(transform);
  const share = density.map((value, place) => times(value, reciprocal(at[place]!)));
  return {
    timeS,
    densityPerS: Math.max(0, inverseLaplace(pastS, density)),
    share: Math.min(1, Math.max(0, inverseLaplace(pastS, share))),
  };
};

/** Time by which a share has come out, s. */
const quantile = (timed: Timed, fraction: number): number => {
  const residual = (timeS: number): number => pointAt(timed, timeS).share - fraction;
  let high = Math.max(timed.moments.firstS, timed.delayS);
  while (residual(high) < 0) high *= 1.5;
  return bracketedRoot(residual, { low: timed.delayS, high, tolerance: 1e-7 });
};

const summaryOf = (timed: Timed): ResidenceSummary => {
  const { firstS, secondS2 } = timed.moments;
  const t10S = quantile(timed, 0.1);
  const t90S = quantile(timed, 0.9);
  return {
    meanS: firstS,
    varianceS2: secondS2 - firstS ** 2,
    t10S,
    t50S: quantile(timed, 0.5),
    t90S,
    morrillIndex: morrillIndex({ t10S, t90S }),
  };
};

const curveOf = (timed: Timed): ResidenceCurve => {
  const endS = quantile(timed, 1 - LEFT_OUT);
  const points = Array.from({ length: POINTS + 1 }, (_, place) => pointAt(timed, (place / POINTS) * endS));
  return { ...summaryOf(timed), points };
};

const routesOf = (compiled: Compiled, passage: Passage): readonly RouteResidence[] =>
  tracedRoutes(compiled).routes.map(({ share, paths }, place) => {
    const parts = paths.map((path) => ({
      weight: path.share / share,
      stretches: stretchesOfPath(passage, path.ways),
    }));
    const moments = parts.reduce(
      (sum, { weight, stretches }) => {
        const { firstS, secondS2 } = momentsOfPath(stretches, passage.hosesS);
        return { firstS: sum.firstS + weight * firstS, secondS2: sum.secondS2 + weight * secondS2 };
      },
      { firstS: 0, secondS2: 0 },
    );
    const transform = (s: Complex): Complex =>
      parts
        .map(({ weight, stretches }) => scaled(transformOfPath(stretches, s), weight))
        .reduce((sum, part) => ({ re: sum.re + part.re, im: sum.im + part.im }));
    const timed = { moments, delayS: passage.hosesS, transform };
    return { id: `route-${place + 1}`, share, ...curveOf(timed) };
  });

/** A solved filter whose water moves. */
interface Moving {
  readonly compiled: Compiled;
  readonly bodies: WaterBodies;
  readonly passage: Passage;
  readonly timed: Timed;
}

/** The job's filter solved with clean media; undefined where no water flows. */
const movingIn = (model: Model): Moving | undefined => {
  const compiled = compiledOf(model);
  solveAt(compiled, cleanState(compiled));
  solveNetwork(compiled.network);
  const bodies = waterBodies(compiled);
  const passage = passageOf(compiled, bodies);
  if (passage === undefined) return undefined;
  const transform = (s: Complex): Complex => transformOfAll(passage, s);
  const timed = { moments: momentsOf(passage), delayS: passage.hosesS, transform };
  return { compiled, bodies, passage, timed };
};

/** A smaller share of the volume than this is rounding. */
const ROUNDING = 1e-9;

const volumesOf = ({ bodies, passage, timed }: Moving): Omit<ResidenceFigures, 'whole'> => {
  const dead = 1 - (timed.moments.firstS * passage.flowM3PerS) / bodies.totalM3;
  return {
    flowM3PerS: passage.flowM3PerS,
    volumeM3: bodies.totalM3,
    hosesM3: bodies.hosesM3,
    hosesS: passage.hosesS,
    deadShare: dead > ROUNDING ? dead : 0,
  };
};

/**
 * How long the water of a job's filter stays in it, with clean media at the duty point.
 *
 * Spaces between chambers and rooms over beds are mixed, beds are tanks in series by their dispersion, hoses and slots
 * are passed in the order in which the water came. Mean and variance are exact; curves and percentiles come from the
 * Laplace transform of the whole network.
 *
 * @returns figures and curves; undefined where no water flows
 * @throws where the network cannot be solved: the job's own checks keep such layouts out
 */
export const residenceOf = (model: Model): Residence | undefined => {
  const moving = movingIn(model);
  if (moving === undefined) return undefined;
  const { compiled, passage, timed } = moving;
  return { ...volumesOf(moving), whole: curveOf(timed), routes: routesOf(compiled, passage) };
};

/** The same with the curve of all the water, and without those of its routes. */
export const residenceCurve = (model: Model): (ResidenceFigures & Pick<Residence, 'whole'>) | undefined => {
  const moving = movingIn(model);
  return moving === undefined ? undefined : { ...volumesOf(moving), whole: curveOf(moving.timed) };
};

/** The figures of `residenceOf` without its curves and routes, which take most of the time. */
export const residenceFigures = (model: Model): ResidenceFigures | undefined => {
  const moving = movingIn(model);
  return moving === undefined ? undefined : { ...volumesOf(moving), whole: summaryOf(moving.timed) };
};
