import type { DyeTest } from '@fettle/engine/model/model.ts';
import { readingDoubts } from '../defaults.ts';
import { dyeSchema } from '../schema/benchTests.ts';
import { acceptedQuantity } from '../schema/fields.ts';
import type { JobDocument } from '../schema/job.ts';

type DocumentDye = Extract<NonNullable<JobDocument['tests']>[number], { kind: 'dye' }>;

const { shape } = dyeSchema;
const reading = shape.readings.element.shape;

/** A dye test in SI units; readings in the order of their times, none before the pulse could be there. */
export function dyeTestOf(test: DocumentDye, id: string): DyeTest {
  const { flow, deadTime, background, readingDoubt, loop, water } = test;
  const dead = acceptedQuantity(shape.deadTime, deadTime ?? '0 s');
  const deadDoubtS = dead.doubt?.kind === 'plus-minus' ? dead.doubt.size : 0;
  const before = acceptedQuantity(shape.background, background ?? 0).value;
  const samples = test.readings
    .map(({ at, strength }) => ({
      timeS: acceptedQuantity(reading.at, at).value - dead.value,
      concentration: Math.max(0, acceptedQuantity(reading.strength, strength).value - before),
    }))
    .filter(({ timeS }) => timeS >= 0)
    .toSorted((a, b) => a.timeS - b.timeS);
  const strongest = samples.reduce((most, { concentration }) => Math.max(most, concentration), 0);
  const ratio =
    readingDoubt === undefined
      ? readingDoubts.dyeRatio
      : acceptedQuantity(shape.readingDoubt, readingDoubt).value;
  return {
    id,
    state: test.state ?? 'as-found',
    ...(flow === undefined ? {} : { flowM3PerS: acceptedQuantity(shape.flow, flow).value }),
    samples,
    readingDoubt: ratio * strongest,
    timeDoubtS: Math.hypot(readingDoubts.dyeTimeS, deadDoubtS),
    ...(loop === 'returning' && water !== undefined
      ? { returnsToM3: acceptedQuantity(shape.water, water).value }
      : {}),
  };
}
