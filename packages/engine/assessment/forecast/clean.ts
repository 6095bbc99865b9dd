import type { Compiled } from '../compiled.ts';
import { type Clean, decidingBed, progress } from '../dirt/march.ts';
import { bedHeldKg, bedRatio } from '../dirt/state.ts';
import type { FullState } from './fullState.ts';
import { bedsNamed, type CleaningPattern } from './pattern.ts';

/** A bed is cleaned once its resistance has grown by this ratio. */
const CLEANED_ABOVE_RATIO = 2;
const YEAR_DAYS = 365;

export type CleaningReason = 'calendar' | 'bed-flow' | 'overflow' | 'flow' | 'yearly';

/** Beds to clean, by place, and why. */
export interface DueCleaning {
  readonly places: readonly number[];
  readonly because: CleaningReason;
}

/** What a pattern looks at on the evening of a day. */
export interface Evening {
  readonly compiled: Compiled;
  readonly state: FullState;
  readonly day: number;
  readonly reference: Clean;
  readonly flowM3PerS: number;
}

const all = ({ beds }: Compiled): number[] => beds.map((_, place) => place);

/** Beds whose resistance has at least doubled, or on which a mat lies. */
const doubled = (compiled: Compiled, state: FullState): number[] =>
  all(compiled).filter(
    (place) =>
      state.matKgPerM2[place]! > 0 || bedRatio(compiled, state.deposit, place) >= CLEANED_ABOVE_RATIO,
  );

const usualDue = ({ compiled, state, day, reference }: Evening): DueCleaning | undefined => {
  if (day % YEAR_DAYS === 0) return { places: all(compiled), because: 'yearly' };
  const { value, endedBy, place } = progress(compiled, reference);
  if (value < 1) return undefined;
  const decides = endedBy === 'bed-flow' ? decidingBed(compiled, state, place) : undefined;
  const deciding = all(compiled).filter((one) => compiled.beds[one]!.id === decides);
  const places = [...new Set([...deciding, ...doubled(compiled, state)])].sort((a, b) => a - b);
  return { places: places.length > 0 ? places : all(compiled), because: endedBy };
};

const byFlow = (
  { compiled, state, reference, flowM3PerS }: Evening,
  lossShare: number,
): DueCleaning | undefined => {
  if (flowM3PerS > (1 - lossShare) * reference.flow) return undefined;
  const places = doubled(compiled, state);
  return { places: places.length > 0 ? places : all(compiled), because: 'flow' };
};

/** What a pattern asks to be cleaned on the evening of a day; nothing where it asks for nothing. */
export const cleaningDue = (pattern: CleaningPattern, evening: Evening): DueCleaning | undefined => {
  switch (pattern.kind) {
    case 'never':
      return undefined;
    case 'usual':
      return usualDue(evening);
    case 'flow':
      return byFlow(evening, pattern.lossShare);
    case 'parts': {
      const places = pattern.rules
        .filter(({ everyDays }) => evening.day % everyDays === 0)
        .flatMap(({ what }) => bedsNamed(evening.compiled, what));
      return places.length > 0
        ? { places: [...new Set(places)].sort((a, b) => a - b), because: 'calendar' }
        : undefined;
    }
  }
};

/**
 * Cleans one bed: rinsing takes its mat off and leaves `residueShare` of the dirt in its depth behind, replacing none.
 * @returns dry solids taken out, kg
 */
export const cleanBed = (
  compiled: Compiled,
  state: FullState,
  of: { readonly place: number; readonly residueShare: number },
): number => {
  const { grid, beds } = compiled;
  const heldBefore = bedHeldKg(compiled, state, of.place);
  if (heldBefore <= 0) return 0;
  const kept = beds[of.place]!.medium.care === 'replace' ? 0 : of.residueShare;
  for (let slice = grid.sliceStart[of.place]!; slice < grid.sliceStart[of.place + 1]!; slice += 1)
    state.deposit[slice] = kept * state.deposit[slice]!;
  state.matKgPerM2[of.place] = 0;
  const left = bedHeldKg(compiled, state, of.place);
  state.labileKg[of.place] = (left / heldBefore) * state.labileKg[of.place]!;
  return heldBefore - left;
};
