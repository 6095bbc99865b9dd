import { solveLdl } from '../numerics/ldl.ts';
import type { CompiledNetwork } from './compiled.ts';

/**
 * Flow of every way from falls and the flows of the chords: mass is kept at every node by construction.
 * @returns the largest part of its flow by which a way has moved, endless where one came to a stop
 */
export const spreadChordFlows = (net: CompiledNetwork, chordFlow: Float64Array): number => {
  const { flow } = net.ways;
  const { way, loop, sense } = net.loops;
  const { before, fallen } = net;
  for (let place = 0; place < flow.length; place += 1) {
    before[place] = flow[place]!;
    flow[place] = fallen[place]!;
  }
  for (let chord = 0; chord < chordFlow.length; chord += 1) flow[chord] = chordFlow[chord]!;
  for (let at = 0; at < way.length; at += 1) {
    flow[way[at]!] = flow[way[at]!]! + sense[at]! * chordFlow[loop[at]!]!;
  }
  let part = 0;
  for (let place = 0; place < flow.length; place += 1) {
    const moved = Math.abs(flow[place]! - before[place]!);
    const size = Math.abs(flow[place]!);
    if (moved > part * size) part = moved / size;
  }
  return part;
};

/** Head left over round every loop. */
export const closeLoops = ({ ways, loops, residual }: CompiledNetwork): void => {
  const { drop } = ways;
  const { way, loop, sense } = loops;
  for (let chord = 0; chord < residual.length; chord += 1) residual[chord] = drop[chord]!;
  for (let at = 0; at < way.length; at += 1) {
    residual[loop[at]!] = residual[loop[at]!]! + sense[at]! * drop[way[at]!]!;
  }
};

/** A held chord does not move: a pivot this stiff makes its step vanish beside the others'. */
const HELD = 1e200;

/** Puts the loop matrix together from the slopes of the ways, and what is left over against it as the right side. */
const assemble = ({ ways, loops, residual, held }: CompiledNetwork, stiffening: number): void => {
  const { slope } = ways;
  const { way, loop, sharedWay, sharedEntry, sharedSense, oneWay, step, matrix } = loops;
  const { values, lowerAt, rightAt } = matrix;
  for (let chord = 0; chord < residual.length; chord += 1) {
    values[chord] = slope[chord]!;
    step[chord] = -residual[chord]!;
  }
  for (let entry = lowerAt; entry < rightAt; entry += 1) values[entry] = 0;
  for (let at = 0; at < way.length; at += 1) {
    values[loop[at]!] = values[loop[at]!]! + slope[way[at]!]!;
  }
  for (let at = 0; at < sharedWay.length; at += 1) {
    const entry = sharedEntry[at]!;
    values[entry] = values[entry]! + sharedSense[at]! * slope[sharedWay[at]!]!;
  }
  if (stiffening > 0) {
    for (let chord = 0; chord < residual.length; chord += 1)
      values[chord] = values[chord]! * (1 + stiffening);
  }
  for (let place = 0; place < oneWay.length; place += 1) {
    const chord = oneWay[place]!;
    if (held[chord] === 0) continue;
    values[chord] = HELD;
    step[chord] = 0;
  }
};

/** Holds every one-way chord that stands still and would run back; lets the others go. */
export const holdShutWays = ({ loops, chordFlow, residual, held }: CompiledNetwork): void => {
  const { oneWay } = loops;
  for (let place = 0; place < oneWay.length; place += 1) {
    const chord = oneWay[place]!;
    held[chord] = chordFlow[chord]! <= 0 && residual[chord]! >= 0 ? 1 : 0;
  }
};

/** Holds every one-way chord that stands still and that the step would run back; tells whether there was one. */
const holdBackwardWays = ({ loops, chordFlow, held }: CompiledNetwork): boolean => {
  const { oneWay, step } = loops;
  let found = false;
  for (let place = 0; place < oneWay.length; place += 1) {
    const chord = oneWay[place]!;
    if (held[chord] === 1) step[chord] = 0;
    else if (chordFlow[chord] === 0 && step[chord]! < 0) {
      held[chord] = 1;
      found = true;
    }
  }
  return found;
};

/**
 * Newton's step of all chords that may move, into `step`. Each turn of the loop holds a chord more, so that it ends.
 * @returns false where the matrix cannot be solved
 */
export const newtonStep = (net: CompiledNetwork): boolean => {
  const { matrix } = net.loops;
  do {
    let stiffening = 0;
    assemble(net, stiffening);
    while (!solveLdl(matrix)) {
      // Rounding alone takes a pivot below nothing, where slopes differ by more than numbers have digits.
      stiffening = Math.max(1e-14, 100 * stiffening);
      if (!(stiffening < 1e6)) return false;
      assemble(net, stiffening);
    }
  } while (holdBackwardWays(net));
  return true;
};
