import type { CompiledNetwork } from './compiled.ts';
import { takeFalls } from './falls.ts';
import { closeLoops, holdShutWays, newtonStep, spreadChordFlows } from './newton.ts';
import { evaluateWays, gatherLaws, takeUsualSlopes } from './wayLaws.ts';

/**
 * How a solve went. `energyErrorM` is the largest head left over around a loop, or where the last step was so small
 * that it need not be looked at, more than that.
 */
export interface SolveReport {
  converged: boolean;
  iterations: number;
  energyErrorM: number;
  /** Largest head over any way or given by a pump at no flow, the scale of `energyErrorM`. */
  headScaleM: number;
}

const report: SolveReport = { converged: false, iterations: 0, energyErrorM: 0, headScaleM: 0 };

const MOST_ITERATIONS = 200;
const MOST_TRIALS = 60;
const MOST_STALLED = 80;
/** What is left of a one-way flow when a step takes it to nothing. */
const ROUNDING = 1e-13;

/**
 * A straight line in place of a law, over a part ε of the flow, is off by less than BENDING·ε² of what the law takes.
 * The laws that bend most are those of rough bores where flow turns turbulent (16; a test says so).
 */
export const BENDING = 20;

/** Part of the tolerance that straight lines in place of friction may use up. */
const LINES_SHARE = 0.1;

/** Lays the flows of the ways into the laws and round the loops. */
const evaluate = (net: CompiledNetwork): void => {
  report.headScaleM = evaluateWays(net);
  closeLoops(net);
};

const worstResidual = ({ residual, held }: CompiledNetwork): number => {
  let worst = 0;
  for (let chord = 0; chord < residual.length; chord += 1) {
    if (held[chord] === 0) worst = Math.max(worst, Math.abs(residual[chord]!));
  }
  return worst;
};

const largestFlow = ({ ways }: CompiledNetwork): number => {
  let largest = 0;
  for (let way = 0; way < ways.count; way += 1) largest = Math.max(largest, Math.abs(ways.flow[way]!));
  return largest;
};

const isAtRest = ({ chordFlow }: CompiledNetwork): boolean => {
  for (let chord = 0; chord < chordFlow.length; chord += 1) if (chordFlow[chord] !== 0) return false;
  return true;
};

/** Longest step that takes no one-way chord below nothing. */
const longestStep = ({ loops, chordFlow }: CompiledNetwork): number => {
  const { oneWay, step } = loops;
  let longest = 1;
  for (let place = 0; place < oneWay.length; place += 1) {
    const move = step[oneWay[place]!]!;
    if (move < 0) longest = Math.min(longest, -chordFlow[oneWay[place]!]! / move);
  }
  return longest;
};

/** Puts the chords' flows a part of the step on; tells the largest part of its flow by which a way has moved. */
const moveAlong = (net: CompiledNetwork, length: number): number => {
  const { chordFlow, trialFlow } = net;
  const { oneWay, step } = net.loops;
  for (let chord = 0; chord < step.length; chord += 1) {
    trialFlow[chord] = chordFlow[chord]! + length * step[chord]!;
  }
  for (let place = 0; place < oneWay.length; place += 1) {
    const chord = oneWay[place]!;
    if (trialFlow[chord]! < ROUNDING * chordFlow[chord]!) trialFlow[chord] = 0;
  }
  return spreadChordFlows(net, trialFlow);
};

/** Slope of the content along the step: its gradient is what is left over round the loops. */
const slopeAlong = ({ residual, loops }: CompiledNetwork): number => {
  const { step } = loops;
  let sum = 0;
  for (let chord = 0; chord < step.length; chord += 1) sum += residual[chord]! * step[chord]!;
  return sum;
};

/**
 * Goes along the Newton step to where the slope of the content, which is convex because every law rises, has fallen
 * well below its start: from any start this ends at the one minimum.
 * @param first the slope before the step, and the length of the step that was tried first
 */
const searchAlong = (
  net: CompiledNetwork,
  first: { readonly slope: number; readonly length: number },
): void => {
  const start = Math.abs(first.slope);
  let low = 0;
  let atLow = first.slope;
  let high = first.length;
  let atHigh = slopeAlong(net);
  for (let trial = 0; trial < MOST_TRIALS && atHigh > 0.5 * start; trial += 1) {
    const secant = low + ((high - low) * -atLow) / (atHigh - atLow);
    const middle = Number.isFinite(secant)
      ? Math.min(Math.max(secant, low + 0.1 * (high - low)), high - 0.1 * (high - low))
      : (low + high) / 2;
    moveAlong(net, middle);
    evaluate(net);
    const atMiddle = slopeAlong(net);
    if (atMiddle < -0.5 * start) {
      low = middle;
      atLow = atMiddle;
    } else {
      high = middle;
      atHigh = atMiddle;
    }
  }
};

