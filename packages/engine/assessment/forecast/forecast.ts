import type { Model } from '../../model/model.ts';
import { compiledOf } from '../compile.ts';
import type { Compiled } from '../compiled.ts';
import { type Clean, decidingBed, overflows, progress } from '../dirt/march.ts';
import { solidsMadeIn } from '../loads.ts';
import { type CleaningReason, cleanBed, cleaningDue } from './clean.ts';
import { beginFullMarch, type Closeness, DAY_S, type FullMarch, flowNow, marchTo } from './fullMarch.ts';
import { allHeldKg, balanceError, type SolidsAccount } from './fullState.ts';
import { type Detachment, settleFlows } from './fullStep.ts';
import type { CleaningPattern } from './pattern.ts';
import { type ForecastDays, recorder } from './record.ts';

/** Share of a bed's dirt that a rinsing leaves behind: ours, within a factor of 3; foam squeezed in a bucket. */
export const RINSE_RESIDUE_SHARE = 0.1;
export const USUAL_DAYS = 180;

export interface ForecastOptions {
  /** How far ahead, 1 to 730 days, whole; 180 where left out. */
  readonly days?: number;
  /** When which beds are cleaned; never where left out. */
  readonly pattern?: CleaningPattern;
  /** Share of a bed's dirt that rinsing leaves, 0 to 1; 0.1 where left out. Replacing leaves none. */
  readonly rinseResidueShare?: number;
  /** Deposit torn off by shear; none where left out. */
  readonly detachment?: Detachment;
  readonly closeness?: Closeness;
}

/** One cleaning, on the evening of its day. */
export interface Cleaning {
  readonly day: number;
  /** Beds rinsed and beds replaced, by id. */
  readonly rinsed: readonly string[];
  readonly replaced: readonly string[];
  readonly because: CleaningReason;
  /** Dry solids taken out, kg. */
  readonly takenKg: number;
}

/** A loss of flow at the tank, and when it is first reached; absent where it is not within the forecast. */
export interface FlowLoss {
  readonly lossShare: number;
  readonly timeS?: number;
  /** The bed whose resistance takes most of the head that was lost then, by id. */
  readonly place?: string;
}

/** What ends the cleaning interval, and when, with clean beds at the start; absent where nothing does within the forecast. */
export interface FirstEnd {
  readonly timeS: number;
  readonly endedBy: 'bed-flow' | 'overflow';
  readonly place: string;
}

/** How flow and dirt go over the coming days under one pattern of cleaning. */
export interface Forecast {
  readonly pattern: CleaningPattern;
  readonly days: ForecastDays;
  readonly cleanings: readonly Cleaning[];
  /** Flow at the tank down by a quarter, a third, a half. */
  readonly losses: readonly FlowLoss[];
  /** When an overflow first carries a hundredth of the flow more than clean, s; absent where it does not. */
  readonly overflowOpensS?: number;
  /** First end of the cleaning interval, as the assessment has it. */
  readonly firstEnd?: FirstEnd;
  /** Days on which the cleaning interval was over and nothing was cleaned. */
  readonly overdueDays: number;
  /** Where the solids went. */
  readonly account: SolidsAccount & { readonly heldKg: number };
  /** What that balance leaves over, as share of what was given: rounding. */
  readonly balanceError: number;
  /** Steps that were taken. */
  readonly steps: number;
}

const LOSSES = [1 / 4, 1 / 3, 1 / 2] as const;

const referenceOf = (compiled: Compiled, flow: number): Clean => ({
  bedFlow: compiled.beds.map(({ link }) => compiled.network.flow[link]!),
  overflow: overflows(compiled),
  flow,
});

/** The bed that takes the most head of all at the flows of the last solve. */
const worstBed = ({ beds, network }: Compiled): string | undefined => {
  let worst: string | undefined;
  let most = 0;
  for (const { id, link } of beds) {
    if (network.drop[link]! <= most) continue;
    most = network.drop[link]!;
    worst = id;
  }
  return worst;
};

const overflowLevel = (compiled: Compiled, reference: Clean): number => {
  let most = 0;
  for (const [id, flow] of overflows(compiled))
    most = Math.max(most, (flow - reference.overflow.get(id)!) / (0.01 * reference.flow));
  return most;
};

