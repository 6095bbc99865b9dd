import { families } from '@fettle/engine/families/families.ts';
import type { Family } from '@fettle/engine/families/layout.ts';
import { noteWordings } from '../notes.ts';
import { problemWordings } from '../problems.ts';
import { notes, prose } from './prose.ts';
import { assumptionRows, benchTestTables, codeList, fieldRows, measurementRow, tableHead } from './tables.ts';

/** The text of `docs/job-file.md`, made from the schema, the families and the defaults. */
export function jobFileDoc(): string {
  return [
    '<!-- Made by scripts/job-schema.ts: change the schema, not this file. -->',
    '',
    prose,
    '## Fields',
    '',
    '`[]` stands for each entry of a list, `*` for a short name. Fields marked ● cannot be left out of their group.',
    '',
    ...tableHead,
    ...fieldRows(),
    '',
    ...notes,
    '',
    '## Bench tests',
    '',
    'Each entry of `tests` has a `kind` and the fields of that kind.',
    '',
    ...benchTestTables(),
    '## Measurements by family',
    '',
    ...families.flatMap(familySection),
    ...endings(),
  ].join('\n');
}

function familySection(family: Family): readonly string[] {
  return [
    `### ${family.name} (\`${family.id}\`)`,
    '',
    family.says,
    '',
    '| measurement | meaning | how to take it | where left out |',
    '| --- | --- | --- | --- |',
    ...family.measurements.map(measurementRow),
    '',
    `Alterations: ${family.alterations.map((id) => `\`${id}\``).join(', ')}.`,
    '',
  ];
}

function endings(): readonly string[] {
  return [
    '## What is assumed',
    '',
    'For a canister of 900 L/h on a tank of 100 L of which only the necessary is stated:',
    '',
    '| field | assumed | because |',
    '| --- | --- | --- |',
    ...assumptionRows(),
    '',
    '## Problems and notes',
    '',
    'Each problem has a code that stays, the path of its field, its line, one sentence, and what is allowed. The codes:',
    '',
    `${codeList(problemWordings)}.`,
    '',
    'Notes come with a job that reads well. The codes:',
    '',
    `${codeList(noteWordings)}.`,
    '',
  ];
}
