import type { Pair } from '@fettle/engine/reckonings/reckon.ts';
import type { Example, Inputs } from '@fettle/engine/reckonings/reckoning.ts';

/** What is typed into the inputs of a reckoning, by key; more than one text where the key may be given again. */
export type Texts = Readonly<Record<string, readonly string[]>>;

/** The texts in an address; keys that the reckoning does not have are left out. */
export const textsOf = (asked: URLSearchParams, inputs: Inputs): Texts =>
  Object.fromEntries(
    Object.keys(inputs).flatMap((key) => (asked.has(key) ? [[key, asked.getAll(key)] as const] : [])),
  );

/** Keys with their texts; what is empty was left out. */
export const pairsOf = (texts: Texts): readonly Pair[] =>
  Object.entries(texts).flatMap(([key, given]) =>
    given.filter((text) => text.trim() !== '').map((text) => ({ key, text })),
  );

/** The query of an address that brings the same texts back. */
export const queryOf = (texts: Texts): string =>
  new URLSearchParams(pairsOf(texts).map(({ key, text }) => [key, text])).toString();

/** The texts of a published example, as they are printed there. */
export const textsOfExample = ({ inputs }: Example): Texts =>
  Object.fromEntries(
    Object.entries(inputs).map(([key, given]) => [key, typeof given === 'string' ? [given] : given]),
  );
