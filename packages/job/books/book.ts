import type * as z from 'zod';
import { listedOnce, withoutRepeats } from '../names.ts';
import { type Problem, problem } from '../problems.ts';
import { prototypeFields } from '../prototypeFields.ts';
import { list, text } from '../schema/fields.ts';
import { kindOfValue, problemsOf } from '../schema/issues.ts';
import { isFields } from '../schema/walk.ts';

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

/** How a book is read. */
interface BookKind<Schema extends z.ZodObject> {
  readonly schema: Schema;
  /** As it is named in a sentence. */
  readonly name: string;
  /** How its parts fit together, once all have the right shape. */
  readonly check: (book: z.infer<Schema>) => readonly Problem[];
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
  const strange = prototypeFields(value, []);
  const parsed = schema.safeParse(value);
  const problems = parsed.success
    ? [...strange, ...check(parsed.data)]
    : [...strange, ...problemsOf(parsed.error.issues, { root: schema, value })];
  return parsed.success && problems.length === 0
    ? { ok: true, book: parsed.data }
    : { ok: false, problems: listedOnce(withoutRepeats(problems)) };
}
