import type { Measurement } from '@fettle/engine/families/layout.ts';
import type { Dimension } from '@fettle/engine/quantities/dimensions.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';

/** What measurements of each kind are quantities of; counts and answers are none. */
export const measuredAs: Readonly<Record<'length' | 'area' | 'fraction', Dimension>> = {
  length: 'length',
  area: 'area',
  fraction: 'fraction',
};

/** An SI value that such a filter might have: what is assumed, else the geometric middle of what is allowed. */
export function measurementExampleValue({ kind, assumed, least, most }: Measurement): number {
  if (assumed !== undefined) return assumed.value;
  const middle = Math.sqrt(Math.max(least, most / 1000) * most);
  return kind === 'count' ? Math.round(middle) : Number(middle.toPrecision(2));
}

/** An SI value of a measurement as a technician with a tape writes it: in mm, cm2, per cent, as a count, yes or no. */
export function measurementText({ kind }: Measurement, value: number): string {
  switch (kind) {
    case 'length':
      return `${Number((value * 1000).toPrecision(4))} mm`;
    case 'area':
      return `${Number((value * 10_000).toPrecision(4))} cm2`;
    case 'fraction':
      return `${Number((value * 100).toPrecision(4))} %`;
    case 'yes-no':
      return value === 0 ? 'no' : 'yes';
    case 'count':
      return String(value);
  }
}

/** An example of a measurement in a system of units, two figures where it is not written with the tape's own. */
export function measurementExample(measurement: Measurement, system: System = 'metric'): string {
  const value = measurementExampleValue(measurement);
  const { kind } = measurement;
  if (system === 'metric' || kind === 'count' || kind === 'yes-no')
    return measurementText(measurement, value);
  return printQuantity({ value, dimension: measuredAs[kind], system, digits: 2 });
}
