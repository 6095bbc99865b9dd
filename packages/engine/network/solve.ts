import { factorise, solveFactorised } from '../numerics/ldl.ts';
import type { CompiledNetwork } from './compile.ts';
import { evaluateLinks, spreadChordFlows } from './evaluate.ts';
import { takeFalls } from './falls.ts';

/** How a solve went. `energyErrorM` is the largest head left over around a loop. */
export interface SolveReport {
  converged: boolean;
  iterations: number;
  energyErrorM: number;
  /** Largest head across any link or given by a pump at no flow, the scale of `energyErrorM`. */
  headScaleM: number;
}

const MOST_ITERATIONS = 200;
const MOST_TRIALS = 60;
const MOST_STALLED = 80;
/** What is left of a one-way flow when a step takes it to nothing. */
const ROUNDING = 1e-13;

const residuals = (net: CompiledNetwork): void => {
  const { drop, residual } = net;
  const { loopStart, loopLink, loopSign } = net.topology;
  for (let chord = 0; chord < residual.length; chord += 1) {
    let sum = 0;
    for (let at = loopStart[chord]!; at < loopStart[chord + 1]!; at += 1) {
      sum += loopSign[at]! * drop[loopLink[at]!]!;
    }
    residual[chord] = sum;
  }
};

const evaluate = (net: CompiledNetwork, chordFlow: Float64Array): void => {
  spreadChordFlows(net, chordFlow);
  evaluateLinks(net);
  residuals(net);
};

/** Holds every one-way chord that stands still and would run back; lets the others go. */
const holdShutWays = (net: CompiledNetwork): void => {
  const { oneWayChord, chordFlow, residual, held } = net;
  for (let chord = 0; chord < held.length; chord += 1) {
    held[chord] = oneWayChord[chord] === 1 && chordFlow[chord]! <= 0 && residual[chord]! >= 0 ? 1 : 0;
  }
};

const worstResidual = (net: CompiledNetwork): number => {
  let worst = 0;
  for (let chord = 0; chord < net.residual.length; chord += 1) {
    if (net.held[chord] === 0) worst = Math.max(worst, Math.abs(net.residual[chord]!));
  }
  return worst;
};

const largestHead = (net: CompiledNetwork): number => {
  let largest = net.givenHeadM;
  for (let link = 0; link < net.drop.length; link += 1)
    largest = Math.max(largest, Math.abs(net.drop[link]!));
  return largest;
};

const largestFlow = (net: CompiledNetwork): number => {
  let largest = 0;
  for (let link = 0; link < net.flow.length; link += 1)
    largest = Math.max(largest, Math.abs(net.flow[link]!));
  return largest;
};

const isAtRest = (net: CompiledNetwork): boolean => {
  for (let chord = 0; chord < net.chordFlow.length; chord += 1) if (net.chordFlow[chord] !== 0) return false;
  return true;
};

/** Slopes for a first step from rest, where a quadratic law would be flat: those of the usual flow. */
const takeUsualSlopes = (net: CompiledNetwork): void => {
  const { slope, usualSlope, resistanceRatio } = net;
  for (let link = 0; link < slope.length; link += 1) slope[link] = usualSlope[link]! * resistanceRatio[link]!;
};

const assemble = (net: CompiledNetwork, stiffening: number): void => {
  const { matrix, slope, leastSlope, entryStart, entrySlot, entrySign, held, diagonalSlot } = net;
  const { values } = matrix;
  values.fill(0);
  for (let link = 0; link < slope.length; link += 1) {
    const value = Math.max(slope[link]!, leastSlope[link]!);
    for (let at = entryStart[link]!; at < entryStart[link + 1]!; at += 1) {
      const slot = entrySlot[at]!;
      values[slot] = values[slot]! + entrySign[at]! * value;
    }
  }
  for (let chord = 0; chord < held.length; chord += 1) {
    const slot = diagonalSlot[chord]!;
    // A held chord does not move: a pivot this stiff makes its step vanish beside the others'.
    values[slot] = held[chord] === 1 ? 1e200 : values[slot]! * (1 + stiffening);
  }
};

/** Holds every one-way chord that stands still and that the step would run back; tells whether there was one. */
const holdBackwardWays = (net: CompiledNetwork): boolean => {
  const { oneWayChord, chordFlow, step, held } = net;
  let found = false;
  for (let chord = 0; chord < held.length; chord += 1) {
    if (oneWayChord[chord] === 1 && held[chord] === 0 && chordFlow[chord] === 0 && step[chord]! < 0) {
      held[chord] = 1;
      found = true;
    }
  }
  return found;
};

/** Newton's step of all chords that may move. Each turn of the loop holds a chord more, so that it ends. */
const newtonStep = (net: CompiledNetwork): boolean => {
  const { residual, negativeResidual, held, step, matrix } = net;
  do {
    let stiffening = 0;
    assemble(net, stiffening);
    while (!factorise(matrix)) {
      // Rounding alone takes a pivot below nothing, where slopes differ by more than numbers have digits.
      stiffening = Math.max(1e-14, 100 * stiffening);
      if (!(stiffening < 1e6)) return false;
      assemble(net, stiffening);
    }
    for (let chord = 0; chord < residual.length; chord += 1) {
      negativeResidual[chord] = held[chord] === 1 ? 0 : -residual[chord]!;
    }
    solveFactorised(matrix, negativeResidual, step);
    for (let chord = 0; chord < held.length; chord += 1) if (held[chord] === 1) step[chord] = 0;
  } while (holdBackwardWays(net));
  return true;
};

