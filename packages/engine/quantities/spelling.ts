const replacements: readonly (readonly [RegExp, string])[] = [
  [/[″“”]|''/g, '"'],
  [/[′’‘]/g, "'"],
  [/[º˚]/g, '°'],
  [/−/g, '-'],
  [/(\d)?\s*([¼½¾⅓⅔⅛⅜⅝⅞])/g, '$1 $2'],
];

/**
 * Brings typed text to one spelling: typographic quotes, minus, degree and fraction signs, raised digits and
 * odd spaces become their plain forms.
 */
export function plainText(text: string): string {
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
 * @returns the nearest within two changes and fewer changes than the typed word has letters; else `undefined`
 */
export function nearestWord(typed: string, known: readonly string[]): string | undefined {
  let best: string | undefined;
  let least = Math.min(3, typed.length);
  for (const word of known) {
    const changes = distance(typed.toLowerCase(), word.toLowerCase());
    if (changes < least) {
      least = changes;
      best = word;
    }
  }
  return best;
}
