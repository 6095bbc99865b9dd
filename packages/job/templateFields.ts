import { alike } from './changes/alike.ts';
import { type FieldPath, writtenPath } from './fieldPath.ts';
import { newJob } from './newJob.ts';
import { readJob } from './read.ts';
import type { JobDocument } from './schema/job.ts';

/** Parts of a new job that are examples of what only a look at this filter and this tank can tell. */
const examples = ['job', 'tank', 'filter', 'packing'] as const;

/** Says what kind of filter it is, and is not to be changed. */
const ofTheKind: ReadonlySet<string> = new Set(['filter.family']);

/** A few figures of a real filter are those of the example by chance; half of them are not. */
const tooManyShare = 0.5;

interface Leaf {
  readonly path: string;
  readonly value: unknown;
}

/** Fields with what they say; a list, and so the beds of a chamber, is one. */
function leavesOf(value: unknown, path: FieldPath): readonly Leaf[] {
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    return [{ path: writtenPath(path), value }];
  return Object.entries(value).flatMap(([name, inside]) => leavesOf(inside, [...path, name]));
}

function templateOf(family: string): JobDocument | undefined {
  const made = newJob(family);
  const reading = made.ok ? readJob(made.text) : undefined;
  return reading?.ok ? reading.document : undefined;
}

const leavesIn = (document: JobDocument): readonly Leaf[] =>
  examples.flatMap((part) => (document[part] === undefined ? [] : leavesOf(document[part], [part])));

/**
 * Fields of a document that still say what the file of `newJob` for its family says, by path, in the order of the file.
 *
 * @returns none where fewer than half of the examples are left, which may be so by chance
 */
export function templateFields(document: JobDocument): readonly string[] {
  const template = templateOf(document.filter.family);
  if (template === undefined) return [];
  const own = leavesIn(template).filter(({ path, value }) => !ofTheKind.has(path) && !alike(value, []));
  const said = new Map(leavesIn(document).map(({ path, value }) => [path, value]));
  const left = own.filter(({ path, value }) => said.has(path) && alike(said.get(path), value));
  return left.length < tooManyShare * own.length ? [] : left.map(({ path }) => path);
}
