import type { FieldChange } from '@fettle/job/changes/changes.ts';

const LONGEST = 40;

/** A value of a field as a sentence shows it: on one line and not endless. */
export const valueText = (value: unknown): string => {
  if (value === undefined) return 'nothing';
  const text = typeof value === 'string' ? value : JSON.stringify(value);
  const line = text.replaceAll(/\s+/g, ' ');
  return line.length > LONGEST ? `${line.slice(0, LONGEST - 1)}…` : line;
};

/** A change as `tank.volume: 180 L -> 200 L`. */
export const changeText = ({ path, before, after }: FieldChange): string => {
  const what = path === '' ? 'the whole document' : path;
  if (before === undefined) return `${what}: now ${valueText(after)}`;
  if (after === undefined) return `${what}: was ${valueText(before)}, now gone`;
  return `${what}: ${valueText(before)} -> ${valueText(after)}`;
};

/** The names of the first few fields that changed, and how many more there are. */
export const changedFields = (changes: readonly FieldChange[], most = 3): string => {
  const names = changes.slice(0, most).map(({ path }) => (path === '' ? 'the whole document' : path));
  const more = changes.length - names.length;
  return `${names.join(', ')}${more > 0 ? ` and ${more} more` : ''}`;
};