/** Watches for what is told once: losses of flow, the first end of the interval, an overflow that opens. */
const watcher = (march: FullMarch, reference: Clean) => {
  const { compiled, state } = march;
  const losses: { lossShare: number; timeS?: number; place?: string }[] = LOSSES.map((lossShare) => ({
    lossShare,
  }));
  const seen: { firstEnd?: FirstEnd; overflowOpensS?: number } = {};
  let before = { timeS: 0, loss: 0, progress: 0, overflow: 0 };
  const when = (was: number, is: number, level: number): number =>
    before.timeS + ((level - was) / (is - was)) * (state.timeS - before.timeS);
  const restart = (): void => {
    before = {
      timeS: state.timeS,
      loss: 1 - flowNow(march) / reference.flow,
      progress: progress(compiled, reference).value,
      overflow: overflowLevel(compiled, reference),
    };
  };
  const look = (): void => {
    if (reference.flow <= 0) return;
    const loss = 1 - flowNow(march) / reference.flow;
    for (const one of losses) {
      if (one.timeS !== undefined || loss < one.lossShare) continue;
      one.timeS = when(before.loss, loss, one.lossShare);
      const place = worstBed(compiled);
      if (place !== undefined) one.place = place;
    }
    const now = progress(compiled, reference);
    if (seen.firstEnd === undefined && now.value >= 1) {
      const place = now.endedBy === 'bed-flow' ? decidingBed(compiled, state, now.place) : now.place;
      seen.firstEnd = { timeS: when(before.progress, now.value, 1), endedBy: now.endedBy, place };
    }
    const overflow = overflowLevel(compiled, reference);
    if (seen.overflowOpensS === undefined && overflow >= 1)
      seen.overflowOpensS = when(before.overflow, overflow, 1);
    before = { timeS: state.timeS, loss, progress: now.value, overflow };
  };
  return { look, restart, losses, seen };
};

const cleanOn = (
  march: FullMarch,
  on: { readonly day: number; readonly places: readonly number[]; readonly because: CleaningReason },
  residueShare: number,
): Cleaning => {
  const { compiled, state } = march;
  let takenKg = 0;
  for (const place of on.places) takenKg += cleanBed(compiled, state, { place, residueShare });
  state.account.cleanedKg += takenKg;
  settleFlows(compiled, state);
  march.tryS = march.closeness.stepS ?? 3600;
  const idsBy = (care: 'rinse' | 'replace'): string[] =>
    on.places.flatMap((place) => {
      const { id, medium } = compiled.beds[place]!;
      return medium.care === care ? [id] : [];
    });
  return { day: on.day, rinsed: idsBy('rinse'), replaced: idsBy('replace'), because: on.because, takenKg };
};

/**
 * Forecasts a compiled job: deposit and network marched together, day by day.
 * @param options days 1 to 730; shares 0 to 1
 */
export const forecastCompiled = (job: Compiled, options: ForecastOptions = {}): Forecast => {
  const { days = USUAL_DAYS, pattern = { kind: 'never' }, detachment, closeness } = options;
  const march = beginFullMarch(job, {
    madeKgPerS: solidsMadeIn(job),
    ...(detachment ? { detachment } : {}),
    ...(closeness ? { closeness } : {}),
  });
  const { compiled, state, decay } = march;
  const reference = referenceOf(compiled, flowNow(march));
  const record = recorder(compiled, reference);
  const watch = watcher(march, reference);
  const cleanings: Cleaning[] = [];
  let overdueDays = 0;
  record.note(state, { day: 0, flow: flowNow(march), decayPerS: decay.perS });
  for (let day = 1; day <= days; day += 1) {
    marchTo(march, day * DAY_S, watch.look);
    const flow = flowNow(march);
    record.note(state, { day, flow, decayPerS: decay.perS });
    const due = cleaningDue(pattern, { compiled, state, day, reference, flowM3PerS: flow });
    if (reference.flow <= 0) continue;
    if (due === undefined) {
      if (progress(compiled, reference).value >= 1) overdueDays += 1;
      continue;
    }
    const residue = options.rinseResidueShare ?? RINSE_RESIDUE_SHARE;
    cleanings.push(cleanOn(march, { day, ...due }, residue));
    watch.restart();
  }
  return {
    pattern,
    days: record.days(),
    cleanings,
    losses: watch.losses,
    ...watch.seen,
    overdueDays,
    account: { ...state.account, heldKg: allHeldKg(compiled, state) },
    balanceError: balanceError(compiled, state),
    steps: march.steps,
  };
};

/**
 * Forecasts one job.
 * @throws where the network cannot be solved: the job's own checks keep such layouts out
 */
export const forecast = (model: Model, options: ForecastOptions = {}): Forecast =>
  forecastCompiled(compiledOf(model), options);
