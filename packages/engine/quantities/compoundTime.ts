import type { QuantityProblem } from './problem.ts';
import { quantityProblem, quoted } from './problem.ts';
import { plainText } from './spelling.ts';
import { readUnit } from './units.ts';

/** The units of a time in parts, largest first, with how many of the next one each holds. */
const parts = [
  { unit: 'h', holds: 60 },
  { unit: 'min', holds: 60 },
  { unit: 's', holds: 1 },
] as const;

const part = '(\\d{1,6}(?:[.,]\\d+)?) ?([a-zA-Z]+)';
const inWords = new RegExp(`^${part} ?(?:and )?${part}(?: ?(?:and )?${part})?(?= ?(?:[±×÷+*]|x ?/|$))`);
const onClock = /^(\d{1,3}):(\d{2}(?:[.,]\d+)?)(?= ?(?:[±×÷+*]|x ?\/|$))/;
const hasColon = /^\d+ ?:/;

interface Part {
  readonly number: string;
  /** Place in `parts`. */
  readonly at: number;
}

/**
 * A time in parts, such as `1 min 2 s`, `1 h 30 min` or, where a clock is read, `1:02`, as one number of its smallest
 * unit. Only the last part may have decimals, and every part but the first stays below 60.
 *
 * @param how.clock whether `1:02` is a minute and two seconds here; elsewhere it could be hours
 * @returns undefined where the text is no time in parts; a problem where its parts do not go together, or where a
 *   colon stands in it that says neither minutes nor hours
 */
export function compoundTime(
  text: string,
  how: { readonly clock: boolean },
): string | QuantityProblem | undefined {
  const plain = plainText(text);
  const clock = how.clock ? onClock.exec(plain) : null;
  if (clock !== null) {
    const [whole, minutes = '', seconds = ''] = clock;
    return together([numbered(minutes, 1), numbered(seconds, 2)], plain, plain.slice(whole.length));
  }
  if (hasColon.test(plain)) return colonProblem(plain, how);
  const found = inWords.exec(plain);
  if (found === null) return undefined;
  const named = [1, 3, 5].flatMap((group): Part[] => {
    const [number, unit] = [found[group], found[group + 1]];
    return number === undefined || unit === undefined ? [] : [numbered(number, placeOf(unit))];
  });
  if (named.some(({ at }) => at === -1)) return undefined;
  return together(named, plain, plain.slice(found[0].length));
}

function colonProblem(plain: string, { clock }: { readonly clock: boolean }): QuantityProblem {
  const written = 'a time as 1 min 2 s, 1 h 30 min or 62 s';
  return quantityProblem(
    'ambiguous-number',
    `The colon in ${quoted(plain)} leaves open what time is meant`,
    clock ? `${written}, or 1:02 with two figures behind the colon and no unit` : written,
  );
}

function numbered(number: string, at: number): Part {
  return { number, at };
}

function placeOf(word: string): number {
  const reading = readUnit(word);
  return reading.ok ? parts.findIndex(({ unit }) => unit === reading.unit.spelled) : -1;
}

function together(named: readonly Part[], plain: string, behind: string): string | QuantityProblem {
  const isSound = named.every(({ number, at }, place) => {
    const before = named[place - 1];
    if (before !== undefined && (at !== before.at + 1 || Number.parseInt(number, 10) >= 60)) return false;
    return place === named.length - 1 || /^\d+$/.test(number);
  });
  if (!isSound)
    return quantityProblem(
      'ambiguous-number',
      `The parts of ${quoted(plain)} do not go together`,
      'a time such as 1 min 2 s or 1 h 30 min, with less than 60 behind the first part and decimals in the last alone; or one number, such as 62 s',
    );
  const last = named.at(-1)!;
  const [whole = '', decimals = ''] = last.number.split(/(?=[.,])/);
  const earlier = named
    .slice(0, -1)
    .reduce((sum, { number, at }) => (sum + Number(number)) * parts[at]!.holds, 0);
  return `${earlier + Number(whole)}${decimals} ${parts[last.at]!.unit}${behind}`;
}
