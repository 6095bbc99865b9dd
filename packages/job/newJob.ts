import { families, familyById, rulesOf } from '@fettle/engine/families/families.ts';
import type { Family, Measurement } from '@fettle/engine/families/layout.ts';
import type * as z from 'zod';
import { measurementExample, measurementExampleValue } from './measurementExample.ts';
import { adviceOn } from './names.ts';
import { type Problem, problem } from './problems.ts';
import { exampleOf as exampleOfSchema } from './schema/examples.ts';
import { fieldFacts, inner } from './schema/fields.ts';
import { intakeSchema, outletSchema, pumpSchema } from './schema/filter.ts';
import { shown } from './schema/issues.ts';
import { currentEdition } from './schema/job.ts';
import { consentSchema, ownerSchema } from './schema/owner.ts';
import { approvalSchema, quoteSchema } from './schema/quote.ts';
import { tankSchema } from './schema/tank.ts';
import { listFields } from './schema/walk.ts';
import { jobStages } from './stages.ts';
import { type StartValues, startPacking, startValuesOf } from './startValues.ts';

export type NewJob =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly problem: Problem };

/**
 * A job file to start from: what is needed for a family of filter, with examples in the place of figures, and
 * every other field behind a comment sign. It reads without a problem as it stands.
 */
export function newJob(familyId: string): NewJob {
  const family = familyById(familyId);
  if (family !== undefined) return { ok: true, text: textFor(family) };
  const ids = families.map(({ id }) => id);
  const { nearest, allowed } = adviceOn(familyId, ids);
  const facts = { found: shown(familyId), what: 'a known family of filter', nearest };
  return { ok: false, problem: problem('not-among', ['filter', 'family'], { facts, allowed }) };
}

function textFor(family: Family): string {
  const values = startValuesOf(family);
  return [
    ...headLines,
    ...tankLines(values),
    ...filterLines(family, values),
    ...packingLines(family),
    ...testLines(values),
    ...peopleLines(),
  ].join('\n');
}

const headLines = [
  '# A job of Fettle. Every figure here is an example: put your own in its place.',
  '# Write quantities with their units and, where you know it, their doubt: 900 L/h ± 5 %.',
  '# Lines behind a # may be left out: a usual value is then assumed and listed as assumed.',
  '# Short names of media, fish and fittings: docs/catalogue.md. All fields: docs/job-file.md.',
  `fettle: ${currentEdition}`,
  '',
  'job:',
  '  title: New job',
  '  # received: 2026-11-02',
  '  # promised: 2026-11-20',
  `  # stage: ${jobStages[0]} # ${jobStages.join(', ')}`,
  '  # tags: [canister, hall tank]',
  '',
];

function testLines({ tests }: StartValues): readonly string[] {
  return ['# tests:', ...tests.map((test) => `#   - ${test}`), ''];
}

/** Parts that concern people, every line behind a comment sign. */
function peopleLines(): readonly string[] {
  return [
    '# The owner is personal: without consent nothing of it is published.',
    ...partLines('owner', ownerSchema),
    ...partLines('consent', consentSchema),
    '# What the work is offered for. Labour without a price costs its time at the rate of money.labour.',
    ...partLines('quote', quoteSchema),
    ...partLines('approval', approvalSchema),
    '',
  ];
}

function partLines(name: string, part: z.ZodObject): readonly string[] {
  return [
    `# ${name}:`,
    ...Object.entries(part.shape).flatMap(([field, schema]) => {
      const example = exampleOfSchema(schema);
      if (example === undefined || field === 'withdrawn') return [];
      const says = fieldFacts.get(inner(schema))?.says;
      if (example.startsWith('- ')) return [`#   ${field}: # ${says}`, `#     ${example}`];
      return [`#   ${field}: ${example} # ${says}`];
    }),
  ];
}

function tankLines({ tankVolume, feed }: StartValues): readonly string[] {
  return [
    'tank:',
    ...fieldLines(tankSchema, { indent: 2, values: { volume: tankVolume, feed } }),
    `  # waterChange: ${exampleOfSchema(tankSchema.shape.waterChange)}`,
    '  # fish: # kinds: docs/catalogue.md',
    `  #   ${exampleOfSchema(tankSchema.shape.fish)}`,
    '',
  ];
}

