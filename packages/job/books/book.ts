import type * as z from 'zod';
import { type Partly, soundPart } from '../draft.ts';
import { listedOnce, withoutRepeats } from '../names.ts';
import { type Problem, problem } from '../problems.ts';
import { prototypeFields } from '../prototypeFields.ts';
import { list, text } from '../schema/fields.ts';
import { kindOfValue, problemsOf } from '../schema/issues.ts';
import { isFields } from '../schema/walk.ts';
import { inTextOrder } from '../text/inTextOrder.ts';
import { parseText } from '../text/parse.ts';

/** What the entries of a book may say beside their figures. */
export const remarks = {
  bought: text({ says: 'where it was bought, and when', example: 'market stall, spring' }).optional(),
  notes: text({ says: 'anything else', most: 2000 }).optional(),
};

/** A list of a book, of up to 500 entries. */
export function bookList<Entry extends z.ZodType>(entry: Entry, says: string) {
  return list(entry, { says, most: 500 });
}

export type BookReading<Book> =
  | { readonly ok: true; readonly book: Book }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** What a book is, for its reading. */
export interface BookKind<Schema extends z.ZodObject> {
  readonly schema: Schema;
  /** As it is named in a sentence: `the shelf`. */
  readonly name: string;
  /** How its parts fit together, also where some of them are left out since they have the wrong shape. */
  readonly check: (book: Partly<z.infer<Schema>>) => readonly Problem[];
}

/** Reads a book that is plain data already; gives it as it was written, or everything that is wrong with it. */
export function readBook<Schema extends z.ZodObject>(
  value: unknown,
  { schema, name, check }: BookKind<Schema>,
): BookReading<z.infer<Schema>> {
  if (!isFields(value)) {
    const facts = { found: kindOfValue(value), of: name };
    return { ok: false, problems: [problem('root-not-fields', [], { facts })] };
  }
  const parsed = schema.safeParse(value);
  const issues = parsed.success ? [] : parsed.error.issues;
  const shape = [...prototypeFields(value, []), ...problemsOf(issues, { root: schema, value })];
  const problems = [...shape, ...check(soundPart<z.infer<Schema>>(value, shape))];
  return parsed.success && problems.length === 0
    ? { ok: true, book: parsed.data }
    : { ok: false, problems: listedOnce(withoutRepeats(problems)) };
}

/**
 * Reads the text of a book, YAML 1.2 or JSON in UTF-8: the book as it was written, or everything that is wrong with
 * it, in the order of the text, each with its line.
 */
export function readBookText<Schema extends z.ZodObject>(
  source: string | Uint8Array,
  kind: BookKind<Schema>,
): BookReading<z.infer<Schema>> {
  const { name } = kind;
  const { value, places, problems } = parseText(source, {
    notOfIt: (looksLike) =>
      problem('not-a-book-file', [], {
        facts: { looksLike, name },
        allowed: `a file such as fettle ${name.replace('the ', '')} --out writes`,
      }),
    empty: `{} where nothing is to stand in ${name}`,
  });
  if (value === undefined) return { ok: false, problems };
  const reading = readBook(value, kind);
  if (reading.ok && problems.length === 0) return reading;
  return { ok: false, problems: inTextOrder([...problems, ...(reading.ok ? [] : reading.problems)], places) };
}