/**
 * Takes the trial flows over.
 * @returns the error that Newton's quadratic convergence leaves in a chord's flow, m³/s: with the move's square over it
 */
const takeTrialFlows = ({ chordFlow, trialFlow }: CompiledNetwork): number => {
  let unsettled = 0;
  for (let chord = 0; chord < chordFlow.length; chord += 1) {
    const move = Math.abs(trialFlow[chord]! - chordFlow[chord]!);
    const flow = Math.max(Math.abs(trialFlow[chord]!), move);
    if (move * move > unsettled * flow) unsettled = move * (move / flow);
    chordFlow[chord] = trialFlow[chord]!;
  }
  return BENDING * unsettled;
};

/** One solve with the falls as they stand. */
const solveLoops = (net: CompiledNetwork, energyTolerance: number): void => {
  let best = Number.POSITIVE_INFINITY;
  let stalled = 0;
  let unsettled = Number.POSITIVE_INFINITY;
  let leastUnsettled = unsettled;
  net.telling.reachSquared = (LINES_SHARE * energyTolerance) / BENDING;
  gatherLaws(net);
  spreadChordFlows(net, net.chordFlow);
  evaluate(net);
  let tangent = !isAtRest(net);
  if (!tangent) takeUsualSlopes(net);
  for (report.iterations = 0; report.iterations < MOST_ITERATIONS; report.iterations += 1) {
    holdShutWays(net);
    report.energyErrorM = worstResidual(net);
    const closed = report.energyErrorM <= energyTolerance * report.headScaleM;
    if (closed && unsettled <= energyTolerance * largestFlow(net)) break;
    stalled = report.energyErrorM < 0.5 * best || unsettled < 0.75 * leastUnsettled ? 0 : stalled + 1;
    best = Math.min(best, report.energyErrorM);
    leastUnsettled = Math.min(leastUnsettled, unsettled);
    // Rounding is all that is left where neither a small residual nor the step shrinks any more.
    if (stalled > 3 && report.energyErrorM <= 1e-10 * report.headScaleM) break;
    if (stalled > MOST_STALLED) break;
    if (!newtonStep(net)) break;
    const length = longestStep(net);
    const part = moveAlong(net, length);
    const left = BENDING * part * report.energyErrorM;
    if (tangent && length === 1 && left <= energyTolerance * report.headScaleM) {
      // So short a step leaves nothing to see: what it cannot close goes with its square.
      unsettled = takeTrialFlows(net);
      if (unsettled <= energyTolerance * largestFlow(net)) {
        report.energyErrorM = left;
        break;
      }
      evaluate(net);
    } else {
      const slope = slopeAlong(net);
      evaluate(net);
      searchAlong(net, { slope, length });
      unsettled = takeTrialFlows(net);
    }
    tangent = true;
  }
  report.converged = report.energyErrorM <= Math.max(energyTolerance, 1e-9) * report.headScaleM;
  net.telling.flows = false;
  net.telling.heads = false;
};

/** A fall changes what feeds it by a small part of itself at most: each solve more settles a digit or two. */
const MOST_FALL_SOLVES = 60;

/**
 * Finds all flows and heads of a compiled network by Newton's method on its loops, from the flows of the
 * last solve. The flows are unique because every law rises; mass closes by construction, energy to
 * `energyTolerance` of the largest head, and the flows, by the size of the last step, to about as much of the
 * largest flow, so that ways that take next to no head are settled too. Free falls are followed from part to part
 * until what comes in at the foot of each is what feeds it.
 * @param energyTolerance largest head left over round a loop, over the largest head; 1e-12 to 1e-3
 * @returns the report, in one object that the next solve overwrites
 */
export const solveNetwork = (net: CompiledNetwork, energyTolerance = 1e-12): SolveReport => {
  solveLoops(net, energyTolerance);
  for (let solve = 0; net.falls.length > 0 && solve < MOST_FALL_SOLVES; solve += 1) {
    if (takeFalls(net) <= energyTolerance * largestFlow(net)) break;
    solveLoops(net, energyTolerance);
  }
  return report;
};

/** Starts the next solve from given chord flows, or from rest. */
export const startFrom = (net: CompiledNetwork, chordFlow?: Float64Array): void => {
  if (chordFlow) net.chordFlow.set(chordFlow);
  else net.chordFlow.fill(0);
};

/** Flow of a link by its id, m³/s, after a solve. */
export const flowOf = (net: CompiledNetwork, id: string): number => net.flow[net.linkIndex.get(id)!]!;

/** Head that a link takes by its id, m, after a solve; negative where it gives head. */
export const dropOf = (net: CompiledNetwork, id: string): number => net.drop[net.linkIndex.get(id)!]!;
