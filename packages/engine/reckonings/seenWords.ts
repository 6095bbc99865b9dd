import type { Seen } from './reckoning.ts';

/** How an example was seen, in words. */
export const seenWords: Readonly<Record<Seen, string>> = {
  printed: 'printed',
  secondary: 'seen quoted',
  memory: 'from memory',
  formula: 'the formula, worked out apart',
  'common-practice': 'common practice, no source',
};
