import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { printToPlace } from '@fettle/engine/quantities/rounding.ts';
import { fromSi, unitOf } from '@fettle/engine/quantities/units.ts';

const noBreak = '\u00a0';

/**
 * A length as it stands on a drawing: whole millimetres (tenths below 10), or inches to the hundredth
 * (tenths from 10 up).
 *
 * @param length `lengthM` in m, finite and not negative; `units` the system
 */
export function printLength(length: { readonly lengthM: number; readonly units: System }): string {
  const spelled = length.units === 'metric' ? 'mm' : 'in';
  const number = fromSi(length.lengthM, unitOf(spelled), 'length');
  const fine = length.units === 'metric' ? -1 : -2;
  const printed = Number(printToPlace(number, number < 9.95 ? fine : fine + 1));
  return `${printed}${noBreak}${spelled}`;
}

/** A share of the flow in whole per cent, `<1 %` where it would round to none: `3 %`. */
export function printShare(share: number): string {
  const percent = share * 100;
  if (percent > 0 && percent < 1) return `<1${noBreak}%`;
  if (percent > 99 && percent < 100) return `>99${noBreak}%`;
  return `${Math.round(percent)}${noBreak}%`;
}
