const replacements: readonly (readonly [RegExp, string])[] = [
  [/[″“”]|''/g, '"'],
  [/[′’‘]/g, "'"],
  [/[º˚]/g, '°'],
  [/−/g, '-'],
  [/(\d)?\s*([¼½¾⅓⅔⅛⅜⅝⅞])/g, '$1 $2'],
];

/** What plain text never has: signs that are not ASCII, two apostrophes for inches, spaces to be taken off. */
const notPlain = /[^ -~]|''|^ | $| {2}/;

/**
 * Brings typed text to one spelling: typographic quotes, minus, degree and fraction signs, raised digits and
 * odd spaces become their plain forms.
 */
export function plainText(text: string): string {
  if (!notPlain.test(text)) return text;
  let plain = text;
  for (const [pattern, by] of replacements) plain = plain.replace(pattern, by);
  return plain.normalize('NFKC').replace(/⁄/g, '/').replace(/−/g, '-').replace(/\s+/g, ' ').trim();
}

function distance(one: string, other: string): number {
  let before: number[] = [];
  let row = Array.from({ length: other.length + 1 }, (_, at) => at);
  for (let i = 1; i <= one.length; i++) {
    const next = [i];
    for (let j = 1; j <= other.length; j++) {
      const same = one[i - 1] === other[j - 1];
      let least = Math.min(row[j]! + 1, next[j - 1]! + 1, row[j - 1]! + (same ? 0 : 1));
      const swapped = i > 1 && j > 1 && one[i - 1] === other[j - 2] && one[i - 2] === other[j - 1];
      if (swapped) least = Math.min(least, before[j - 2]! + 1);
      next.push(least);
    }
    before = row;
    row = next;
  }
  return row[other.length]!;
}

/**
 * The known word nearest to a typed one, counting letters changed, added, lost or swapped and not their case.
 *
 * @returns the nearest within two changes, in a word of fewer than five letters within one, and fewer changes than
 *   the typed word has letters; else `undefined`
 */
export function nearestWord(typed: string, known: readonly string[]): string | undefined {
  let best: string | undefined;
  let least = Math.min(typed.length < 5 ? 2 : 3, typed.length);
  for (const word of known) {
    const changes = distance(typed.toLowerCase(), word.toLowerCase());
    if (changes < least) {
      least = changes;
      best = word;
    }
  }
  return best;
}

/** Brings a typed short name to the form of short names: small letters, with hyphens between its words. */
export function asShortName(typed: string): string {
  return plainText(typed)
    .toLowerCase()
    .replace(/[\s_-]+/g, '-')
    .replace(/^-|-$/g, '');
}

/** Share in the words of a name that a typed word has: all of one, its beginning, or a part of it. */
function wordScore(word: string, name: string): number {
  if (name.split('-').includes(word)) return 3;
  if (`-${name}`.includes(`-${word}`)) return 2;
  return name.includes(word) ? 1 : 0;
}

function likeness(words: readonly string[], name: string): number {
  return words.reduce((sum, word) => sum + Math.max(wordScore(word, name), pluralScore(word, name)), 0);
}

function pluralScore(word: string, name: string): number {
  return word.endsWith('s') && word.length > 4 ? wordScore(word.slice(0, -1), name) : 0;
}

/**
 * The known short names that a typed one may stand for: the nearest by letters (`nearestWord`), else those that share
 * most words, beginnings or parts of words of at least three letters with it.
 *
 * @returns up to three, the likest first and alike ones in the order of `known`; empty where none is like it
 */
export function likeNames(typed: string, known: readonly string[]): readonly string[] {
  const name = asShortName(typed);
  const nearest = nearestWord(name, known);
  if (nearest !== undefined) return [nearest];
  const words = name.split('-').filter((word) => /\p{L}{3}/u.test(word));
  const scored = known.map((each) => ({ each, score: likeness(words, each) }));
  const most = Math.max(0, ...scored.map(({ score }) => score));
  if (most === 0) return [];
  return scored
    .filter(({ score }) => score === most)
    .slice(0, 3)
    .map(({ each }) => each);
}
