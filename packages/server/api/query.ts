import { z } from '@hono/zod-openapi';
import type { Context } from 'hono';
import { badRequest } from './refusal.ts';

/** What a query parameter may say, in words, for the sentence that refuses another value. */
const allowedWords = z.registry<{ readonly allowed: string }>();

interface Described {
  /** What it is for. */
  readonly says: string;
}

/** A whole number, written without sign or leading zero. */
export const wholeNumber = (of: Described & { readonly least: number; readonly most: number }) =>
  z
    .string()
    .regex(/^(?:0|[1-9]\d{0,8})$/)
    .transform(Number)
    .pipe(z.number().min(of.least).max(of.most))
    .optional()
    .openapi({ type: 'integer', minimum: of.least, maximum: of.most, description: of.says })
    .register(allowedWords, { allowed: `a whole number from ${of.least} to ${of.most}` });

/** A number in plain decimals, such as 12.5. */
export const plainNumber = (of: Described & { readonly least: number; readonly most: number }) =>
  z
    .string()
    .regex(/^\d{1,9}(?:\.\d{1,9})?$/)
    .transform(Number)
    .pipe(z.number().min(of.least).max(of.most))
    .optional()
    .openapi({ type: 'number', minimum: of.least, maximum: of.most, description: of.says })
    .register(allowedWords, { allowed: `a number from ${of.least} to ${of.most}` });

/** Text of at most so many characters. */
export const shortText = (of: Described & { readonly most: number }) =>
  z
    .string()
    .max(of.most)
    .optional()
    .openapi({ description: of.says })
    .register(allowedWords, { allowed: `text of at most ${of.most} characters` });

/** One of a few words. */
export const oneOf = <const Words extends readonly [string, ...string[]]>(
  words: Words,
  { says }: Described,
) =>
  z
    .enum(words)
    .optional()
    .openapi({ description: says })
    .register(allowedWords, { allowed: words.join(', ') });

const shown = (value: string): string => (value.length > 60 ? `${value.slice(0, 57)}…` : value);

/**
 * The query of a request as its schema reads it.
 * @throws Refusal that names the first parameter which is unknown, given twice or says what it may not
 */
export const readQuery = <Query extends z.ZodObject>(context: Context, schema: Query): z.infer<Query> => {
  const given = context.req.queries();
  const known = Object.keys(schema.shape);
  for (const [name, values] of Object.entries(given)) {
    if (!known.includes(name))
      throw badRequest(
        'unknown-query-parameter',
        `The query parameter ${shown(name)} is not known here; allowed: ${known.join(', ') || 'none'}.`,
      );
    if (values.length > 1)
      throw badRequest(
        'repeated-query-parameter',
        `The query parameter ${name} is given twice; give it once.`,
      );
  }
  const plain = Object.fromEntries(Object.entries(given).map(([name, [value]]) => [name, value]));
  const read = schema.safeParse(plain);
  if (read.success) return read.data;
  const name = String(read.error.issues[0]?.path[0]);
  const field = schema.shape[name];
  const allowed = field === undefined ? undefined : allowedWords.get(field)?.allowed;
  throw badRequest(
    'bad-query-parameter',
    `The query parameter ${name} says “${shown(String(plain[name]))}”; allowed: ${allowed ?? 'see /api/openapi.json'}.`,
  );
};
