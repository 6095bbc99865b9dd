import { isDay } from './readReading.ts';

/** Links live at most so long where an end is given. */
const mostYears = 10;

export type LinkEnd =
  | { readonly ok: true; readonly endsAt: string }
  | { readonly ok: false; readonly code: 'end-not-allowed'; readonly says: string };

/**
 * Reads the end of a link, a day or a moment; a day alone is meant to its end, in UTC.
 * @param of.field what the sentence calls it
 */
export function readLinkEnd(text: string, of: { readonly now: Date; readonly field: string }): LinkEnd {
  const { now, field } = of;
  const isMoment = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d{1,3})?)?(Z|[+-]\d{2}:\d{2})$/.test(text);
  const end = new Date(isDay(text) ? `${text}T23:59:59.999Z` : text);
  const latest = new Date(now);
  latest.setUTCFullYear(now.getUTCFullYear() + mostYears);
  const isWritten = isDay(text) || (isMoment && isDay(text.slice(0, 10)));
  if (isWritten && end > now && end <= latest) return { ok: true, endsAt: end.toISOString() };
  const says = `${field} must be a day such as ${latest.toISOString().slice(0, 10)}, or a moment such as ${latest.toISOString()}, after now and within ${mostYears} years.`;
  return { ok: false, code: 'end-not-allowed', says };
}
