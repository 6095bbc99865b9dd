import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { printToPlace } from '@fettle/engine/quantities/rounding.ts';
import { fromSi, unitOf } from '@fettle/engine/quantities/units.ts';

const noBreak = '\u00a0';

/**
 * A length as it stands on a drawing: millimetres to the tenth, where it has one (whole ones from 100 up), or
 * inches to the hundredth (tenths from 10 up).
 *
 * @param length `lengthM` in m, finite and not negative; `units` the system
 */
export function printLength(length: { readonly lengthM: number; readonly units: System }): string {
  const spelled = length.units === 'metric' ? 'mm' : 'in';
  const number = fromSi(length.lengthM, unitOf(spelled), 'length');
  const [fine, from] = length.units === 'metric' ? [-1, 99.95] : [-2, 9.95];
  const printed = Number(printToPlace(number, number < from ? fine : fine + 1));
  return `${printed}${noBreak}${spelled}`;
}

/** A share of the flow in whole per cent, `<1 %` where it would round to none: `3 %`. */
export function printShare(share: number): string {
  const percent = share * 100;
  if (percent > 0 && percent < 1) return `<1${noBreak}%`;
  if (percent > 99 && percent < 100) return `>99${noBreak}%`;
  return `${Math.round(percent)}${noBreak}%`;
}
