import { asShortName, nearestWord } from '@fettle/engine/quantities/spelling.ts';
import * as z from 'zod';
import type { FieldPath } from '../fieldPath.ts';
import { adviceOn } from '../names.ts';
import { type Problem, problem, problemOfQuantity } from '../problems.ts';
import { tagPattern } from './about.ts';
import { exampleOf } from './examples.ts';
import { fieldFacts, inner, type QuantityIssue } from './fields.ts';
import { at, fits, knownNames, schemaAt } from './walk.ts';

type Issue = z.core.$ZodIssue;

/** What the mapping needs beside the issue. */
interface Setting {
  readonly root: z.core.$ZodType;
  readonly value: unknown;
}

/** Turns what the schema found into problems in our own words. */
export function problemsOf(issues: readonly Issue[], setting: Setting): readonly Problem[] {
  return issues.flatMap((issue) => problemsOfIssue(issue, [], setting));
}

function problemsOfIssue(issue: Issue, above: FieldPath, setting: Setting): readonly Problem[] {
  const path = [...above, ...issue.path.map((step) => (typeof step === 'number' ? step : String(step)))];
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => unknownField([...path, key], setting));
    case 'invalid_union':
      return problemsOfUnion(issue, path, setting);
    case 'invalid_key':
      return [badId(path, path.at(-1))];
    default:
      return [problemOfValue(issue, path, setting)];
  }
}

const idsAllowed = 'small letters, digits and hyphens, a letter first, such as basket-1';

function badId(path: FieldPath, found: unknown): Problem {
  const name = typeof found === 'string' && found.length <= 60 ? asShortName(found) : '';
  const allowed = /^[a-z][a-z0-9-]*$/.test(name) ? `such as ${name}` : idsAllowed;
  return problem('bad-id', path, { facts: { found: shown(found) }, allowed });
}

function unknownField(path: FieldPath, { root, value }: Setting): Problem {
  const names = knownNames(schemaAt(root, value, path.slice(0, -1)));
  const nearest = nearestWord(String(path.at(-1)), names);
  return problem('unknown-field', path, { facts: { nearest }, allowed: names.join(', ') });
}

function problemsOfUnion(
  issue: z.core.$ZodIssueInvalidUnion,
  path: FieldPath,
  setting: Setting,
): readonly Problem[] {
  const found = valueAt(setting.value, path);
  if (issue.errors.length === 0) return unknownKind(issue, path, setting);
  const schema = schemaAt(setting.root, setting.value, path.slice(0, -1));
  const options = optionsBelow(schema, path.at(-1));
  const best = options.findIndex((option) => fits(option, found));
  const chosen = best < 0 ? undefined : issue.errors[best];
  if (chosen !== undefined && chosen.length > 0) {
    return chosen.flatMap((inside) => problemsOfIssue(inside, path, setting));
  }
  const wanted = options.map(kindOfSchema).join(' or ');
  const allowed = options.map(allowedOf).join(' or ');
  if (found === null || found === undefined) return [absent(path, found)];
  const example = options.map(exampleOf).find((each) => each !== undefined);
  return [wrongKind(path, found, { wanted, allowed, example })];
}

function wrongKind(
  path: FieldPath,
  found: unknown,
  {
    wanted,
    allowed,
    example,
  }: { readonly wanted: string; readonly allowed: string; readonly example: string | undefined },
): Problem {
  return problem('wrong-kind', path, {
    facts: { found: kindOfValue(found), wanted },
    allowed: example === undefined ? allowed : `${allowed}, such as ${example}`,
  });
}

/** Without its kind an entry's other fields cannot be checked, except that no kind at all has them. */
function unknownKind(
  issue: z.core.$ZodIssueInvalidUnion,
  path: FieldPath,
  setting: Setting,
): readonly Problem[] {
  const entry = path.slice(0, -1);
  const options = optionsBelow(schemaAt(setting.root, setting.value, entry.slice(0, -1)), entry.at(-1));
  const names = [...new Set(options.flatMap(knownNames))];
  const strange = Object.keys(Object(valueAt(setting.value, entry)))
    .filter((key) => !names.includes(key))
    .map((key) =>
      problem('unknown-field', [...entry, key], {
        facts: { nearest: nearestWord(key, names) },
        allowed: names.join(', '),
      }),
    );
  const found = valueAt(setting.value, path);
  if (found === undefined || found === null) return [absent(path, found), ...strange];
  const known = 'options' in issue && Array.isArray(issue.options) ? issue.options.map(String) : [];
  const told = notAmong(path, found, known);
  return [{ ...told, allowed: options.flatMap(kindWithMeaning).join(', ') }, ...strange];
}

/** The kind that an alternative stands for, with what its schema says of it. */
function kindWithMeaning(option: z.core.$ZodType): readonly string[] {
  const kind = option instanceof z.ZodObject ? option.shape.kind : undefined;
  if (!(kind instanceof z.ZodLiteral)) return [];
  const says = fieldFacts.get(kind)?.says;
  return [says === undefined ? String(kind.value) : `${kind.value} (${says})`];
}

function notAmong(path: FieldPath, found: unknown, known: readonly string[]): Problem {
  const { nearest, allowed } = adviceOn(found, known);
  const facts = { found: shown(found), what: 'one of the words allowed here', nearest };
  return problem('not-among', path, { facts, allowed });
}

function optionsBelow(
  schema: z.core.$ZodType | undefined,
  step: string | number | undefined,
): readonly z.core.$ZodType[] {
  let child: z.core.$ZodType | undefined;
  if (schema instanceof z.ZodArray) child = schema.element;
  else if (schema instanceof z.ZodObject && typeof step === 'string') child = schema.shape[step];
  while (child instanceof z.ZodOptional) child = child.unwrap();
  return child instanceof z.ZodUnion ? child.options : [];
}

