import { type Basis, molarMass } from '../quantities/basis.ts';
import { type Dimension, usualUnits } from '../quantities/dimensions.ts';
import type { QuantityProblem } from '../quantities/problem.ts';
import { type Allowed, type Quantity, readQuantity } from '../quantities/readQuantity.ts';
import { nearestWord } from '../quantities/spelling.ts';
import type { CatalogueEntry, Input, Reading } from './reckoning.ts';

/** What a quantity is declared by; bounds and default are written as people write them. */
interface QuantityFacts {
  readonly label: string;
  readonly example: string;
  readonly least?: string;
  readonly above?: string;
  readonly most?: string;
}

function bound(written: string, dimension: Dimension): number {
  const reading = readQuantity(written, dimension);
  if (!reading.ok) throw new TypeError(`bound ${written}: ${reading.says}`);
  return reading.value;
}

function allowedOf(facts: QuantityFacts, dimension: Dimension): Allowed {
  return {
    ...(facts.least === undefined ? {} : { least: bound(facts.least, dimension) }),
    ...(facts.above === undefined ? {} : { above: bound(facts.above, dimension) }),
    ...(facts.most === undefined ? {} : { most: bound(facts.most, dimension) }),
  };
}

function takes({ least, above, most }: QuantityFacts, dimension: Dimension): string {
  const low = above === undefined ? (least === undefined ? '' : `${least} or more`) : `more than ${above}`;
  const high = most === undefined ? '' : `at most ${most}`;
  return [usualUnits(dimension), low, high].filter((part) => part !== '').join('; ');
}

/** What is wrong without what is allowed, which stands beside it. */
function refused({ code, says, allowed }: QuantityProblem): Reading<never> {
  return { ok: false, code, says: says.replace(`; allowed: ${allowed}.`, '.'), allowed };
}

/** A number without a unit is no typed quantity: its point is a decimal point, as in a file. */
const bareNumber = (text: string): number | undefined =>
  /^[+-]?\d+\.\d+$/.test(text.trim()) ? Number(text) : undefined;

/** A quantity with its doubt, unit and currency as written; must be given. */
export function reading(dimension: Dimension, facts: QuantityFacts): Input<Quantity> {
  const allowed = allowedOf(facts, dimension);
  return {
    label: facts.label,
    takes: takes(facts, dimension),
    example: [facts.example],
    required: true,
    repeats: false,
    dimension,
    read: ([text = '']) => {
      const read = readQuantity(bareNumber(text) ?? text, dimension, allowed);
      return read.ok ? { ok: true, value: read } : refused(read);
    },
  };
}

const plainValue = (read: Reading<Quantity>): Reading<number> =>
  read.ok ? { ok: true, value: read.value.value } : read;

/** A quantity that must be given, as its SI value. */
export function quantity(dimension: Dimension, facts: QuantityFacts): Input<number> {
  const whole = reading(dimension, facts);
  return { ...whole, read: (texts) => plainValue(whole.read(texts)) };
}

/** A quantity with a value for where it is left out. */
export function quantityOr(
  dimension: Dimension,
  facts: QuantityFacts & { readonly otherwise: string },
): Input<number> {
  const input = quantity(dimension, facts);
  const { otherwise } = facts;
  return {
    ...input,
    required: false,
    otherwise,
    read: (texts) => input.read(texts.length === 0 ? [otherwise] : texts),
  };
}

/** An input that may be left out, and is `undefined` then. */
export function optional<Value>(input: Input<Value>): Input<Value | undefined> {
  return {
    ...input,
    required: false,
    read: (texts) => (texts.length === 0 ? { ok: true, value: undefined } : input.read(texts)),
  };
}

/** A quantity that is given once or more. */
export function readings(
  dimension: Dimension,
  facts: QuantityFacts & { readonly examples: readonly string[] },
): Input<readonly Quantity[]> {
  const one = reading(dimension, facts);
  const read = (texts: readonly string[]): Reading<readonly Quantity[]> => {
    const values: Quantity[] = [];
    for (const text of texts) {
      const each = one.read([text]);
      if (!each.ok) return each;
      values.push(each.value);
    }
    return { ok: true, value: values };
  };
  return { ...one, takes: `${one.takes}; once for each run`, example: facts.examples, repeats: true, read };
}

