import { familyById } from '@fettle/engine/families/families.ts';
import { type FieldPath, readPath } from '@fettle/job/fieldPath.ts';
import { fieldFacts, inner } from '@fettle/job/schema/fields.ts';
import { jobSchema } from '@fettle/job/schema/job.ts';
import { schemaAt } from '@fettle/job/schema/walk.ts';
import { valueAt } from '../forms/places.ts';
import { spaced } from './spaced.ts';

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
