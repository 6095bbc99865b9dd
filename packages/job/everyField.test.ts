import { families } from '@fettle/engine/families/families.ts';
import { dimensionFacts } from '@fettle/engine/quantities/dimensions.ts';
import { readQuantity } from '@fettle/engine/quantities/readQuantity.ts';
import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { type FieldPath, writtenPath } from './fieldPath.ts';
import { newJob } from './newJob.ts';
import type { Problem } from './problems.ts';
import { readDocument, readJob } from './read.ts';
import type { FieldFacts } from './schema/fields.ts';
import { jobSchema } from './schema/job.ts';
import { knownNames, type ListedField, listFields } from './schema/walk.ts';
import { fullJob, jobWithForbidden } from './testing/fullJob.ts';
import { jobOnAir } from './testing/jobOnAir.ts';
import { changed, placesOf, renamed, textWithRepeat } from './testing/places.ts';
import { parseText } from './text/parse.ts';

const documents = [fullJob, jobWithForbidden, jobOnAir];

/** The fields of the schema, each with a place of the full document where it stands. */
const fields = [
  ...new Map(listFields(jobSchema).map((field) => [`${field.path} ${field.facts?.says}`, field])).values(),
].map((field) => {
  const [found] = documents.flatMap((document) =>
    placesOf(document, field.path)
      .filter(fits(field))
      .map((path) => ({ document, path })),
  );
  return { ...field, found };
});

/** Fields of one name in several kinds of test are told apart by their kind. */
function fits(field: ListedField) {
  return (path: FieldPath) => {
    if (path[0] !== 'tests' || path.length < 3) return true;
    const kind = fullJob.tests[Number(path[1])]?.kind;
    const options = jobSchema.shape.tests.unwrap().element.options;
    const schema = options.find((option) => option.shape.kind.value === kind);
    return schema !== undefined && listFields(schema).some((each) => each.schema === field.schema);
  };
}

const quantityFields = fields.flatMap((field) => (field.facts?.quantity === undefined ? [] : [field]));

function problemsWith(document: unknown): readonly Problem[] {
  const reading = readDocument(structuredClone(document));
  return reading.ok ? [] : reading.problems;
}

/** At least one problem at or under the field, in one sentence that names it. */
function expectProblemAt(problems: readonly Problem[], path: FieldPath) {
  const written = writtenPath(path);
  const here = problems.filter(
    (problem) => problem.path === written || problem.path.startsWith(`${written}[`),
  );
  expect(here, `${written} among ${JSON.stringify(problems)}`).not.toEqual([]);
  for (const { says } of here) {
    expect(says).toMatch(/^.*\S\.$/);
    expect(says).not.toContain('\n');
    expect(says).toContain(written);
  }
}

/** Values that no quantity of this kind can have. */
function badValues({ quantity, example = '' }: FieldFacts): readonly (readonly [string, unknown])[] {
  if (quantity === undefined) return [];
  const { dimension, allowed } = quantity;
  const reading = readQuantity(example, dimension);
  const unit = reading.ok ? reading.unit : '';
  const zeroRefused = (allowed.above ?? -1) >= 0 || (allowed.least ?? 0) > 0;
  const bareRefused = dimension !== 'count' && dimension !== 'fraction';
  return [
    ['an unknown unit', '5 blorks'],
    ['a unit of another kind', dimension === 'mass' ? '5 °C' : '5 kg'],
    ['below all bounds', `-99999 ${unit}`],
    ['beyond all bounds', `1e30 ${unit}`],
    ['not a number', Number.NaN],
    ['not a number as text', `NaN ${unit}`],
    ['infinite', Number.POSITIVE_INFINITY],
    ['empty', ''],
    ['nothing', null],
    ['yes', true],
    ['a list', [example]],
    ['a group of fields', { size: example }],
    ['words', 'about right'],
    ['a doubt below 0', `${example.replace(/ [±×].*/, '')} ± -1`],
    ['a unit alone', unit === '' ? 'x' : unit],
    ...(zeroRefused && dimension !== 'temperature' ? [['zero', `0 ${unit}`] as const] : []),
    ...(bareRefused ? [['a number without unit', 5] as const] : []),
  ];
}

describe('every field of the schema', () => {
  it('has a place in the full document that the checks below start from', () => {
    const forgotten = fields.filter(({ found }) => found === undefined).map(({ path }) => path);
    expect(forgotten).toEqual([]);
    for (const document of documents) expect(problemsWith(document)).toEqual([]);
  });

  it('says what it is, where it holds a value', () => {
    const silent = fields
      .filter(({ schema, facts }) => facts === undefined && !(schema instanceof z.ZodObject))
      .map(({ path }) => path)
      .filter((path) => !/measurements|kind$|\[\]$/.test(path));
    expect(silent).toEqual([]);
  });
});