function wordProblem(text: string, words: readonly string[]): Reading<never> {
  const begun = text.length > 2 ? words.find((word) => word.startsWith(text)) : undefined;
  const near = nearestWord(text, words) ?? begun;
  const perhaps = near === undefined ? '' : `, perhaps ${near}`;
  const shown = text.length > 40 ? `${text.slice(0, 37)}…` : text;
  return {
    ok: false,
    code: 'unknown-word',
    says: `"${shown}" is not known here${perhaps}.`,
    allowed: words.join(', '),
  };
}

/** One of a few words. */
export function choice<const Word extends string>(
  words: readonly Word[],
  facts: { readonly label: string; readonly example?: Word },
): Input<Word> {
  return {
    label: facts.label,
    takes: `one of ${words.join(', ')}`,
    example: [facts.example ?? words[0]!],
    required: true,
    repeats: false,
    words,
    read: ([text = '']) => {
      const word = words.find((each) => each === text.trim());
      return word === undefined ? wordProblem(text, words) : { ok: true, value: word };
    },
  };
}

/** One of a few words, with one for where it is left out. */
export function choiceOr<const Word extends string>(
  words: readonly Word[],
  facts: { readonly label: string; readonly otherwise: NoInfer<Word> },
): Input<Word> {
  const input = choice(words, { label: facts.label });
  const { otherwise } = facts;
  return {
    ...input,
    required: false,
    otherwise,
    read: (texts) => (texts.length === 0 ? { ok: true, value: otherwise } : input.read(texts)),
  };
}

/** An entry of the catalogue by its id. */
export function entry<Entry extends CatalogueEntry>(
  shelf: Readonly<Record<string, Entry>>,
  facts: { readonly label: string; readonly example: string; readonly takes: string },
): Input<Entry> {
  const ids = Object.keys(shelf);
  return {
    label: facts.label,
    takes: facts.takes,
    example: [facts.example],
    required: true,
    repeats: false,
    entries: Object.values(shelf).map(({ id, name }) => ({ id, name })),
    read: ([text = '']) => {
      const id = text.trim();
      const found = Object.hasOwn(shelf, id) ? shelf[id] : undefined;
      return found === undefined ? wordProblem(id, ids) : { ok: true, value: found };
    },
  };
}

/** Text that the reckoning reads itself. */
export function text(facts: {
  readonly label: string;
  readonly takes: string;
  readonly example: string;
}): Input<string> {
  return {
    label: facts.label,
    takes: facts.takes,
    example: [facts.example],
    required: true,
    repeats: false,
    read: ([given = '']) =>
      given.trim() === ''
        ? { ok: false, code: 'empty', says: 'Nothing is written.', allowed: facts.takes }
        : { ok: true, value: given.trim() },
  };
}

type NitrogenBasis = Exclude<Basis, 'CaCO3'>;

/** A concentration of a nitrogen compound; what it is counted as may stand in the text. */
export function nitrogenReading(facts: QuantityFacts): Input<Quantity> {
  const whole = reading('concentration', facts);
  const read = (texts: readonly string[]): Reading<Quantity> => {
    const given = whole.read(texts);
    return given.ok && given.value.basis === 'CaCO3'
      ? {
          ok: false,
          code: 'unknown-basis',
          says: 'Nitrogen is not counted as CaCO3.',
          allowed: 'N, NH3, NH4, NO2 or NO3',
        }
      : given;
  };
  return { ...whole, read };
}

/**
 * A nitrogen concentration in another way of counting.
 *
 * @param given as read; counted as its text says, else as `unlessSaid`
 * @returns kg/m³ counted as `to`
 */
export function countedAs(
  given: Quantity,
  counting: { readonly unlessSaid: NitrogenBasis; readonly to: NitrogenBasis },
): number {
  return (given.value * molarMass[counting.to]) / molarMass[given.basis ?? counting.unlessSaid];
}

/** Inputs that several reckonings share. */
export const temperature = quantityOr('temperature', {
  label: 'temperature of the water',
  example: '26 °C',
  otherwise: '25 °C',
});

export const salinity = quantityOr('count', {
  label: 'practical salinity, about g of salt per kg',
  example: '35',
  least: '0',
  most: '300',
  otherwise: '0',
});

export const pH = quantity('count', { label: 'pH', example: '7.5', least: '0', most: '14' });
