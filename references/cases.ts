import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** How a value was seen. `computed-from-formula`: worked out apart from the program, so it tests code alone. */
export const waysOfSeeing = ['printed', 'secondary', 'memory', 'computed-from-formula'] as const;
export type Seen = (typeof waysOfSeeing)[number];

/** What the expected value is. `formula`: the published formula, worked out apart from the program. */
export const caseKinds = [
  'printed',
  'measured',
  'analytic',
  'independent-program',
  'common-practice',
  'formula',
] as const;
export type CaseKind = (typeof caseKinds)[number];

/** `source.json`. */
export interface Source {
  readonly citation: string;
  readonly edition?: string;
  readonly doi?: string;
  readonly seen: Seen;
  readonly note?: string;
}

/** One entry of `cases.json`. Quantities stay text as printed. */
export interface Case {
  readonly id: string;
  /** Key of the registry: a law's name, with `.part` where it has several results. */
  readonly law: string;
  /** Page, table or equation. */
  readonly where: string;
  readonly kind: CaseKind;
  readonly inputs: Readonly<Record<string, string>>;
  readonly expected: string;
  /** Where this value was seen in another way than its source. */
  readonly seen?: Seen;
  /** Wider than half a unit of the last printed digit, and why: `0.1 kPa`, or `3 %` of the print. */
  readonly tolerance?: { readonly size: string; readonly reason: string };
  /** Why we do not follow the print. The case has to go on missing its tolerance. */
  readonly disputed?: string;
}

export interface SourcedCase extends Case {
  /** Name of the source's folder. */
  readonly folder: string;
  readonly source: Source;
}

const here = dirname(fileURLToPath(import.meta.url));

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isText = (value: unknown): value is string => typeof value === 'string' && value.trim() !== '';

const isOneOf = <Choice extends string>(choices: readonly Choice[], value: unknown): value is Choice =>
  choices.some((choice) => choice === value);

const texts = (value: unknown): value is Record<string, string> =>
  isRecord(value) && Object.values(value).every(isText);

const strayKeys = (value: Record<string, unknown>, known: readonly string[]): string[] =>
  Object.keys(value).filter((key) => !known.includes(key));

const sourceKeys = ['citation', 'edition', 'doi', 'seen', 'note'];
const caseKeys = ['id', 'law', 'where', 'kind', 'inputs', 'expected', 'seen', 'tolerance', 'disputed'];

const isSource = (value: unknown): value is Source & Record<string, unknown> =>
  isRecord(value) &&
  isText(value.citation) &&
  isOneOf(waysOfSeeing, value.seen) &&
  strayKeys(value, sourceKeys).length === 0;

const isTolerance = (value: unknown): boolean =>
  value === undefined || (texts(value) && isText(value.size) && isText(value.reason));

const isCase = (value: unknown): value is Case & Record<string, unknown> =>
  isRecord(value) &&
  [value.id, value.law, value.where, value.expected].every(isText) &&
  isOneOf(caseKinds, value.kind) &&
  texts(value.inputs) &&
  (value.seen === undefined || isOneOf(waysOfSeeing, value.seen)) &&
  isTolerance(value.tolerance) &&
  (value.disputed === undefined || isText(value.disputed)) &&
  strayKeys(value, caseKeys).length === 0;

/**
 * Checks the contents of one folder.
 * @throws with the folder and the entry where something is missing, misspelt or without its reason
 */
export const readFolder = (folder: string, source: unknown, cases: unknown): SourcedCase[] => {
  if (!isSource(source)) throw new Error(`${folder}/source.json is not as described in cases.ts`);
  if (!Array.isArray(cases)) throw new Error(`${folder}/cases.json is not a list`);
  return cases.map((each: unknown, place) => {
    if (!isCase(each))
      throw new Error(`${folder}/cases.json: entry ${place} is not as described in cases.ts`);
    return { ...each, folder, source };
  });
};

const readJson = (path: string): unknown => JSON.parse(readFileSync(path, 'utf8'));

/** Names of all source folders, sorted. */
export const sourceFolders = (): string[] =>
  readdirSync(here, { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && existsSync(join(here, entry.name, 'source.json')))
    .map((entry) => entry.name)
    .sort();

/** All cases of all sources. */
export const loadCases = (): SourcedCase[] =>
  sourceFolders().flatMap((folder) =>
    readFolder(
      folder,
      readJson(join(here, folder, 'source.json')),
      readJson(join(here, folder, 'cases.json')),
    ),
  );
