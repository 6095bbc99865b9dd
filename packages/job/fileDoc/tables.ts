import type { Measurement } from '@fettle/engine/families/layout.ts';
import type { Given } from '@fettle/engine/model/model.ts';
import type { Dimension } from '@fettle/engine/quantities/dimensions.ts';
import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';
import * as z from 'zod';
import { readPath } from '../fieldPath.ts';
import { readDocument } from '../read.ts';
import { benchTestSchema } from '../schema/benchTests.ts';
import { type FieldFacts, fieldFacts, inner } from '../schema/fields.ts';
import { jobSchema } from '../schema/job.ts';
import { type ListedField, listFields, schemaAt } from '../schema/walk.ts';

const least = {
  fettle: 1,
  tank: { volume: '100 L' },
  filter: {
    family: 'basket-stack-canister',
    measurements: { baskets: 2, basketWidth: '160 mm', basketDepth: '150 mm', basketHeight: '60 mm' },
    pump: { ratedFlow: '900 L/h' },
  },
};

/** The rows of the fields of the whole document but its bench tests. */
export function fieldRows(): readonly string[] {
  return fieldRowsOf(jobSchema).filter((row) => !row.startsWith('| `tests[].'));
}

/** The rows of the fields of any document that is described like a job. */
export function fieldRowsOf(schema: z.ZodObject): readonly string[] {
  return listFields(schema)
    .filter(({ facts }) => facts !== undefined)
    .map((field) => fieldRow(field, ''));
}

/** For each kind of bench test its heading and table. */
export function benchTestTables(): readonly string[] {
  return benchTestSchema.options.flatMap((option) => [
    `### \`${option.shape.kind.value}\``,
    '',
    ...tableHead,
    ...listFields(option)
      .filter(({ path }) => path !== 'kind')
      .filter(({ facts }) => facts !== undefined)
      .map((field) => fieldRow(field, 'tests[].')),
    '',
  ]);
}

export const tableHead = ['| field | written like | meaning and limits |', '| --- | --- | --- |'];

function fieldRow({ path, facts, required, schema }: ListedField, above: string): string {
  const mark = required && !/[\]*]$/.test(path) ? ' ●' : '';
  return `| \`${above}${path}\`${mark} | ${writtenLike(facts, schema)} | ${cell(meaning(facts, schema))} |`;
}

function writtenLike(facts: FieldFacts | undefined, schema: z.core.$ZodType): string {
  if (schema instanceof z.ZodArray) return 'list';
  if (schema instanceof z.ZodObject || schema instanceof z.ZodRecord) return 'fields';
  return facts?.example === undefined ? '' : `\`${facts.example}\``;
}

function meaning(facts: FieldFacts | undefined, schema: z.core.$ZodType): string {
  const parts = [facts?.says ?? 'which kind the entry is of'];
  if (facts?.quantity !== undefined) parts.push(facts.quantity.bounds);
  if (schema instanceof z.ZodNumber) parts.push(`from ${schema.minValue} to ${schema.maxValue}`);
  if (schema instanceof z.ZodEnum && schema.options.length < 9)
    parts.push(`one of ${schema.options.join(', ')}`);
  return parts.join('; ');
}

/** The row of one measurement. */
export function measurementRow({ key, label, how, assumed, kind }: Measurement): string {
  const written = {
    length: 'a length',
    area: 'an area',
    count: 'a number',
    fraction: 'a share',
    'yes-no': 'yes or no',
  };
  return `| \`${key}\` | ${cell(label)}; ${written[kind]} | ${cell(how)} | ${assumed === undefined ? 'needed' : cell(assumed.because)} |`;
}

/** The rows of what is assumed for a canister. */
export function assumptionRows(): readonly string[] {
  const reading = readDocument(least);
  const givens = reading.ok ? reading.model.givens : [];
  return givens.filter(({ assumedBecause }) => assumedBecause !== undefined).map(assumptionRow);
}

function assumptionRow(given: Given): string {
  const because = given.assumedBecause?.replace('not stated: ', '') ?? '';
  return `| \`${given.path}\` | ${assumedValue(given)} | ${cell(because)} |`;
}

const dimensionOfUnit: Readonly<Record<string, Dimension>> = {
  m: 'length',
  m2: 'area',
  '1/s': 'rate',
  Pa: 'pressure',
  'GBP/J': 'price-per-energy',
  'GBP/s': 'price-per-time',
};

function assumedValue({ path, value, unit, doubt }: Given): string {
  if (unit === 'yes or no') return value === 0 ? 'no' : 'yes';
  if (unit === 'a') return `${value} a${doubt === undefined ? '' : ` ×/÷ ${doubt.size}`}`;
  const schema = schemaAt(jobSchema, least, readPath(path));
  const stated = schema === undefined ? undefined : fieldFacts.get(inner(schema))?.quantity?.dimension;
  const dimension = dimensionOfUnit[unit] ?? stated ?? 'fraction';
  const currency = unit.startsWith('GBP') ? { currency: 'GBP' } : {};
  return printQuantity({
    value,
    dimension,
    system: 'metric',
    ...currency,
    ...(doubt === undefined ? {} : { doubt }),
  });
}

/** The codes of a table of wordings. */
export function codeList(wordings: object): string {
  return Object.keys(wordings)
    .map((code) => `\`${code}\``)
    .join(', ');
}

function cell(text: string): string {
  return text.replaceAll('|', '\\|');
}
