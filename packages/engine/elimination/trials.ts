import type { Cause, Sign } from './causes.ts';

/** What may be done to tell the causes apart, each with what it takes away of them. */
export const trials = [
  'clear-intake',
  'open-outlet',
  'let-air-out',
  'give-air',
  'clean-impeller',
  'new-impeller',
  'brush-hoses',
  'rinse-media',
] as const;

export type Trial = (typeof trials)[number];

export interface TrialFacts {
  /** Causes that are gone once it is done. */
  readonly cures: readonly Cause[];
  /** Time that it takes at the bench, with the filling that follows it, min; from memory. */
  readonly minutes: number;
  /** What is tried before it, for it costs nothing. */
  readonly after?: Trial;
}

/** Times from memory. */
export const trialFacts: Readonly<Record<Trial, TrialFacts>> = {
  'clear-intake': { cures: ['intake-blocked'], minutes: 10 },
  'open-outlet': { cures: ['outlet-restricted'], minutes: 8 },
  'let-air-out': { cures: ['air'], minutes: 8 },
  'give-air': { cures: ['air-short'], minutes: 10 },
  'clean-impeller': { cures: ['impeller-fouled'], minutes: 15 },
  'new-impeller': { cures: ['impeller-fouled', 'impeller-worn'], minutes: 15, after: 'clean-impeller' },
  'brush-hoses': { cures: ['hose-film'], minutes: 25 },
  'rinse-media': { cures: ['media-clogged'], minutes: 30 },
};

/** Time to look at or listen for any one sign, min; from memory. */
export const LOOK_MINUTES = 2;

/** Time to raise the hose until the flow stops, and to measure the height, min; from memory. */
export const SHUTOFF_MINUTES = 6;

/** What may be asked of the filter next: a look, a trial followed by a filling, or the height at which it stops. */
export type Question =
  | { readonly kind: 'look'; readonly sign: Sign }
  | { readonly kind: 'trial'; readonly trial: Trial }
  | { readonly kind: 'shutoff' };