function filterLines(family: Family, values: StartValues): readonly string[] {
  const { ratedFlow, shutoffHead, airFlow, power, price, claims } = values;
  return [
    'filter:',
    `  family: ${family.id} # ${family.says}`,
    '  # name: what you call it',
    '  measurements:',
    ...family.measurements.flatMap(measurementLines),
    '  pump:',
    ...fieldLines(pumpSchema, {
      indent: 4,
      values: { ratedFlow, shutoffHead, power, airFlow },
      ...(family.drives?.[0] === 'air-lift'
        ? { stated: ['airFlow'], without: ['ratedFlow', 'shutoffHead', 'speed'] }
        : { stated: ['ratedFlow'], without: ['airFlow'] }),
    }),
    ...hoseLines(family, values),
    `  # price: ${price}`,
    "  # claims: # the maker's own words",
    ...claims.map((claim) => `  #   - "${claim}"`),
    '',
  ];
}

function packingLines(family: Family): readonly string[] {
  const measured = Object.fromEntries(
    family.measurements.map((each) => [each.key, measurementExampleValue(each)]),
  );
  const layout = family.layOut(measured);
  const media = startPacking(layout);
  return [
    "# What lies in each chamber, from the top down (in slots from the pump's side), each bed with its",
    '# depth, volume, mass or fill. These beds are an example: put what you found in their place, or [].',
    'packing:',
    ...layout.chambers.map(({ id, label }) => {
      const medium = media.get(id);
      const beds = medium === undefined ? '[]' : `[{ medium: ${medium}, fill: 100 % }]`;
      return `  ${id}: ${beds} # ${label}`;
    }),
    '',
    `# What plans may change: ${family.alterations.join(', ')}.`,
    ...rulesOf(family).map((rule) => `# ${rule}`),
    'alterations: []',
    '',
    '# What plans may buy; a short common shelf is assumed where this is left out.',
    '# shelf: [foam-20ppi, ceramic-rings-15mm]',
    '',
  ];
}

interface FieldLines {
  readonly indent: number;
  /** Written in place of the schema's own examples. */
  readonly values: Readonly<Record<string, string>>;
  /** Fields that may be left out and are stated all the same. */
  readonly stated?: readonly string[];
  /** Fields that are not shown. */
  readonly without?: readonly string[];
}

/** The leaves of one group of fields: needed and stated ones as they are, the others behind a comment sign. */
function fieldLines(
  schema: Parameters<typeof listFields>[0],
  { indent, values, stated = [], without = [] }: FieldLines,
): readonly string[] {
  return listFields(schema)
    .filter(({ path }) => /^[A-Za-z]+$/.test(path) && !without.includes(path))
    .flatMap(({ path, required, schema: field }) => {
      const facts = fieldFacts.get(inner(field));
      if (facts?.example === undefined) return [];
      const written = values[path] ?? facts.example;
      const sign = required || stated.includes(path) ? '' : '# ';
      return [`${' '.repeat(indent)}${sign}${path}: ${written} # ${facts.says}`];
    });
}

function hoseLines(family: Family, { intakeLength, bore, barbBore }: StartValues): readonly string[] {
  const { intake, outlet } = family.hoses;
  if (!intake && !outlet) return [];
  // An intake tube has no barbs.
  const without = ['length', ...(outlet ? [] : ['barbBore'])];
  const lines = { indent: 6, values: { bore, barbBore }, without };
  return [
    '  hoses:',
    ...(intake
      ? [
          '    intake:',
          `      length: ${intakeLength}`,
          ...fieldLines(intakeSchema, lines),
          '      # fittings: [strainer, elbow-90] # in the order of the run',
        ]
      : []),
    ...(outlet
      ? [
          '    outlet:',
          '      length: 1.5 m',
          ...fieldLines(outletSchema, lines),
          '      # fittings: [elbow-90, spray-bar]',
        ]
      : []),
  ];
}

function measurementLines(measurement: Measurement): readonly string[] {
  const { key, label, how, assumed } = measurement;
  const sign = assumed === undefined ? '' : '# ';
  return [`    # ${label}. ${how}`, `    ${sign}${key}: ${measurementExample(measurement)}`];
}
