import { readUnit } from '@fettle/engine/quantities/units.ts';

/** A unit as a source prints it: SI value = (number + offset) × factor. */
export interface PrintedUnit {
  readonly factor: number;
  readonly offset: number;
  /** Equal for units that measure the same kind of quantity. */
  readonly kind: string;
}

const MOLE = 'amount of substance';

/** Units that sources print and the program itself has no use for. */
const onlyInPrint: Readonly<Record<string, PrintedUnit>> = {
  hp: { factor: 550 * 0.3048 * 0.45359237 * 9.80665, offset: 0, kind: '2,1,-3,0,0' },
  mol: { factor: 1, offset: 0, kind: MOLE },
  'mol/L': { factor: 1e3, offset: 0, kind: `${MOLE} per volume` },
  'mol/m3': { factor: 1, offset: 0, kind: `${MOLE} per volume` },
  'mmol/h': { factor: 1e-3 / 3600, offset: 0, kind: `${MOLE} per time` },
  'mol/s': { factor: 1, offset: 0, kind: `${MOLE} per time` },
  'µmol/kg': { factor: 1e-6, offset: 0, kind: `${MOLE} per mass` },
  'mol/kg': { factor: 1, offset: 0, kind: `${MOLE} per mass` },
};

const known = new Map<string, PrintedUnit>();

/**
 * Reads a printed unit; an empty text is a plain number.
 * @throws where the unit is not known: a case cannot be checked then
 */
export const printedUnit = (text: string): PrintedUnit => {
  const before = known.get(text) ?? onlyInPrint[text];
  if (before) return before;
  if (text === '') return { factor: 1, offset: 0, kind: '0,0,0,0,0' };
  const reading = readUnit(text);
  if (!reading.ok) throw new Error(`${text} is not a unit that we know: ${reading.why}`);
  const { factor, offset, exponents } = reading.unit;
  const unit = { factor, offset, kind: exponents.join() };
  known.set(text, unit);
  return unit;
};

/** A number with its unit as printed, `0.0172` or `96.5 kPa`. */
export interface Printed {
  readonly number: number;
  readonly unit: PrintedUnit;
  readonly unitText: string;
  /** Half a unit of the last printed digit, in the printed unit. */
  readonly halfDigit: number;
}

const SHAPE = /^([+-]?\d+(?:\.(\d+))?(?:e([+-]?\d+))?)(?:\s+(\S.*))?$/;

/** Takes a printed quantity apart. Decimal point, `e` for powers of ten, no separators of thousands. */
export const readPrinted = (text: string): Printed => {
  const match = SHAPE.exec(text.trim());
  if (!match) throw new Error(`"${text}" is not a printed number with its unit`);
  const [, number, decimals = '', power = '0', unitText = ''] = match;
  return {
    number: Number(number),
    unit: printedUnit(unitText),
    unitText,
    halfDigit: 0.5 * 10 ** (Number(power) - decimals.length),
  };
};

/** SI value of a printed quantity that has to be of the kind of `siUnit`. */
export const printedToSi = (text: string, siUnit: string): number => {
  const { number, unit, unitText } = readPrinted(text);
  if (unit.kind !== printedUnit(siUnit).kind)
    throw new Error(`"${unitText}" does not measure what ${siUnit} does`);
  return (number + unit.offset) * unit.factor;
};
