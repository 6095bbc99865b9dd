import type { CleaningInterval } from '../assessment.ts';
import type { Compiled } from '../compiled.ts';
import { bedRatio, cleanState, type DirtState } from './state.ts';
import { beginMarch, midpointStep, solveAt } from './step.ts';
import { filterFlow } from './transport.ts';

const DAY_S = 86_400;
export const YEAR_S = 365 * DAY_S;

/** A bed counts as clogged when its water is down by this share of clean. */
const CLOGGED_LOSS = 1 / 3;

/** The march's account of time: what ended the interval, and the states that were passed. */
export interface March {
  readonly ending: Omit<CleaningInterval, 'cleanedEachTime' | 'overfedFromS'>;
  readonly clean: DirtState;
  readonly atEnd: DirtState;
  readonly atDay: DirtState;
  /** States up to the end of the interval, in time. */
  readonly passed: readonly DirtState[];
}

/** Flows with clean beds: through each bed, over each overflow, and through the filter, m³/s. */
export interface Clean {
  readonly bedFlow: readonly number[];
  readonly overflow: ReadonlyMap<string, number>;
  readonly flow: number;
}

export const overflows = (compiled: Compiled): Map<string, number> =>
  new Map(
    compiled.layout.weirs
      .filter((weir) => weir.purpose === 'overflow')
      .map((weir) => [weir.id, compiled.network.flow[compiled.network.linkIndex.get(weir.id)!]!]),
  );

/** How far a state has gone towards the end of the interval: at 1 it ends. */
export const progress = (
  compiled: Compiled,
  clean: Clean,
): { value: number; endedBy: 'bed-flow' | 'overflow'; place: string } => {
  let worst = { value: 0, endedBy: 'bed-flow' as 'bed-flow' | 'overflow', place: '' };
  compiled.beds.forEach((bed, place) => {
    const before = clean.bedFlow[place]!;
    const loss = before > 0 ? 1 - compiled.network.flow[bed.link]! / before : 0;
    if (loss / CLOGGED_LOSS > worst.value)
      worst = { value: loss / CLOGGED_LOSS, endedBy: 'bed-flow', place: bed.id };
  });
  for (const [id, flow] of overflows(compiled)) {
    // An overflow that was dry has opened once a hundredth of the flow goes over it.
    const opened = (flow - clean.overflow.get(id)!) / (0.01 * clean.flow);
    if (opened > worst.value) worst = { value: opened, endedBy: 'overflow', place: id };
  }
  return worst;
};

/** Among beds that share one flow, the one whose resistance has grown most decides. */
export const decidingBed = (compiled: Compiled, state: DirtState, place: string): string => {
  const chamber = compiled.beds.find((bed) => bed.id === place)?.chamber;
  let decides = place;
  let most = Number.NEGATIVE_INFINITY;
  compiled.beds.forEach((bed, index) => {
    if (bed.chamber !== chamber) return;
    const headM = compiled.network.drop[bed.link]!;
    const grown = headM * (1 - 1 / bedRatio(compiled, state.deposit, index));
    if (grown > most) {
      most = grown;
      decides = bed.id;
    }
  });
  return decides;
};

const partWay = (a: Float64Array, b: Float64Array, share: number): Float64Array => {
  const values = new Float64Array(a.length);
  for (let at = 0; at < a.length; at += 1) values[at] = a[at]! + share * (b[at]! - a[at]!);
  return values;
};

const between = (a: DirtState, b: DirtState, share: number): DirtState => ({
  timeS: a.timeS + share * (b.timeS - a.timeS),
  deposit: partWay(a.deposit, b.deposit, share),
  matKgPerM2: partWay(a.matKgPerM2, b.matKgPerM2, share),
  labileKg: partWay(a.labileKg, b.labileKg, share),
});

/** State of a march at a time, between the states that it passed. */
export const stateAt = (states: readonly DirtState[], timeS: number): DirtState => {
  const after = states.findIndex((state) => state.timeS >= timeS);
  if (after <= 0) return after === 0 ? states[0]! : states.at(-1)!;
  const a = states[after - 1]!;
  const b = states[after]!;
  return between(a, b, (timeS - a.timeS) / (b.timeS - a.timeS));
};

/**
 * Marches dirt and flow together from clean beds until the cleaning interval ends (water through a bed down
 * by a third, or an overflow open) and the day of the comparison is reached, or a year has gone: the reduced form,
 * with as few network solves as the growth of the resistances asks for. Needs a compiled job whose network
 * is solved clean.
 * @param madeKgPerS solids made in the tank, kg/s
 * @param dayS the day of the comparison, s
 */
export const march = (compiled: Compiled, madeKgPerS: number, dayS: number): March => {
  const marching = beginMarch(compiled, madeKgPerS);
  const clean = cleanState(compiled);
  solveAt(compiled, clean);
  const reference: Clean = {
    bedFlow: compiled.beds.map((bed) => compiled.network.flow[bed.link]!),
    overflow: overflows(compiled),
    flow: filterFlow(compiled),
  };
  const passed: DirtState[] = [clean];
  let ending: { timeS: number; endedBy: 'bed-flow' | 'overflow'; place: string } | undefined;
  let before = 0;
  let state = clean;
  while (state.timeS < YEAR_S && !(ending && state.timeS >= dayS) && reference.flow > 0) {
    const horizon = state.timeS < dayS ? dayS : YEAR_S;
    const next = midpointStep(marching, state, horizon - state.timeS);
    solveAt(compiled, next);
    const now = progress(compiled, reference);
    if (!ending && now.value >= 1) {
      const share = (1 - before) / (now.value - before);
      const place = now.endedBy === 'bed-flow' ? decidingBed(compiled, next, now.place) : now.place;
      ending = { timeS: state.timeS + share * (next.timeS - state.timeS), endedBy: now.endedBy, place };
    }
    before = now.value;
    state = next;
    passed.push(state);
  }
  // Without flow nothing is laid down: the day comes all the same.
  const atDay = reference.flow > 0 ? stateAt(passed, dayS) : { ...clean, timeS: dayS };
  const atEnd = ending ? stateAt(passed, ending.timeS) : passed.at(-1)!;
  solveAt(compiled, atEnd);
  const flowRatio = reference.flow > 0 ? filterFlow(compiled) / reference.flow : 1;
  return {
    ending: ending
      ? { ...ending, beyond: false, flowRatio }
      : { timeS: YEAR_S, beyond: true, endedBy: 'none', flowRatio },
    clean,
    atEnd,
    atDay,
    passed: passed.filter((one) => one.timeS <= (ending?.timeS ?? YEAR_S)),
  };
};
