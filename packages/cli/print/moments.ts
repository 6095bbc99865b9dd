const two = (value: number): string => String(value).padStart(2, '0');

const dayOf = (moment: Date): string =>
  `${moment.getFullYear()}-${two(moment.getMonth() + 1)}-${two(moment.getDate())}`;

/** The day of the calendar here and now, `2026-11-25`. */
export const today = (): string => dayOf(new Date());

/** A moment in UTC as the clock here shows it, to the minute: `2026-11-25 20:01`. */
export const momentText = (moment: string): string => {
  const here = new Date(moment);
  return `${dayOf(here)} ${two(here.getHours())}:${two(here.getMinutes())}`;
};

const DAY_MS = 86_400_000;

/** Whole days from one day of the calendar to another. */
const daysBetween = (from: string, to: string): number =>
  Math.round((Date.parse(`${to}T00:00:00Z`) - Date.parse(`${from}T00:00:00Z`)) / DAY_MS);

const count = (days: number): string => (days === 1 ? '1 day' : `${days} days`);

/** A promised day with how far it is, and whether it is past. */
export const promiseText = (promised: string, now: string): string => {
  const days = daysBetween(now, promised);
  if (days === 0) return `${promised}, today`;
  return days > 0 ? `${promised}, in ${count(days)}` : `${promised}, ${count(-days)} late`;
};

/** How long ago a moment was, in the unit that tells it best. */
export const agoText = (moment: string, now: Date): string => {
  const minutes = Math.max(0, Math.round((now.getTime() - Date.parse(moment)) / 60_000));
  if (minutes < 2) return 'just now';
  if (minutes < 120) return `${minutes} minutes ago`;
  return minutes < 48 * 60
    ? `${Math.round(minutes / 60)} hours ago`
    : `${Math.round(minutes / 1440)} days ago`;
};