function valueAt(value: unknown, path: FieldPath): unknown {
  return path.reduce<unknown>((inside, step) => at(inside, step), value);
}

/** Of what is one of a few words, the words are told: nobody guesses them. */
function absent(path: FieldPath, found: unknown, schema?: z.core.$ZodType): Problem {
  const words = schema === undefined ? undefined : inner(schema);
  const allowed = words instanceof z.ZodEnum ? { allowed: words.options.join(', ') } : {};
  return found === null
    ? problem('empty-field', path, { facts: {}, ...allowed })
    : problem('missing-field', path, { facts: {}, ...allowed });
}

function problemOfValue(issue: Issue, path: FieldPath, { root, value }: Setting): Problem {
  const found = valueAt(value, path);
  const schema = schemaAt(root, value, path);
  if (found === null || found === undefined) return absent(path, found, schema);
  switch (issue.code) {
    case 'custom':
      return problemOfCustom(issue, path, found);
    case 'invalid_value':
      return notAmong(path, found, issue.values.map(String));
    case 'invalid_format':
      return problemOfFormat(issue, path, found);
    case 'too_big':
      return issue.origin === 'string'
        ? problem('text-too-long', path, { facts: { most: Number(issue.maximum) } })
        : outOfRange(issue.origin, path, { found, schema, limit: Number(issue.maximum), side: 'most' });
    case 'too_small':
      return outOfRange(issue.origin, path, { found, schema, limit: Number(issue.minimum), side: 'least' });
    default: {
      const wanted = schema === undefined ? 'something else' : kindOfSchema(schema);
      return wrongKind(path, found, {
        wanted,
        allowed: schema === undefined ? wanted : allowedOf(schema),
        example: schema === undefined ? undefined : exampleOf(schema),
      });
    }
  }
}

function isQuantityIssue(
  params: Record<string, unknown> | undefined,
): params is Record<string, unknown> & QuantityIssue {
  return params?.fettle === 'bad-quantity';
}

function problemOfCustom(issue: z.core.$ZodIssueCustom, path: FieldPath, found: unknown): Problem {
  const { params } = issue;
  if (isQuantityIssue(params)) {
    return problemOfQuantity(path, shown(found), params);
  }
  return problem('bad-currency', path, {
    facts: { found: shown(found) },
    allowed: 'a code such as GBP, EUR or USD',
  });
}

function problemOfFormat(
  issue: z.core.$ZodIssueInvalidStringFormat,
  path: FieldPath,
  found: unknown,
): Problem {
  if (issue.format === 'date') {
    return problem('bad-date', path, { facts: { found: shown(found) }, allowed: 'a day such as 2026-11-02' });
  }
  if (issue.pattern === String(tagPattern)) {
    const allowed = '1 to 40 characters on one line, without commas and without spaces at the ends';
    return problem('bad-tag', path, { facts: { found: shown(found) }, allowed });
  }
  return badId(path, found);
}

function outOfRange(
  origin: string,
  path: FieldPath,
  {
    found,
    schema,
    limit,
    side,
  }: {
    readonly found: unknown;
    readonly schema: z.core.$ZodType | undefined;
    readonly limit: number;
    readonly side: 'least' | 'most';
  },
): Problem {
  if (origin === 'array') {
    return side === 'most'
      ? problem('list-too-long', path, { facts: { most: limit } })
      : problem('list-too-short', path, { facts: { least: limit } });
  }
  const allowed = schema instanceof z.ZodNumber ? rangeOf(schema, 'a whole number') : undefined;
  return problem('number-out-of-range', path, {
    facts: { found: shown(found) },
    ...(allowed === undefined ? {} : { allowed }),
  });
}

/** A value as a sentence can quote it. */
export function shown(value: unknown): string {
  if (typeof value === 'string') return `"${value.length > 40 ? `${value.slice(0, 37)}…` : value}"`;
  return typeof value === 'object' ? kindOfValue(value) : String(value);
}

/** What a value is, in plain words. */
export function kindOfValue(value: unknown): string {
  if (value === null || value === undefined) return 'nothing';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return 'a group of fields';
  if (typeof value === 'number') return `the number ${value}`;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return `the text ${shown(value)}`;
}

/** `a whole number from 1 to 3650`. */
function rangeOf({ minValue, maxValue }: z.ZodNumber, called: string): string {
  return `${called} from ${minValue} to ${maxValue}`;
}

/** All that is allowed of a schema's value, as far as one phrase says it. */
function allowedOf(schema: z.core.$ZodType): string {
  if (schema instanceof z.ZodNumber) return rangeOf(schema, 'a whole number');
  if (schema instanceof z.ZodArray && schema.element instanceof z.ZodNumber)
    return `a list of ${rangeOf(schema.element, 'whole numbers')}`;
  return kindOfSchema(schema);
}

function kindOfSchema(schema: z.core.$ZodType): string {
  if (schema instanceof z.ZodArray) return 'a list';
  if (schema instanceof z.ZodObject || schema instanceof z.ZodRecord) return 'a group of fields';
  if (schema instanceof z.ZodNumber) return 'a whole number';
  if (schema instanceof z.ZodBoolean) return 'true or false';
  if (schema instanceof z.ZodEnum) return schema.options.join(' or ');
  if (schema instanceof z.ZodString) return 'text (in quotes where it looks like a number)';
  if (schema instanceof z.ZodUnion) return [...new Set(schema.options.map(kindOfSchema))].join(' or ');
  return 'a quantity';
}
