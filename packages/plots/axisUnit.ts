import type { Dimension } from '@fettle/engine/quantities/dimensions.ts';
import { displayUnits, type System } from '@fettle/engine/quantities/displayUnits.ts';
import { fromSi, unitOf } from '@fettle/engine/quantities/units.ts';

/** The one unit of an axis. */
export interface AxisUnit {
  readonly unit: string;
  /** An SI value in it. */
  readonly of: (value: number) => number;
}

/** The unit in which the largest value of an axis would be printed, SI; `dimension` is none of money. */
export function axisUnit(dimension: Dimension, system: System, largest: number): AxisUnit {
  const list = displayUnits[dimension][system];
  const shown = list.find(({ from }) => from === undefined || Math.abs(largest) >= from) ?? list[0]!;
  const unit = unitOf(shown.unit);
  return { unit: unit.spelled, of: (value) => fromSi(value, unit, dimension) };
}

/** The number at a tick, without the noise of its computing and with the same signs as other figures. */
export const tickText = (value: number): string => String(Number(value.toPrecision(12)));
