import { type Reckoned, reckon } from '@fettle/engine/reckonings/reckon.ts';
import type { Input, Reckoning, ReckoningProblem } from '@fettle/engine/reckonings/reckoning.ts';
import { at, isFields } from '@fettle/job/schema/walk.ts';
import { inBothSystems } from '../../forms/understood.ts';
import { pairsOf, type Texts } from './texts.ts';

/** What can be said of a reckoning while it is being filled in. */
export interface LookedInto {
  /** The answers, as soon as nothing is missing or wrong. */
  readonly reckoned: Reckoned | undefined;
  /** What has still to be filled in, as the labels say it. */
  readonly missing: readonly string[];
  /** One sentence for each input that is wrong, by its key. */
  readonly faults: Readonly<Record<string, string>>;
  /** What is wrong with the whole. */
  readonly others: readonly string[];
}

/** One sentence: what is wrong, and what is allowed. The key is left away, since it stands at its field. */
const sentence = ({ path, says, allowed }: ReckoningProblem): string => {
  const bare = says.startsWith(`${path}: `) ? says.slice(path.length + 2) : says;
  return allowed === undefined ? bare : `${bare.replace(/\.$/, '')}; allowed: ${allowed}.`;
};

/** Works a reckoning out as far as it is filled in. */
export function lookInto(reckoning: Reckoning, texts: Texts): LookedInto {
  const outcome = reckon(reckoning.name, pairsOf(texts));
  if (outcome.ok) return { reckoned: outcome, missing: [], faults: {}, others: [] };
  const isMissing = ({ code }: ReckoningProblem) => code === 'missing-key';
  const wrong = outcome.problems.filter((problem) => !isMissing(problem));
  const isAtField = ({ path }: ReckoningProblem) => Object.hasOwn(reckoning.inputs, path);
  return {
    reckoned: undefined,
    missing: outcome.problems.filter(isMissing).map(({ path }) => reckoning.inputs[path]?.label ?? path),
    faults: Object.fromEntries(wrong.filter(isAtField).map((problem) => [problem.path, sentence(problem)])),
    others: wrong.filter((problem) => !isAtField(problem)).map(sentence),
  };
}

/** What was understood of one text of a quantity; undefined where it says so itself, or is none. */
export function understoodOf(input: Input<unknown>, text: string): string | undefined {
  const { dimension } = input;
  if (dimension === undefined || dimension === 'count' || text.trim() === '') return undefined;
  const reading = input.read([text]);
  if (!reading.ok) return undefined;
  const one: unknown = Array.isArray(reading.value) ? reading.value[0] : reading.value;
  if (typeof one === 'number') return inBothSystems({ value: one }, dimension);
  return isQuantity(one) ? `${inBothSystems(one, dimension)}${basisOf(one)}` : undefined;
}

const isQuantity = (value: unknown): value is Parameters<typeof inBothSystems>[0] =>
  isFields(value) && typeof value.value === 'number';

const basisOf = (quantity: unknown): string => {
  const basis = at(quantity, 'basis');
  return basis === undefined ? '' : ` as ${String(basis)}`;
};
