/** Patterns of cleaning that are offered, each with the words for it. */
export const offeredPatterns: readonly (readonly [pattern: string, says: string])[] = [
  ['never', 'nothing is cleaned'],
  ['usual', 'whenever a bed is down by a third, what has clogged'],
  ['flow 25 %', 'when the jug shows a quarter less, what has clogged'],
  ['mechanical/30, all/90', 'mechanical media monthly, all every quarter'],
  ['all/30', 'everything monthly'],
  ['all/90', 'everything every quarter'],
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
