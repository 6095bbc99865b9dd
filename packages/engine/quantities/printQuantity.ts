import type { Doubt } from '../model/figure.ts';
import type { Dimension } from './dimensions.ts';
import type { System } from './displayUnits.ts';
import { displayUnits } from './displayUnits.ts';
import { lastPlace, placeOfDoubt, printToPlace } from './rounding.ts';
import type { Unit } from './units.ts';
import { fromSi, plainNumber, unitOf } from './units.ts';

/** What is printed: an SI value, perhaps with its doubt or with the ends of its range. */
export interface Printable {
  readonly value: number;
  readonly dimension: Dimension;
  readonly doubt?: Doubt;
  /** Lower and upper end of the range, SI; both or neither. They take the doubt's place. */
  readonly low?: number;
  readonly high?: number;
  /** ISO 4217 code for money and prices. */
  readonly currency?: string;
  /** Significant digits where there is no doubt; 3 when left out. */
  readonly digits?: number;
  /** SI value whose unit is taken, so that figures of one column have one unit; its own when left out. */
  readonly sizedLike?: number;
}

interface Shown {
  readonly number: number;
  readonly unit: Unit;
  readonly printable: Printable;
}

function displayUnit(printable: Printable, system: System): Unit {
  const { value, dimension, currency, sizedLike = value } = printable;
  const list = displayUnits[dimension][system];
  const spelled = (list.find(({ from }) => from === undefined || Math.abs(sizedLike) >= from) ?? list[0]!)
    .unit;
  const money = dimension === 'money' || dimension.startsWith('price-');
  if (!money) return spelled === '' ? plainNumber : unitOf(spelled);
  if (currency !== undefined) return unitOf(`${currency}${spelled}`);
  const unit = unitOf(spelled === '' ? 'GBP' : `GBP${spelled}`);
  return { ...unit, spelled };
}

function withUnit(text: string, unit: Unit): string {
  return `${text} ${unit.spelled}`.trim();
}

function plainPlace({ number, printable }: Shown): number {
  // Sums of money are printed to the hundredth, whatever their size.
  return printable.dimension === 'money' ? -2 : lastPlace(number, printable.digits ?? 3);
}

function printFactor({ number, unit }: Shown, factor: number): string {
  const place = Math.min(placeOfDoubt(Math.abs(number) * (factor - 1)), lastPlace(number, 2));
  const above = Number((factor - 1).toPrecision(2));
  return withUnit(`${printToPlace(number, place)} ×/÷ ${Number((1 + above).toPrecision(12))}`, unit);
}

function rangeOf({ number, unit, printable }: Shown) {
  const { low, high, dimension } = printable;
  if (low === undefined || high === undefined || !(high > low)) return undefined;
  const ends = [fromSi(low, unit, dimension), fromSi(high, unit, dimension)] as const;
  const place = Math.min(placeOfDoubt((ends[1] - ends[0]) / 2), number === 0 ? 0 : lastPlace(number, 1));
  const range = `${printToPlace(ends[0], place)} to ${printToPlace(ends[1], place)}`;
  return { value: withUnit(printToPlace(number, place), unit), range };
}

function shownIn(printable: Printable, system: System): Shown {
  const unit = displayUnit(printable, system);
  return { number: fromSi(printable.value, unit, printable.dimension), unit, printable };
}

function printAlone(shown: Shown): string {
  const { doubt } = shown.printable;
  if (doubt?.kind === 'factor' && shown.number > 0) return printFactor(shown, doubt.size);
  if (doubt?.kind === 'plus-minus' && doubt.size > 0) {
    const size = fromSi(doubt.size, shown.unit, 'temperature-difference');
    const place = placeOfDoubt(size);
    const [value, width] = [printToPlace(shown.number, place), printToPlace(size, place)];
    // "35 ± 5 %" would leave open whether the 35 is in % too.
    const first = shown.unit.spelled === '%' ? `${value} %` : value;
    return withUnit(`${first} ± ${width}`, shown.unit);
  }
  return withUnit(printToPlace(shown.number, plainPlace(shown)), shown.unit);
}

/**
 * Prints a quantity in one system of units: `612 ± 12 L/h`, `280 ×/÷ 2 m2/m3`, `612 L/h (590 to 634)`.
 * Rounded once, to its doubt; without one to three significant digits.
 *
 * @param printable SI value, finite; with `system` the system of units
 * @returns plain text; without a range `readQuantity` reads it back
 */
export function printQuantity(printable: Printable & { readonly system: System }): string {
  const shown = shownIn(printable, printable.system);
  const range = rangeOf(shown);
  return range ? `${range.value} (${range.range})` : printAlone(shown);
}

/**
 * Prints a quantity in metric and in US units, each rounded once from the same value: `612 L/h (162 US gal/h)`,
 * with a range `612 L/h (162 US gal/h), 590 to 634 L/h (156 to 167 US gal/h)`. Once only where both are the same.
 */
export function printBoth(printable: Printable): string {
  const metric = shownIn(printable, 'metric');
  const us = shownIn(printable, 'us');
  const ranges = [rangeOf(metric), rangeOf(us)] as const;
  if (metric.unit.spelled === us.unit.spelled) return printQuantity({ ...printable, system: 'metric' });
  if (!ranges[0] || !ranges[1]) return `${printAlone(metric)} (${printAlone(us)})`;
  const range = `${withUnit(ranges[0].range, metric.unit)} (${withUnit(ranges[1].range, us.unit)})`;
  return `${ranges[0].value} (${ranges[1].value}), ${range}`;
}
