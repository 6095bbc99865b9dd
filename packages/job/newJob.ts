import { families, familyById } from '@fettle/engine/families/families.ts';
import type { Family, Measurement } from '@fettle/engine/families/layout.ts';
import { nearestWord } from '@fettle/engine/quantities/spelling.ts';
import { type Problem, problem } from './problems.ts';
import { fieldFacts, inner } from './schema/fields.ts';
import { intakeSchema, outletSchema, pumpSchema } from './schema/filter.ts';
import { shown } from './schema/issues.ts';
import { currentEdition } from './schema/job.ts';
import { tankSchema } from './schema/tank.ts';
import { listFields } from './schema/walk.ts';

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
  const facts = { found: shown(familyId), what: 'family of filter', nearest: nearestWord(familyId, ids) };
  return {
    ok: false,
    problem: problem('not-among', ['filter', 'family'], { facts, allowed: ids.join(', ') }),
  };
}

function textFor(family: Family): string {
  return [...headLines, ...tankLines(), ...filterLines(family), ...packingLines(family), ...testLines].join(
    '\n',
  );
}

const headLines = [
  '# A job of Fettle. Every figure here is an example: put your own in its place.',
  '# Write quantities with their units and, where you know it, their doubt: 900 L/h ± 5 %.',
  '# Lines behind a # may be left out: a usual value is then assumed and listed as assumed.',
  `fettle: ${currentEdition}`,
  '',
  'job:',
  '  title: New job',
  '  # received: 2026-11-02',
  '  # promised: 2026-11-20',
  '',
];

const testLines = [
  '# tests:',
  '#   - { kind: timed-volume, state: as-found, volume: 5 L ± 1 %, times: [31.2 s, 30.8 s, 31.5 s] }',
  '#   - { kind: power, state: as-found, power: 13.2 ± 0.5 W }',
  '',
];

function tankLines(): readonly string[] {
  return [
    'tank:',
    ...fieldLines(tankSchema, 2),
    '  # waterChange: { share: 25 %, every: 7 d }',
    '  # fish:',
    '  #   - { kind: small-tetra, count: 10, length: 3 cm }',
    '',
  ];
}

function filterLines(family: Family): readonly string[] {
  return [
    'filter:',
    `  family: ${family.id} # ${family.says}`,
    '  # name: what you call it',
    '  measurements:',
    ...family.measurements.flatMap(measurementLines),
    '  pump:',
    ...fieldLines(pumpSchema, 4, { ratedFlow: family.hoses.outlet ? '900 L/h' : '400 L/h' }),
    ...hoseLines(family),
    '  # price: 85 GBP',
    "  # claims: # the maker's own words",
    '  #   - "Pump output 900 L/h"',
    '',
  ];
}

function packingLines(family: Family): readonly string[] {
  const measured = Object.fromEntries(family.measurements.map((each) => [each.key, exampleOf(each)]));
  const { chambers } = family.layOut(measured);
  return [
    "# What lies in each chamber, from the top down (in slots from the pump's side), as",
    '# - { medium: foam-20ppi, depth: 40 mm } with depth, volume, mass or fill.',
    'packing:',
    ...chambers.map(({ id, label }) => `  ${id}: [] # ${label}`),
    '',
    `# What plans may change: ${family.alterations.join(', ')}.`,
    ...family.forbidden.map((rule) => `# ${rule}`),
    'alterations: []',
    '',
  ];
}

/** The leaves of one group of fields: required and preset ones as they are, the others behind a comment sign. */
function fieldLines(
  schema: Parameters<typeof listFields>[0],
  indent: number,
  preset: Readonly<Record<string, string>> = {},
): readonly string[] {
  return listFields(schema)
    .filter(({ path }) => /^[A-Za-z]+$/.test(path))
    .flatMap(({ path, required, schema: field }) => {
      const facts = fieldFacts.get(inner(field));
      if (facts?.example === undefined) return [];
      const written = preset[path] ?? facts.example;
      const sign = required || path in preset ? '' : '# ';
      return [`${' '.repeat(indent)}${sign}${path}: ${written} # ${facts.says}`];
    });
}

function hoseLines(family: Family): readonly string[] {
  const { intake, outlet } = family.hoses;
  if (!intake && !outlet) return [];
  return [
    '  hoses:',
    ...(intake
      ? [
          '    intake:',
          `      length: ${outlet ? '1.5 m' : '20 cm'}`,
          ...fieldLines(intakeSchema, 6).slice(1),
        ]
      : []),
    ...(outlet ? ['    outlet:', '      length: 1.5 m', ...fieldLines(outletSchema, 6).slice(1)] : []),
  ];
}

function measurementLines(measurement: Measurement): readonly string[] {
  const { key, label, how, assumed } = measurement;
  const sign = assumed === undefined ? '' : '# ';
  return [`    # ${label}. ${how}`, `    ${sign}${key}: ${written(measurement, exampleOf(measurement))}`];
}

/** What is assumed, else the geometric middle of what is allowed, rounded to two digits. */
function exampleOf({ kind, assumed, least, most }: Measurement): number {
  if (assumed !== undefined) return assumed.value;
  const middle = Math.sqrt(least * most);
  return kind === 'count' ? Math.round(middle) : Number(middle.toPrecision(2));
}

function written({ kind }: Measurement, value: number): string {
  switch (kind) {
    case 'length':
      return `${Number((value * 1000).toPrecision(4))} mm`;
    case 'area':
      return `${Number((value * 10_000).toPrecision(4))} cm2`;
    case 'fraction':
      return `${Number((value * 100).toPrecision(4))} %`;
    case 'yes-no':
      return value === 0 ? 'no' : 'yes';
    case 'count':
      return String(value);
  }
}
