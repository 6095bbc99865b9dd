/** Writes `docs/reckonings.md` from the reckonings: `npx tsx scripts/reckoning-docs.ts`; `--check` only compares. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { commandLine, exampleOf, shelves, typed } from '@fettle/engine/reckonings/reckon.ts';
import type { Example, Input, Reckoning } from '@fettle/engine/reckonings/reckoning.ts';
import { reckonings } from '@fettle/engine/reckonings/reckonings.ts';
import { seenWords } from '@fettle/engine/reckonings/seenWords.ts';
import { isMain, projectRoot } from './sources.ts';

const row = (cells: readonly string[]): string =>
  `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;

const table = (heads: readonly string[], rows: readonly (readonly string[])[]): string =>
  [row(heads), row(heads.map(() => '---')), ...rows.map(row)].join('\n');

const code = (text: string): string => `\`${text}\``;

const whenLeftOut = ({ required, otherwise }: Input<unknown>): string =>
  required ? 'must be given' : (otherwise ?? 'may be left out');

const inputRows = ({ inputs }: Reckoning) =>
  Object.entries(inputs).map(([key, input]) => [code(key), input.label, input.takes, whenLeftOut(input)]);

const resultRows = ({ results }: Reckoning) =>
  Object.entries(results).map(([key, { label, unit }]) => [
    code(key),
    label,
    unit === undefined ? 'as it comes' : code(unit),
  ]);

const texts = (inputs: Example['inputs']): string =>
  Object.entries(inputs)
    .flatMap(([key, given]) =>
      (typeof given === 'string' ? [given] : given).map((text) => typed({ key, text })),
    )
    .join(' ');

const exampleRows = ({ examples }: Reckoning) =>
  examples.map(({ inputs, expected, seen, source, wider }) => [
    code(texts(inputs)),
    Object.entries(expected)
      .map(([key, printed]) => `${key} ${printed}`)
      .join(', '),
    `${source} (${seenWords[seen]})${wider === undefined ? '' : `. Allowed ± ${Number((100 * wider.share).toPrecision(3))} %: ${wider.because}`}`,
  ]);

const section = (reckoning: Reckoning): string =>
  [
    `## ${reckoning.name}`,
    reckoning.says,
    code(reckoning.formula),
    table(['key', 'what', 'takes', 'left out'], inputRows(reckoning)),
    table(['result', 'what', 'unit in JSON'], resultRows(reckoning)),
    `\`\`\`sh\n${commandLine(reckoning.name, exampleOf(reckoning))}\n\`\`\``,
    `Source: ${reckoning.source}.`,
    table(['inputs', 'expected', 'from'], exampleRows(reckoning)),
  ].join('\n\n');

const shelf = (entries: readonly { readonly id: string; readonly name: string }[]): string =>
  table(
    ['id', 'name'],
    entries.map(({ id, name }) => [code(id), name]),
  );

const opening = `# Reckonings

A reckoning is one formula offered on its own, with its source and with published examples that are checked on every run of the tests. Without a name \`fettle reckon\` lists them all.

Inputs are written \`key=value\`, quantities as in [quantities](quantities.md). A plain number with a point is a decimal number. Ammonia, nitrite and nitrate are counted as N unless the text or \`basis=\` says otherwise; nitrite in \`nitrite-chloride\` is counted as NO2.

With \`--json\` the answer is \`{ name, results, within, warnings, source }\`, figures as \`{ value, unit }\` in units that never change. \`within\` is false where an input is outside of what the law was made for: the value is still given, and \`warnings\` say what is outside. What is impossible is not computed: the answer is \`{ problems }\` and the exit code 2.`;

const page = (): string =>
  `${[
    opening,
    ...Object.values(reckonings).map(section),
    '## Fittings of the catalogue',
    shelf(shelves.fittings),
    '## Media of the catalogue',
    shelf(shelves.media),
  ].join('\n\n')}\n`;

if (isMain(import.meta.url)) {
  const path = resolve(projectRoot, 'docs/reckonings.md');
  const fresh = page();
  if (!process.argv.includes('--check')) writeFileSync(path, fresh);
  else if (!existsSync(path) || readFileSync(path, 'utf8') !== fresh) {
    console.error('docs/reckonings.md is not what the reckonings say: run npx tsx scripts/reckoning-docs.ts');
    process.exitCode = 1;
  }
}
