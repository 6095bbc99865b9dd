import type { Case } from './cases.ts';
import type { Adapter, Registry } from './registry/adapter.ts';
import { printedToSi, printedUnit, readPrinted } from './units.ts';

/** A case worked out, in the unit of the print. */
export interface Comparison {
  readonly ours: number;
  readonly printed: number;
  readonly unit: string;
  readonly tolerance: number;
  readonly agrees: boolean;
}

const inputsOf = (adapter: Adapter, given: Case['inputs']): Record<string, number> => {
  const stray = Object.keys(given).find((name) => !Object.hasOwn(adapter.inputs, name));
  if (stray !== undefined) throw new Error(`${stray} is not an input of this law`);
  const entries = Object.entries(adapter.inputs).map(([name, unit]): [string, number] => {
    const text = given[name];
    if (text !== undefined) return [name, printedToSi(text, unit === '1' ? '' : unit)];
    const otherwise = adapter.defaults?.[name];
    if (otherwise === undefined) throw new Error(`The case lacks the input ${name}`);
    return [name, otherwise];
  });
  return Object.fromEntries(entries);
};

const toleranceOf = (each: Case): number => {
  const expected = readPrinted(each.expected);
  if (!each.tolerance) return expected.halfDigit;
  const wider = readPrinted(each.tolerance.size);
  if (wider.unitText === '%') return Math.abs(expected.number) * wider.number * 0.01;
  if (wider.unitText !== expected.unitText)
    throw new Error('A tolerance is in % or in the unit of the print');
  return wider.number;
};

/** Works a case out. Throws where it does not fit its law: a mistake in the case, not a deviation. */
export const compare = (each: Case, laws: Registry): Comparison => {
  const adapter = laws[each.law];
  if (!adapter) throw new Error(`No law is registered as ${each.law}`);
  const expected = readPrinted(each.expected);
  const { unit } = expected;
  if (unit.kind !== printedUnit(adapter.result === '1' ? '' : adapter.result).kind)
    throw new Error(`${each.law} does not give ${expected.unitText || 'a plain number'}`);
  const ours = adapter.compute(inputsOf(adapter, each.inputs)) / unit.factor - unit.offset;
  const tolerance = toleranceOf(each);
  // Room for binary rounding alone: a print of 0.35 is not exactly 0.35 in the machine.
  const rounding = 1e-12 * Math.abs(expected.number);
  const agrees = Math.abs(ours - expected.number) <= tolerance + rounding;
  return { ours, printed: expected.number, unit: expected.unitText, tolerance, agrees };
};