/** Longest step that takes no one-way chord below nothing. */
const longestStep = (net: CompiledNetwork): number => {
  let longest = 1;
  for (let chord = 0; chord < net.step.length; chord += 1) {
    const move = net.step[chord]!;
    if (net.oneWayChord[chord] === 1 && move < 0) longest = Math.min(longest, -net.chordFlow[chord]! / move);
  }
  return longest;
};

const tryStep = (net: CompiledNetwork, length: number): number => {
  const { chordFlow, trialFlow, step, oneWayChord, residual } = net;
  for (let chord = 0; chord < step.length; chord += 1) {
    const before = chordFlow[chord]!;
    const value = before + length * step[chord]!;
    trialFlow[chord] = oneWayChord[chord] === 1 && value < ROUNDING * before ? 0 : value;
  }
  evaluate(net, trialFlow);
  let descent = 0;
  for (let chord = 0; chord < step.length; chord += 1) descent += residual[chord]! * step[chord]!;
  return descent;
};

/**
 * Goes along the Newton step to where the slope of the content (whose gradient the residuals are, and which
 * is convex because every law rises) has fallen well below its start: from any start this ends at the one
 * minimum.
 * @returns the error in a chord's flow to be expected after it, m³/s
 */
const searchAlong = (net: CompiledNetwork): number => {
  let start = 0;
  for (let chord = 0; chord < net.step.length; chord += 1) start += net.residual[chord]! * net.step[chord]!;
  let high = longestStep(net);
  let atHigh = tryStep(net, high);
  let low = 0;
  let atLow = start;
  for (let trial = 0; trial < MOST_TRIALS && atHigh > 0.5 * Math.abs(start); trial += 1) {
    const secant = low + ((high - low) * -atLow) / (atHigh - atLow);
    const middle = Number.isFinite(secant)
      ? Math.min(Math.max(secant, low + 0.1 * (high - low)), high - 0.1 * (high - low))
      : (low + high) / 2;
    const atMiddle = tryStep(net, middle);
    if (atMiddle < -0.5 * Math.abs(start)) {
      low = middle;
      atLow = atMiddle;
    } else {
      high = middle;
      atHigh = atMiddle;
    }
  }
  const unsettled = unsettledFlow(net);
  net.chordFlow.set(net.trialFlow);
  return unsettled;
};

/** Error that Newton's quadratic convergence leaves after a move, m³/s: the move's square over the flow. */
const unsettledFlow = (net: CompiledNetwork): number => {
  let unsettled = 0;
  for (let chord = 0; chord < net.step.length; chord += 1) {
    const move = Math.abs(net.trialFlow[chord]! - net.chordFlow[chord]!);
    const flow = Math.max(Math.abs(net.trialFlow[chord]!), move);
    if (flow > 0) unsettled = Math.max(unsettled, move * (move / flow));
  }
  return unsettled;
};

const report: SolveReport = { converged: false, iterations: 0, energyErrorM: 0, headScaleM: 0 };

/** One solve with the falls as they stand. */
const solveLoops = (net: CompiledNetwork, energyTolerance: number): SolveReport => {
  let best = Number.POSITIVE_INFINITY;
  let stalled = 0;
  let unsettled = Number.POSITIVE_INFINITY;
  let leastUnsettled = unsettled;
  evaluate(net, net.chordFlow);
  if (isAtRest(net)) takeUsualSlopes(net);
  for (report.iterations = 0; report.iterations < MOST_ITERATIONS; report.iterations += 1) {
    holdShutWays(net);
    report.energyErrorM = worstResidual(net);
    report.headScaleM = largestHead(net);
    const closed = report.energyErrorM <= energyTolerance * report.headScaleM;
    if (closed && unsettled <= energyTolerance * largestFlow(net)) break;
    stalled = report.energyErrorM < 0.5 * best || unsettled < 0.75 * leastUnsettled ? 0 : stalled + 1;
    best = Math.min(best, report.energyErrorM);
    leastUnsettled = Math.min(leastUnsettled, unsettled);
    // Rounding is all that is left where neither a small residual nor the step shrinks any more.
    if (stalled > 3 && report.energyErrorM <= 1e-10 * report.headScaleM) break;
    if (stalled > MOST_STALLED) break;
    if (!newtonStep(net)) break;
    unsettled = searchAlong(net);
  }
  report.converged = report.energyErrorM <= Math.max(energyTolerance, 1e-9) * report.headScaleM;
  nodeHeads(net);
  return report;
};

const nodeHeads = (net: CompiledNetwork): void => {
  const { nodeHead, drop } = net;
  const { walkLink, walkNode, walkParent, walkSign } = net.topology;
  nodeHead[0] = 0;
  for (let place = 0; place < walkLink.length; place += 1) {
    nodeHead[walkNode[place]!] = nodeHead[walkParent[place]!]! - walkSign[place]! * drop[walkLink[place]!]!;
  }
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
