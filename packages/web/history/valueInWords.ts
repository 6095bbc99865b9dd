import { readPath } from '@fettle/job/fieldPath.ts';
import { isFields } from '@fettle/job/schema/walk.ts';
import { nameOfValue } from '../forms/valueNames.ts';
import { spaced } from './spaced.ts';

/** Longest value that a list of changes shows whole, characters. */
const longest = 120;

/** Where a value stands. */
interface Place {
  readonly document: unknown;
  /** The field that holds it, or the list in which it stands. */
  readonly field: string;
}

const inOneLine = (value: unknown, { document, field }: Place): string => {
  if (value === undefined || value === null) return 'nothing';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (Array.isArray(value))
    return value.length === 0
      ? 'empty'
      : value.map((entry) => inOneLine(entry, { document, field })).join('; ');
  if (!isFields(value))
    return nameOfValue(document, field, String(value)) ?? String(value).replaceAll(/\s+/g, ' ');
  const fields = Object.entries(value).map(
    ([name, inside]) => `${spaced(name)} ${inOneLine(inside, { document, field: name })}`,
  );
  return fields.length === 0 ? 'empty' : fields.join(', ');
};

/** The words that find room; of a word that alone is too long, its beginning. */
const cutAtWord = (line: string): string => {
  const room = line.slice(0, longest - 1);
  const whole = room.slice(0, room.lastIndexOf(' ')).replace(/[,;]$/, '');
  return `${whole.length < longest / 2 ? room : whole} …`;
};

/** A value of many fields that the history has cut: what is left of it is no reading for people. */
const isCutShort = (value: unknown): boolean => typeof value === 'string' && /^[[{]["[{].*…$/s.test(value);

/**
 * What a field held, on one line and not endless; media, kinds of filter and alterations by the names that the shelf
 * and the forms show.
 *
 * @param of the document, which knows its own media, and the field's path as changes write it
 */
export const valueInWords = (
  value: unknown,
  of: { readonly document: unknown; readonly path: string },
): string => {
  if (isCutShort(value)) return 'more than a line holds: look at the revision';
  const steps = readPath(of.path).filter((step) => typeof step === 'string');
  const line = inOneLine(value, { document: of.document, field: steps.at(-1) ?? '' });
  return line.length > longest ? cutAtWord(line) : line;
};
