import type { Seen } from './reckoning.ts';

/** How an example was seen, in words. */
export const seenWords: Readonly<Record<Seen, string>> = {
  printed: 'printed',
  secondary: 'seen quoted',
  memory: 'known in the trade, not looked up',
  formula: 'the formula, worked out apart',
  'common-practice': 'common practice, no source',
};

/** What “from memory” means, for readers who did not write it. */
export const notLookedUp = 'known in the trade, not looked up';

/** A reason or a source in words of the trade: `from memory` says nothing to people who did not write it. */
export const inTradeWords = (reason: string): string =>
  reason.replace(/^from memory\b/, notLookedUp).replace(/(?:[,;] )?\bfrom memory\b/g, ` (${notLookedUp})`);
