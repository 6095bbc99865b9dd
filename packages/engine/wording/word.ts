import type { System } from '../quantities/displayUnits.ts';
import { type Printable, printBoth, printQuantity } from '../quantities/printQuantity.ts';
import { printShare } from '../quantities/printShort.ts';
import { filled, type Language, nameIn } from './language.ts';
import type { Fact, Said } from './said.ts';

/** In what language and in which units something is said. */
export interface Wording {
  readonly language: Language;
  /** `both`: metric with US units behind, each rounded once from the one value. */
  readonly units: System | 'both';
}

/** Seconds in each unit of time, the largest first, and how many of it there must be to use it. */
const times = [
  ['year', 365 * 86_400, 2],
  ['day', 86_400, 1],
  ['hour', 3600, 2],
  ['minute', 60, 2],
  ['second', 1, 0],
] as const;

/** A printed figure as a language writes it. */
export const asWritten = (printed: string, { marks }: Language): string =>
  printed
    .replace(/ to /g, ` ${marks.to} `)
    .replace(/(\d)\.(?=\d)/g, marks.decimal === '.' ? '$&' : `$1${marks.decimal}`);

/** A quantity, in one system of units or in both. */
export const wordQuantity = (printable: Printable, { language, units }: Wording): string => {
  const { value, dimension, doubt, digits } = printable;
  // Where both systems are told, people read prose: a time of two figures is told in words.
  if (units === 'both' && dimension === 'time' && doubt === undefined && digits === 2)
    return wordDuration({ durationS: value }, { language });
  return asWritten(
    units === 'both' ? printBoth(printable) : printQuantity({ ...printable, system: units }),
    language,
  );
};

/** A time as prose says it, `3.5 days`: to two figures, for no computed time is known to more. */
export const wordDuration = (
  { durationS, beyond = false }: { readonly durationS: number; readonly beyond?: boolean },
  { language }: Pick<Wording, 'language'>,
): string => {
  if (beyond) return language.marks.beyond;
  // A shade less, so that what rounds to two of a unit is said in that unit.
  const [name, size] =
    times.find(([, length, least]) => durationS >= 0.995 * least * length) ?? times.at(-1)!;
  const count = Number((durationS / size).toPrecision(2));
  const [one, many] = language.marks.times[name];
  return `${asWritten(String(count), language)} ${count === 1 ? one : many}`;
};

/** A time in days or hours, `1.5 days`, to two figures. */
export const wordSpan = (
  { spanS, beyond = false }: { readonly spanS: number; readonly beyond?: boolean },
  language: Language,
): string => {
  if (beyond) return language.marks.beyond;
  const [name, sizeS] = spanS < 0.995 * 86_400 ? (['hour', 3600] as const) : (['day', 86_400] as const);
  const count = Number((spanS / sizeS).toPrecision(2));
  const shown =
    Math.abs(count) >= 1000 ? count.toLocaleString(language.code) : asWritten(String(count), language);
  const [one, many] = language.marks.times[name];
  return `${shown} ${count === 1 ? one : many}`;
};

/** Several things in a row: `a`, `a and b`, `a, b and c`. */
export const wordList = (words: readonly string[], { marks }: Language): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} ${marks.and} ${words.at(-1)}`;

/** One fact. */
export const wordFact = (fact: Fact, wording: Wording): string => {
  if (typeof fact === 'string') return fact;
  if (typeof fact === 'number') return asWritten(String(fact), wording.language);
  if ('code' in fact) return word(fact, wording);
  if ('dimension' in fact) return wordQuantity(fact, wording);
  if ('share' in fact) return asWritten(printShare(fact.share), wording.language);
  if ('spanS' in fact) return wordSpan(fact, wording.language);
  if ('durationS' in fact) return wordDuration(fact, wording);
  if ('name' in fact) return nameIn(wording.language, fact.name);
  const words = fact.all.map((one) => wordFact(one, wording));
  return fact.by === undefined ? wordList(words, wording.language) : words.join(fact.by);
};

/**
 * Says something in a language.
 *
 * Throws where the language has no such sentence, or there is no fact for a hole of it: both are bugs.
 */
export const word = ({ code, facts = {} }: Said, wording: Wording): string => {
  const template = wording.language.sentences[code];
  if (template === undefined) throw new Error(`no sentence “${code}” in ${wording.language.code}`);
  return filled(template, (name) => {
    const fact = facts[name];
    if (fact === undefined) throw new Error(`nothing for {${name}} of “${code}”`);
    return wordFact(fact, wording);
  });
};
