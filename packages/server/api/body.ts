import { shownPath } from '@fettle/job/fieldPath.ts';
import type { Context } from 'hono';
import type { z } from 'zod';
import type { ProblemCode } from '../problemCodes.ts';
import type { FieldProblem } from '../problems.ts';
import { Refusal } from './refusal.ts';

/** What a request may carry. */
export interface BodyRules {
  /** Media types that are taken, in small letters; `image/*` takes any picture. */
  readonly types: readonly string[];
  readonly mostBytes: number;
}

const unsupported = (code: ProblemCode, detail: string): Refusal =>
  new Refusal({ status: 415, code, title: 'This kind of content is not taken', detail });

const tooLarge = (mostBytes: number): Refusal =>
  new Refusal(
    {
      status: 413,
      code: 'body-too-large',
      title: 'The content is too large',
      detail: `The content is larger than ${mostBytes / 1e6} MB, which is the most that is taken here.`,
    },
    // What still comes is not worth reading.
    { Connection: 'close' },
  );

const takes = (types: readonly string[], type: string): boolean =>
  types.includes(type) || (types.includes('image/*') && /^image\/[a-z0-9.+-]+$/.test(type));

/** Whether a Content-Type's parameters say no other charset than UTF-8; other parameters mean nothing here. */
const charsetOf = (parameters: readonly string[]): string | undefined =>
  parameters
    .map((parameter) => /^\s*charset\s*=\s*"?([^"\s]*)"?\s*$/i.exec(parameter)?.[1]?.toLowerCase())
    .find((charset) => charset !== undefined);

/**
 * The media type of what a request carries.
 * @throws Refusal 415 that names what is taken
 */
export const bodyType = (context: Context, { types }: BodyRules): string => {
  const allowed = `allowed: ${types.join(', ')}`;
  const header = context.req.header('Content-Type');
  if (header === undefined)
    throw unsupported(
      'no-content-type',
      `The request does not say what it carries (Content-Type); ${allowed}.`,
    );
  const [type = '', ...parameters] = header.split(';');
  const plain = type.trim().toLowerCase();
  if (!takes(types, plain))
    throw unsupported(
      'content-type-not-taken',
      `${plain.slice(0, 80) || 'This'} is not taken here; ${allowed}.`,
    );
  const charset = charsetOf(parameters);
  if (charset !== undefined && charset !== 'utf-8' && charset !== 'utf8')
    throw unsupported('charset-not-taken', `Text in ${charset.slice(0, 40)} is not taken; allowed: UTF-8.`);
  const encoding = context.req.header('Content-Encoding');
  if (encoding !== undefined && encoding.trim().toLowerCase() !== 'identity')
    throw unsupported('content-encoding-not-taken', 'Compressed content is not taken; send it as it is.');
  return plain;
};

/** Bytes of a stream, until there are more than allowed. */
const readStream = async (stream: ReadableStream<Uint8Array>, mostBytes: number): Promise<Uint8Array> => {
  const chunks: Uint8Array[] = [];
  let total = 0;
  for await (const chunk of stream) {
    total += chunk.length;
    if (total > mostBytes) throw tooLarge(mostBytes);
    chunks.push(chunk);
  }
  return Buffer.concat(chunks, total);
};

/**
 * Bytes of what a request carries.
 * @throws Refusal 415 or 413
 */
export const readBody = async (context: Context, rules: BodyRules): Promise<Uint8Array> => {
  bodyType(context, rules);
  const length = context.req.header('Content-Length');
  if (length !== undefined) {
    if (Number(length) > rules.mostBytes) throw tooLarge(rules.mostBytes);
    return new Uint8Array(await context.req.arrayBuffer());
  }
  const { body } = context.req.raw;
  return body === null ? new Uint8Array() : readStream(body, rules.mostBytes);
};

const SMALL_REQUEST: BodyRules = { types: ['application/json'], mostBytes: 100_000 };

const unreadable = (detail: string): Refusal =>
  new Refusal({ status: 400, code: 'not-json', title: 'The content is not JSON', detail });

const textOf = (bytes: Uint8Array): string => {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw unreadable('The content is not text in UTF-8.');
  }
};

