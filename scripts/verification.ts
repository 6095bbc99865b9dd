import { readFileSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { loadCases, type SourcedCase } from '../references/cases.ts';
import { type Comparison, compare } from '../references/compare.ts';
import { laws } from '../references/laws.ts';
import { isMain, projectRoot } from './sources.ts';

/** One case with what came of it. */
export interface Row {
  readonly each: SourcedCase;
  readonly comparison: Comparison;
}

const PAGE = 'docs/verification.md';
/** Below this share of the print a deviation is rounding in the machine. */
const ROUNDING = 1e-9;

const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ');
const line = (...cells: readonly string[]): string => `| ${cells.map(cell).join(' | ')} |`;

const oursText = ({ ours, unit }: Comparison): string => `${Number(ours.toPrecision(7))} ${unit}`.trim();

const deviationText = ({ ours, printed }: Comparison): string => {
  if (printed === 0) return ours.toPrecision(2);
  const share = ours / printed - 1;
  if (Math.abs(share) < ROUNDING) return '0';
  return `${share > 0 ? '+' : '−'}${Number((Math.abs(share) * 100).toPrecision(2))} %`;
};

const inputsText = (each: SourcedCase): string =>
  Object.entries(each.inputs)
    .map(([name, value]) => `${name} ${value}`)
    .join(', ');

const seenOf = (each: SourcedCase): string => (each.seen ?? each.source.seen).replaceAll('-', ' ');

const byLaw = (a: Row, b: Row): number =>
  a.each.law.localeCompare(b.each.law, 'en') || a.each.folder.localeCompare(b.each.folder, 'en');

const resultLine = ({ each, comparison }: Row): string =>
  line(
    each.law,
    `[${each.folder}](../references/${each.folder}/source.json), ${each.where}`,
    `${each.kind.replaceAll('-', ' ')}, ${seenOf(each)}`,
    inputsText(each),
    each.expected,
    oursText(comparison),
    deviationText(comparison),
  );

const disputedLine = ({ each, comparison }: Row): string =>
  line(each.law, `${each.folder}, ${each.where}`, each.expected, oursText(comparison), each.disputed ?? '');

const widerLine = ({ each }: Row): string =>
  line(each.law, `${each.folder}/${each.id}`, each.tolerance?.size ?? '', each.tolerance?.reason ?? '');

const table = (heads: readonly string[], lines: readonly string[]): string[] => [
  line(...heads),
  line(...heads.map(() => '---')),
  ...lines,
];

const sourceLines = (rows: readonly Row[]): string[] => {
  const sources = new Map(rows.map(({ each }) => [each.folder, each.source]));
  return [...sources]
    .sort(([a], [b]) => a.localeCompare(b, 'en'))
    .map(([folder, { citation, edition, doi, note }]) => {
      const said = [edition, doi && `doi ${doi}`, note].filter(Boolean).join('; ');
      return `- **${folder}**: ${citation}${said && `. ${said}`}`;
    });
};

/** The page on what was checked against what. */
export const verificationPage = (rows: readonly Row[]): string => {
  const sorted = [...rows].sort(byLaw);
  const settled = sorted.filter(({ each }) => each.disputed === undefined);
  const disputed = sorted.filter(({ each }) => each.disputed !== undefined);
  const wider = settled.filter(({ each }) => each.tolerance !== undefined);
  return [
    '# Verification',
    '',
    `<!-- Written by \`npx tsx scripts/verification.ts\`; \`--check\` says whether it is up to date. -->`,
    '',
    `${rows.length} values from outside the program, from ${new Set(rows.map(({ each }) => each.folder)).size} sources. A value counts as met when ours lies within half a unit of its last printed digit; where more is allowed, the reason stands below. "Formula" and "computed from formula" mean that the published formula was worked out apart from the program: that tests the code and not the model.`,
    '',
    '## Disputed prints',
    '',
    ...table(['Law', 'Source', 'Printed', 'Ours', 'Why we differ'], disputed.map(disputedLine)),
    '',
    '## Where more than half a digit is allowed',
    '',
    ...table(['Law', 'Case', 'Allowed', 'Reason'], wider.map(widerLine)),
    '',
    '## All values',
    '',
    ...table(
      ['Law', 'Source', 'Kind, how seen', 'Inputs', 'Printed', 'Ours', 'Deviation'],
      sorted.map(resultLine),
    ),
    '',
    '## Sources',
    '',
    ...sourceLines(rows),
    '',
  ].join('\n');
};

const workedOut = (): Row[] => loadCases().map((each) => ({ each, comparison: compare(each, laws) }));

const main = (check: boolean): number => {
  const path = resolve(projectRoot, PAGE);
  const page = verificationPage(workedOut());
  if (!check) {
    writeFileSync(path, page);
    return 0;
  }
  if (readFileSync(path, 'utf8') === page) return 0;
  console.error(`${PAGE} is stale. Write it anew: npx tsx scripts/verification.ts`);
  return 1;
};

if (isMain(import.meta.url)) process.exitCode = main(process.argv.includes('--check'));
