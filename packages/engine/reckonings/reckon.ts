import { fittings } from '../catalogue/fittings.ts';
import { media } from '../catalogue/media.ts';
import { type JsonFigure, toJsonFigure } from '../quantities/jsonUnits.ts';
import { nearestWord } from '../quantities/spelling.ts';
import type { Answer, FreeFigure, Reckoning, ReckoningProblem, ReckoningProblems } from './reckoning.ts';
import { reckonings } from './reckonings.ts';

/** One key with its text. */
export interface Pair {
  readonly key: string;
  readonly text: string;
}

/** A result as it leaves: a figure in its fixed unit, or a word, or a yes or no. */
export type Result = JsonFigure | FreeFigure | string | boolean;

/** A reckoning worked out. */
export interface Reckoned {
  readonly ok: true;
  readonly reckoning: Reckoning;
  /** In SI, for printing; keys without an answer are left out. */
  readonly answers: Readonly<Record<string, Exclude<Answer, undefined>>>;
  readonly results: Readonly<Record<string, Result>>;
  /** Whether every input was inside of what the law holds for. */
  readonly within: boolean;
  readonly warnings: readonly string[];
  readonly source: string;
}

const refusal = (problem: ReckoningProblem): ReckoningProblems => ({ ok: false, problems: [problem] });

function unknownName(name: string): ReckoningProblems {
  const names = Object.keys(reckonings);
  const near = nearestWord(name, names);
  const shown = name.length > 40 ? `${name.slice(0, 37)}…` : name;
  return refusal({
    code: 'unknown-reckoning',
    path: '',
    says: `There is no reckoning "${shown}"${near === undefined ? '' : `, perhaps ${near}`}.`,
    allowed: names.join(', '),
  });
}

/** Keys that the reckoning does not have, each with the key that may have been meant. */
function unknownKeys({ name, inputs }: Reckoning, pairs: readonly Pair[]) {
  const known = Object.keys(inputs);
  const unknown = new Set(pairs.map(({ key }) => key).filter((key) => !Object.hasOwn(inputs, key)));
  return [...unknown].map((key) => {
    const near = nearestWord(key, known);
    const shown = key.length > 40 ? `${key.slice(0, 37)}…` : key;
    const problem: ReckoningProblem = {
      code: 'unknown-key',
      path: key,
      says: `${name} has no key "${shown}"${near === undefined ? '' : `, perhaps ${near}`}.`,
      allowed: known.join(', '),
    };
    return { near, problem };
  });
}

function byKey(pairs: readonly Pair[]): Map<string, string[]> {
  const texts = new Map<string, string[]>();
  for (const { key, text } of pairs) texts.set(key, [...(texts.get(key) ?? []), text]);
  return texts;
}

/** No answer of ours can be below 0 or endless; where one is, the inputs lead out of the law altogether. */
const possible = (answer: Answer, result: Result | undefined): boolean => {
  if (typeof answer === 'number' && !(answer >= 0)) return false;
  return typeof result !== 'object' || Number.isFinite(result.value);
};

function present(answers: Readonly<Record<string, Answer>>): Record<string, Exclude<Answer, undefined>> {
  const kept: Record<string, Exclude<Answer, undefined>> = {};
  for (const [key, answer] of Object.entries(answers)) if (answer !== undefined) kept[key] = answer;
  return kept;
}

function resultOf(answer: Exclude<Answer, undefined>, key: string, { results }: Reckoning): Result {
  if (typeof answer !== 'number') return answer;
  const unit = results[key]?.unit;
  if (unit === undefined) throw new Error(`The result ${key} is a number without a unit`);
  return toJsonFigure(answer, unit);
}

/** Keys and texts of an example: of what must be given, or of everything where nothing must. */
export function exampleOf({ inputs }: Reckoning): Pair[] {
  const entries = Object.entries(inputs);
  const must = entries.filter(([, { required }]) => required);
  return (must.length > 0 ? must : entries).flatMap(([key, { example }]) =>
    example.map((text) => ({ key, text })),
  );
}

/** A pair as it is typed on a command line. */
export const typed = ({ key, text }: Pair): string =>
  /[^\w.,%/+-]/.test(text) ? `${key}="${text.replaceAll('"', '\\"')}"` : `${key}=${text}`;

/** The line of the command with its keys. */
export const commandLine = (name: string, given: readonly Pair[]): string =>
  ['fettle reckon', name, ...given.map(typed)].join(' ');

/**
 * Works a reckoning out from keys and texts.
 *
 * @param name name of the reckoning
 * @param pairs keys with their texts, in any order; a key that repeats stands once for each text
 * @returns results in their fixed units, or every problem found
 */
export function reckon(name: string, pairs: readonly Pair[]): Reckoned | ReckoningProblems {
  const found = Object.hasOwn(reckonings, name) ? reckonings[name] : undefined;
  if (!found) return unknownName(name);
  const unknown = unknownKeys(found, pairs);
  const outcome = found.work(byKey(pairs));
  if (!outcome.ok || unknown.length > 0) {
    // A key that was misspelt is not missing as well.
    const meant = new Set(unknown.map(({ near }) => near));
    const others = outcome.ok ? [] : outcome.problems;
    const kept = others.filter(({ code, path }) => !(code === 'missing-key' && meant.has(path)));
    return { ok: false, problems: [...unknown.map(({ problem }) => problem), ...kept] };
  }
  const answers = present(outcome.answers);
  const outside = outcome.outside ?? [];
  const results: Record<string, Result> = {};
  for (const [key, answer] of Object.entries(answers)) results[key] = resultOf(answer, key, found);
  if (!Object.entries(answers).every(([key, answer]) => possible(answer, results[key])))
    return refusal({
      code: 'no-answer',
      path: '',
      says: ['These inputs lead to no possible answer.', ...outside].join(' '),
    });
  return {
    ok: true,
    reckoning: found,
    answers,
    results,
    within: outside.length === 0,
    warnings: [...outside, ...(outcome.notes ?? [])],
    source: outcome.source ?? found.source,
  };
}

/** Ids of what the catalogue has for reckonings that take an entry of it. */
export const shelves = {
  fittings: Object.values(fittings).map(({ id, name }) => ({ id, name })),
  media: Object.values(media).map(({ id, name }) => ({ id, name })),
} as const;