/**
 * Demands that what came as JSON is JSON, whatever else could be made of it.
 *
 * @param otherwise how other content of this kind is sent, as the end of the sentence that refuses it
 * @throws Refusal 400
 */
export const demandJson = (bytes: Uint8Array, otherwise: string): void => {
  const text = textOf(bytes);
  try {
    JSON.parse(text);
  } catch {
    throw unreadable(`The content cannot be read as JSON, which Content-Type says it is; ${otherwise}.`);
  }
};

const parse = (bytes: Uint8Array): unknown => {
  const text = textOf(bytes);
  try {
    return JSON.parse(text, (key, value: unknown) => {
      if (key === '__proto__') throw unreadable('The content has a field __proto__, which is not taken.');
      return value;
    });
  } catch (error) {
    if (error instanceof Refusal) throw error;
    throw unreadable('The content cannot be read as JSON.');
  }
};

const list = (values: readonly unknown[]): string => values.map(String).join(', ');

const KINDS: Readonly<Record<string, string>> = {
  array: 'a list',
  boolean: 'true or false',
  int: 'a whole number',
  number: 'a number',
  object: 'a group of fields',
  string: 'text',
};

/** What a schema wants of a field, as the end of a sentence that begins with the field. */
const wantedBy = (issue: z.core.$ZodIssue): string => {
  switch (issue.code) {
    case 'too_small':
      return `must be at least ${issue.minimum}${issue.origin === 'string' ? ' characters long' : ''}`;
    case 'too_big':
      return `must be at most ${issue.maximum}${issue.origin === 'string' ? ' characters long' : ''}`;
    case 'invalid_value':
      return `must be one of: ${list(issue.values)}`;
    case 'invalid_type':
      return `must be ${KINDS[issue.expected] ?? `of the kind ${issue.expected}`}`;
    default:
      return `is not as it must be (${issue.message})`;
  }
};

/** Whether nothing stands at the place of an issue: a field that is not there is of no kind at all. */
const isMissing = (value: unknown, { path }: z.core.$ZodIssue): boolean =>
  path.length > 0 &&
  path.reduce<unknown>(
    (inside, key) =>
      typeof inside === 'object' && inside !== null
        ? Object.getOwnPropertyDescriptor(inside, key)?.value
        : undefined,
    value,
  ) === undefined;

/** Field problems of what a schema refuses in a value, in a sentence each. */
const fieldProblems = (error: z.ZodError, value: unknown): FieldProblem[] =>
  error.issues.flatMap((issue): FieldProblem[] => {
    const place = issue.path.join('.');
    if (issue.code === 'unrecognized_keys')
      return issue.keys.map((key) => ({
        code: 'unknown-field',
        path: [...issue.path, key].join('.'),
        says: `${shownPath([...issue.path, key].join('.').slice(0, 100))} is not a known field.`,
      }));
    if (isMissing(value, issue))
      return [{ code: 'missing-field', path: place, says: `${place} is missing; it ${wantedBy(issue)}.` }];
    return [{ code: 'bad-field', path: place, says: `${place || 'The content'} ${wantedBy(issue)}.` }];
  });

/** 422 with the fields that are wrong. */
export const fieldsRefused = (
  problems: readonly FieldProblem[],
  detail = problems[0]?.says ?? 'The content has problems.',
): Refusal =>
  new Refusal({ status: 422, code: 'fields', title: 'Some fields cannot be taken', detail, problems });

/**
 * The small JSON that a request carries, as its schema reads it.
 *
 * @param how `mayBeEmpty` where a request without content is the same as one with `{}`
 * @throws Refusal 400, 413, 415 or 422
 */
export const readJson = async <Schema extends z.ZodType>(
  context: Context,
  schema: Schema,
  how: { readonly mayBeEmpty?: boolean } = {},
): Promise<z.infer<Schema>> => {
  const isEmpty = how.mayBeEmpty && context.req.header('Content-Type') === undefined;
  const bytes = isEmpty ? new Uint8Array() : await readBody(context, SMALL_REQUEST);
  const value = bytes.length === 0 && how.mayBeEmpty ? {} : parse(bytes);
  const read = schema.safeParse(value);
  if (read.success) return read.data;
  throw fieldsRefused(fieldProblems(read.error, value));
};
