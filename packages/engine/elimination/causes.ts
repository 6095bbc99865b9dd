/** What may lie behind a flow that has faded, in the water's order as far as it has one. */
export const causes = [
  'intake-blocked',
  'air',
  'air-short',
  'impeller-fouled',
  'impeller-worn',
  'hose-film',
  'media-clogged',
  'outlet-restricted',
] as const;

export type Cause = (typeof causes)[number];

/** What is seen or heard at a filter without opening it. */
export const signs = [
  'rattle',
  'growl',
  'gurgle',
  'bubbles',
  'few-bubbles',
  'covered-intake',
  'brown-hoses',
  'bent-hose',
] as const;

export type Sign = (typeof signs)[number];

/** What is known of a cause before anything is looked at. */
export interface CauseFacts {
  /** Share of filters with a faded flow that have it, alone or with others. */
  readonly usualShare: number;
  /** Share of cases in which it alone brings a sign about. */
  readonly shows: Readonly<Partial<Record<Sign, number>>>;
  /** Factor by which it changes the power at the plug at its worst, about 1 where it does not. */
  readonly powerFactor: number;
}

/**
 * From memory, all of it: no survey of faded filters was found. Order after common practice (intake, impeller,
 * hoses, media, valves), no source. Power: a worn bearing draws more, resistance changes little; common practice.
 */
export const causeFacts: Readonly<Record<Cause, CauseFacts>> = {
  'intake-blocked': { usualShare: 0.35, shows: { 'covered-intake': 0.85, growl: 0.4 }, powerFactor: 0.95 },
  air: { usualShare: 0.15, shows: { gurgle: 0.7, bubbles: 0.7, rattle: 0.3 }, powerFactor: 0.9 },
  'air-short': { usualShare: 0.4, shows: { 'few-bubbles': 0.8 }, powerFactor: 0.97 },
  'impeller-fouled': { usualShare: 0.3, shows: { rattle: 0.35, growl: 0.2 }, powerFactor: 1.1 },
  'impeller-worn': { usualShare: 0.1, shows: { rattle: 0.7, growl: 0.15 }, powerFactor: 1.2 },
  'hose-film': { usualShare: 0.4, shows: { 'brown-hoses': 0.85 }, powerFactor: 0.97 },
  'media-clogged': { usualShare: 0.6, shows: {}, powerFactor: 0.95 },
  'outlet-restricted': { usualShare: 0.15, shows: { 'bent-hose': 0.7 }, powerFactor: 0.97 },
};

/** Share of filters that show a sign without any of the causes above; from memory. */
export const SHOWN_BY_NOTHING = 0.05;
