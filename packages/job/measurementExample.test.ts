import { families } from '@fettle/engine/families/families.ts';
import { readQuantity } from '@fettle/engine/quantities/readQuantity.ts';
import { describe, expect, it } from 'vitest';
import { measuredAs, measurementExample } from './measurementExample.ts';

const measurements = families.flatMap(({ id, measurements: all }) =>
  all.map((each) => [id, each.key, each] as const),
);

describe('the example of a measurement', () => {
  it.each(measurements)('%s, %s, can be measured, in both systems of units', (_, __, measurement) => {
    const { kind, least, most } = measurement;
    for (const system of ['metric', 'us'] as const) {
      const example = measurementExample(measurement, system);
      if (kind === 'yes-no') expect(['yes', 'no']).toContain(example);
      else if (kind === 'count') expect(Number.isInteger(Number(example))).toBe(true);
      else expect(readQuantity(example, measuredAs[kind], { least, most })).toMatchObject({ ok: true });
    }
  });

  it('is in mm on a metric tape and in inches on a US one', () => {
    const width = families[0]!.measurements.find(({ key }) => key === 'basketWidth')!;
    expect(measurementExample(width)).toBe('170 mm');
    expect(measurementExample(width, 'us')).toBe('6.7 in');
  });
});