const quantityCases = quantityFields.flatMap((field) =>
  badValues(field.facts ?? { says: '' }).map(([name, value]) => ({ ...field, name, value })),
);

describe('a quantity', () => {
  it.each(quantityCases)('$path: $name ($value) is a problem of that field', ({ found, value }) => {
    if (found === undefined) throw new Error('no place');
    expectProblemAt(problemsWith(changed(found.document, found.path, value)), found.path);
  });
});

describe('a field', () => {
  const named = fields.filter(({ path, schema }) => !/[\]*]$/.test(path) && !(schema instanceof z.ZodRecord));

  it.each(named)('$path misspelt is unknown, with the right name as the nearest', ({ found }) => {
    if (found === undefined) throw new Error('no place');
    const name = String(found.path.at(-1));
    if (name === 'fettle') return;
    const misspelt = `${name}x`;
    const path = [...found.path.slice(0, -1), misspelt];
    const problems = problemsWith(renamed(found.document, found.path, misspelt));
    const unknown = problems.find((problem) => problem.path === writtenPath(path));
    expect(unknown?.code, JSON.stringify(problems)).toBe('unknown-field');
    expect(unknown?.says).toContain(`nearest: ${name}`);
    expect(unknown?.allowed?.split(', ')).toContain(name);
  });

  it.each(named)('$path written twice is refused', ({ found }) => {
    if (found === undefined) throw new Error('no place');
    const reading = readJob(textWithRepeat(found.document, found.path));
    expectProblemAt(reading.ok ? [] : reading.problems, found.path);
  });

  it.each(named.filter(({ required }) => required))('$path missing is said', ({ found }) => {
    if (found === undefined) throw new Error('no place');
    expectProblemAt(problemsWith(changed(found.document, found.path, undefined)), found.path);
  });

  it.each(named)('$path left empty is said', ({ found }) => {
    if (found === undefined) throw new Error('no place');
    expectProblemAt(problemsWith(changed(found.document, found.path, null)), found.path);
  });
});

const otherValues: readonly (readonly [string, unknown])[] = [
  ['a very long text', 'x'.repeat(20_000)],
  ['a number', 3.5],
  ['a list of lists', [[[]]]],
  ['a group of strange fields', { strange: 1 }],
];

describe('a field that holds no quantity', () => {
  const others = fields.filter(
    ({ path, facts, schema }) =>
      facts?.quantity === undefined && !path.includes('measurements') && !(schema instanceof z.ZodRecord),
  );
  const cases = others.flatMap((field) => otherValues.map(([name, value]) => ({ ...field, name, value })));

  it.each(cases)('$path: $name is a problem of that field', ({ found, value }) => {
    if (found === undefined) throw new Error('no place');
    const problems = problemsWith(changed(found.document, found.path, value));
    const written = writtenPath(found.path);
    expect(
      problems.some(({ path }) => path.startsWith(written)),
      JSON.stringify(problems),
    ).toBe(true);
  });
});

describe.each(families)('the measurements of a $name', (family) => {
  const started = newJob(family.id);
  const document = started.ok ? parseText(started.text).value : undefined;

  it.each(family.measurements)(
    '$key: wrong, absurd and misspelt values are problems of that field',
    (measurement) => {
      const path = ['filter', 'measurements', measurement.key];
      const unit = { length: 'mm', area: 'cm2', count: '', fraction: '%', 'yes-no': '' }[measurement.kind];
      for (const value of [
        '5 blorks',
        '5 °C',
        `-5e6 ${unit}`,
        `1e9 ${unit}`,
        Number.NaN,
        null,
        [],
        {},
        'many',
      ]) {
        expectProblemAt(problemsWith(changed(document, path, value)), path);
      }
      const misspelt = [...path.slice(0, -1), `${measurement.key}s`];
      const problems = problemsWith(changed(document, misspelt, '1'));
      expect(problems.find((each) => each.path === writtenPath(misspelt))?.says).toContain(
        `nearest: ${measurement.key}`,
      );
    },
  );

  it.each(family.measurements.filter(({ assumed }) => assumed === undefined))(
    '$key missing is said',
    ({ key }) => {
      const path = ['filter', 'measurements', key];
      expectProblemAt(problemsWith(changed(document, path, undefined)), path);
    },
  );
});

describe('what the tables rest on', () => {
  it('every quantity field has an upper bound and an example within its bounds', () => {
    for (const { path, facts } of quantityFields) {
      const quantity = facts?.quantity;
      expect(quantity?.allowed.most, path).toBeGreaterThan(0);
      expect(
        quantity && readQuantity(facts?.example ?? '', quantity.dimension, quantity.allowed).ok,
        path,
      ).toBe(true);
      expect(quantity && dimensionFacts[quantity.dimension].noun, path).toBeTruthy();
    }
  });

  it('lists the fields of the root', () => {
    expect(knownNames(jobSchema)).toEqual(Object.keys(fullJob));
  });
});
