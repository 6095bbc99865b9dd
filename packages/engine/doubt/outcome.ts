import { compile } from '../assessment/compile.ts';
import type { Compiled } from '../assessment/compiled.ts';
import { type Constants, usualConstants } from '../assessment/constants.ts';
import { march } from '../assessment/dirt/march.ts';
import { cleanState, type DirtState } from '../assessment/dirt/state.ts';
import { solveAt } from '../assessment/dirt/step.ts';
import { filterFlow } from '../assessment/dirt/transport.ts';
import { pumpHead } from '../assessment/hydraulics/headBudget.ts';
import { bypassOf } from '../assessment/hydraulics/routes.ts';
import { bacteriaShares } from '../assessment/life/bacteria.ts';
import { carriedIn } from '../assessment/life/carries.ts';
import { ammoniaMadeIn, solidsMadeIn } from '../assessment/loads.ts';
import type { Model } from '../model/model.ts';

/** States in which what is carried is told. */
export const carriedStates = ['clean', 'day', 'intervalEnd'] as const;
export type CarriedState = (typeof carriedStates)[number];

const carriedFigures = ['feedKgPerS', 'servedM3', 'outletOxygenKgPerM3', 'flowM3PerS'] as const;
type CarriedFigure = (typeof carriedFigures)[number];

const plainFigures = [
  'flowM3PerS',
  'headM',
  'turnoverPerS',
  'bypassMechanical',
  'bypassBiological',
  'intervalS',
  'oxidisedCleanKgNPerS',
] as const;

/** Figures that are told with a range; what is carried by state, the served volume at a normal stock. */
export type OutcomeName = (typeof plainFigures)[number] | `${CarriedState}.${CarriedFigure}`;

export const outcomeNames: readonly OutcomeName[] = [
  ...plainFigures,
  ...carriedStates.flatMap((state) => carriedFigures.map((figure) => `${state}.${figure}` as const)),
];

export type Outcome = Readonly<Record<OutcomeName, number>>;

/** How fine a draw is marched, against 1 of an assessment: docs/decisions/0022. */
export const DRAW_REFINEMENT = 0.5;

/** How a job is looked at for its ranges. */
export interface Looking {
  readonly constants?: Constants;
  /** The day of the comparison, s. */
  readonly dayS: number;
  /** As in `compile`; that of draws where left out. */
  readonly refinement?: number;
}

const carriedAt = (
  compiled: Compiled,
  shares: ReturnType<typeof bacteriaShares>,
  dirt: DirtState,
): Readonly<Record<CarriedFigure, number>> & { readonly oxidisedKgNPerS: number } => {
  const { carried } = carriedIn(compiled, shares, dirt);
  return { ...carried, servedM3: carried.servedM3.normal };
};

const named = (
  state: CarriedState,
  carried: Readonly<Record<CarriedFigure, number>>,
): readonly (readonly [OutcomeName, number])[] =>
  carriedFigures.map((figure) => [`${state}.${figure}`, carried[figure]] as const);

/**
 * The figures of one job with its numbers as they stand in it: the same models as an assessment, marched in fewer steps.
 *
 * @returns undefined where a draw of the dimensions left no network that can be solved
 */
export const outcomeOf = (model: Model, looking: Looking): Outcome | undefined => {
  const { constants = usualConstants, dayS, refinement = DRAW_REFINEMENT } = looking;
  const result = compile(model, { constants, refinement });
  if (!result.ok) return undefined;
  const { compiled } = result;
  const clean = cleanState(compiled);
  solveAt(compiled, clean);
  const flowM3PerS = filterFlow(compiled);
  const { mechanical, biological } = bypassOf(compiled);
  const headM = pumpHead(compiled);
  const marched = march(compiled, solidsMadeIn(compiled), dayS);
  const shares = bacteriaShares(compiled, marched, ammoniaMadeIn(compiled));
  const atClean = carriedAt(compiled, shares, clean);
  return Object.fromEntries([
    ['flowM3PerS', flowM3PerS],
    ['headM', headM],
    ['turnoverPerS', flowM3PerS / model.tank.volumeM3],
    ['bypassMechanical', mechanical],
    ['bypassBiological', biological],
    ['intervalS', marched.ending.timeS],
    ['oxidisedCleanKgNPerS', atClean.oxidisedKgNPerS],
    ...named('clean', atClean),
    ...named('day', carriedAt(compiled, shares, marched.atDay)),
    ...named('intervalEnd', carriedAt(compiled, shares, marched.atEnd)),
  ]) as unknown as Outcome;
};
