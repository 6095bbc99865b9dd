import type { Dimension } from '../quantities/dimensions.ts';
import type { JsonUnit } from '../quantities/jsonUnits.ts';

/** One thing wrong with what was given to a reckoning. */
export interface ReckoningProblem {
  readonly code: string;
  /** The key that is wrong; empty where it is not one key. */
  readonly path: string;
  /** One sentence. */
  readonly says: string;
  readonly allowed?: string;
}

export interface ReckoningProblems {
  readonly ok: false;
  readonly problems: readonly ReckoningProblem[];
}

/** What an input makes of the texts given for its key: a value, or one problem. */
export type Reading<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly code: string; readonly says: string; readonly allowed: string };

/** An entry of the catalogue, by its id and as people call it. */
export interface CatalogueEntry {
  readonly id: string;
  readonly name: string;
}

/** One input: what it is, how it is written, and how it is read. */
export interface Input<Value> {
  readonly label: string;
  /** What may be written, with its bounds, in words. */
  readonly takes: string;
  /** How it may be written; more than one where the key may be given again. */
  readonly example: readonly string[];
  /** What holds where the key is left out, as it would be written. */
  readonly otherwise?: string;
  readonly required: boolean;
  /** True where the key may be given again and again. */
  readonly repeats: boolean;
  /** The whole list of words where only those are taken. */
  readonly words?: readonly string[];
  /** The whole list of what the catalogue has, where an id of it is taken. */
  readonly entries?: readonly CatalogueEntry[];
  /** What it measures, where it is a quantity. */
  readonly dimension?: Dimension;
  /** Reads the texts given for the key; none where it was left out. */
  read(texts: readonly string[]): Reading<Value>;
}

export type Inputs = Readonly<Record<string, Input<unknown>>>;

export type ValuesOf<I extends Inputs> = {
  readonly [Key in keyof I]: I[Key] extends Input<infer Value> ? Value : never;
};

/**
 * One result. With `unit` its SI value leaves in that JSON unit and is shown in the units of `dimension`;
 * without it is what it is: a word, a yes or no, or a figure that brings its own unit.
 */
export interface ResultFacts {
  readonly label: string;
  readonly unit?: JsonUnit;
  readonly dimension?: Dimension;
  /** Significant digits on the screen; 4 when left out. */
  readonly digits?: number;
}

/** A figure in a unit that depends on the inputs. */
export interface FreeFigure {
  readonly value: number;
  readonly unit: string;
}

/** An SI number, a figure with its own unit, or an answer that is no number; `undefined` where there is none. */
export type Answer = number | FreeFigure | string | boolean | undefined;

/** What the formula gives. */
export interface Computed {
  readonly answers: Readonly<Record<string, Answer>>;
  /** A sentence for each input that is outside of what the law holds for. */
  readonly outside?: readonly string[];
  /** Other sentences that the reader needs. */
  readonly notes?: readonly string[];
  /** The source where it depends on the inputs. */
  readonly source?: string;
}

export type Outcome = (Computed & { readonly ok: true }) | ReckoningProblems;

/** How an example was seen. `formula`: the published formula worked out apart from the program. */
export type Seen = 'printed' | 'secondary' | 'memory' | 'formula' | 'common-practice';

/** A published example: inputs as written, results as printed. */
export interface Example {
  readonly source: string;
  readonly seen: Seen;
  readonly inputs: Readonly<Record<string, string | readonly string[]>>;
  /** Results as printed: `998.207 kg/m3`, or the word itself. */
  readonly expected: Readonly<Record<string, string>>;
  /** Wider than half a unit of the last printed digit: by how much of the printed value, and why. */
  readonly wider?: { readonly share: number; readonly because: string };
}

/** What a reckoning is declared by: from this come the command, the docs page and its reference tests. */
export interface Declaration<I extends Inputs> {
  readonly name: string;
  /** One sentence. */
  readonly says: string;
  readonly formula: string;
  readonly inputs: I;
  readonly results: Readonly<Record<string, ResultFacts>>;
  readonly source: string;
  readonly examples: readonly Example[];
  compute(values: ValuesOf<I>): Computed | ReckoningProblems;
}

/** A declared reckoning, whatever its inputs. */
export interface Reckoning extends Omit<Declaration<Inputs>, 'compute'> {
  /** Reads the texts by key and works the formula out. Keys that are not inputs are not looked at. */
  work(texts: ReadonlyMap<string, readonly string[]>): Outcome;
}

function problemOf(key: string, input: Input<unknown>, texts: readonly string[]) {
  const example = input.example.map((text) => `${key}="${text}"`).join(' ');
  if (texts.length === 0 && input.required)
    return {
      code: 'missing-key',
      path: key,
      says: `The key ${key}${input.label === key ? '' : ` (${input.label})`} is missing.`,
      allowed: `${input.takes}, for example ${example}`,
    };
  if (texts.length > 1 && !input.repeats)
    return {
      code: 'duplicate-key',
      path: key,
      says: `The key ${key} is given ${texts.length} times.`,
      allowed: 'once',
    };
  return undefined;
}

function isComplete<I extends Inputs>(
  values: Readonly<Record<string, unknown>>,
  inputs: I,
): values is ValuesOf<I> {
  return Object.keys(inputs).every((key) => Object.hasOwn(values, key));
}

/** Makes a reckoning of its declaration. */
export function reckoning<I extends Inputs>(declared: Declaration<I>): Reckoning {
  const { compute, ...facts } = declared;
  const work = (texts: ReadonlyMap<string, readonly string[]>): Outcome => {
    const problems: ReckoningProblem[] = [];
    const values: Record<string, unknown> = {};
    for (const [key, input] of Object.entries(declared.inputs)) {
      const given = texts.get(key) ?? [];
      const wrong = problemOf(key, input, given);
      const reading = wrong ? undefined : input.read(given);
      if (wrong) problems.push(wrong);
      else if (reading?.ok) values[key] = reading.value;
      else if (reading)
        problems.push({
          code: reading.code,
          path: key,
          says: `${key}: ${reading.says}`,
          allowed: reading.allowed,
        });
    }
    if (problems.length > 0 || !isComplete(values, declared.inputs)) return { ok: false, problems };
    const computed = compute(values);
    return 'problems' in computed ? computed : { ok: true, ...computed };
  };
  return { ...facts, work };
}
