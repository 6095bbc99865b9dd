import { familyById } from '@fettle/engine/families/families.ts';
import { type FieldPath, readPath } from '@fettle/job/fieldPath.ts';
import { fieldFacts, inner } from '@fettle/job/schema/fields.ts';
import { jobSchema } from '@fettle/job/schema/job.ts';
import { isFields, schemaAt } from '@fettle/job/schema/walk.ts';
import { valueAt } from '../forms/places.ts';

/** `ratedFlow` and `basket-1` as people read them. */
const spaced = (name: string): string =>
  name.replaceAll(/(?<=[a-z])[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`).replaceAll('-', ' ');

/** Lists whose entries have a name of their own in the trade. */
const entryNames: Readonly<Record<string, string>> = {
  tests: 'bench test',
  claims: 'claim',
  fish: 'fish',
  times: 'run',
};

const entryName = (path: FieldPath, depth: number): string => {
  const list = path[depth - 1];
  const isPacking = path[depth - 2] === 'packing';
  return isPacking ? 'bed' : (entryNames[String(list)] ?? 'no.');
};

/** What the family calls a measurement. */
const measurementLabel = (document: unknown, path: FieldPath): string | undefined => {
  if (path.length !== 3 || path[1] !== 'measurements') return undefined;
  const family = familyById(String(valueAt(document, ['filter', 'family'])));
  return family?.measurements.find(({ key }) => key === path[2])?.label;
};

/** The schema's own phrase, up to where it begins to explain. */
const schemaSays = (document: unknown, path: FieldPath): string | undefined => {
  const schema = schemaAt(jobSchema, document, path);
  const says = schema === undefined ? undefined : fieldFacts.get(inner(schema))?.says;
  return says?.split(/[;:,]/)[0]?.trim();
};

/**
 * A field of the job in words, from the part that it belongs to inward: `Tank: net water volume`.
 *
 * @param document the job, which decides what alternatives of the schema and which family's names hold
 * @param written the field's path as changes and problems write it; empty for the whole
 */
export function fieldInWords(document: unknown, written: string): string {
  const path = readPath(written);
  if (path.length === 0) return 'The whole record';
  const words = path.flatMap((step, depth): readonly string[] => {
    if (typeof step === 'number') return [`${entryName(path, depth)} ${step + 1}`];
    const isLast = depth === path.length - 1;
    const isListNamedByEntries = typeof path[depth + 1] === 'number' && entryNames[step] !== undefined;
    if (isListNamedByEntries || (step === 'packing' && depth > 0)) return [];
    const isChamber = path[depth - 1] === 'packing';
    if (!isLast || depth === 0 || isChamber) return [spaced(step)];
    return [measurementLabel(document, path) ?? schemaSays(document, path) ?? spaced(step)];
  });
  const [first = '', ...rest] = words;
  const said = rest.length === 0 ? first : `${first}: ${rest.join(', ')}`;
  return said.charAt(0).toUpperCase() + said.slice(1);
}

/** Longest value that a list of changes shows whole, characters. */
const longest = 120;

const inOneLine = (value: unknown): string => {
  if (value === undefined || value === null) return 'nothing';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (Array.isArray(value)) return value.length === 0 ? 'empty' : value.map(inOneLine).join('; ');
  if (!isFields(value)) return String(value).replaceAll(/\s+/g, ' ');
  const fields = Object.entries(value).map(([name, inside]) => `${spaced(name)} ${inOneLine(inside)}`);
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

/** What a field held, on one line and not endless. */
export const valueInWords = (value: unknown): string => {
  if (isCutShort(value)) return 'more than a line holds: look at the revision';
  const line = inOneLine(value);
  return line.length > longest ? cutAtWord(line) : line;
};
