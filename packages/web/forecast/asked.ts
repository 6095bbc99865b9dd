/** Patterns of cleaning that are offered, each with the words for it. */
export const offeredPatterns: readonly (readonly [pattern: string, says: string])[] = [
  ['never', 'nothing'],
  ['usual', 'what has clogged, when it is due'],
  ['flow 25 %', 'what has clogged, at ¾ of the flow'],
  ['mechanical/30, all/90', 'mechanical monthly, all quarterly'],
  ['all/30', 'everything monthly'],
  ['all/90', 'everything quarterly'],
];

/** How far ahead may be looked, days. */
export const offeredDays: readonly number[] = [30, 90, 180, 365, 730];

/** What an address asks: how far ahead, and which pattern. */
export const askedOf = (search: URLSearchParams): { readonly days: number; readonly clean: string } => {
  const days = Number(search.get('days'));
  return {
    days: offeredDays.includes(days) ? days : 180,
    clean: search.get('clean')?.slice(0, 200) ?? 'usual',
  };
};
