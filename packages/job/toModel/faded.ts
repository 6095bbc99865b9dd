import type { FadedReadings, Measured } from '@fettle/engine/elimination/readings.ts';
import type { BenchTest, Model } from '@fettle/engine/model/model.ts';
import { readingDoubts } from '../defaults.ts';
import { doneSchema, fadedSchema } from '../schema/faded.ts';
import { acceptedQuantity } from '../schema/fields.ts';
import type { JobDocument } from '../schema/job.ts';
import { halfWidth } from './halfWidth.ts';

type Faded = NonNullable<JobDocument['faded']>;
type FieldName = 'flowNow' | 'flowBefore' | 'powerNow' | 'powerBefore' | 'shutoffNow' | 'shutoffBefore';

/** Doubt of each kind of figure where none is written, as a half-width. */
const usualDoubt = (field: FieldName, value: number): number => {
  if (field.startsWith('flow')) return readingDoubts.flowRatio * value;
  if (field.startsWith('power')) return Math.max(readingDoubts.powerW, readingDoubts.powerRatio * value);
  return readingDoubts.headM;
};

const measured = (faded: Faded, field: FieldName): Measured | undefined => {
  const written = faded[field];
  if (written === undefined) return undefined;
  const quantity = acceptedQuantity(fadedSchema.shape[field].unwrap(), written);
  return { value: quantity.value, doubt: halfWidth(quantity, usualDoubt(field, quantity.value)) };
};

/** What a test of the filter as a whole read; nothing of other kinds. */
const readOff = (test: BenchTest): Measured[] => {
  switch (test.kind) {
    case 'timed-volume':
      return [{ value: test.flowM3PerS, doubt: test.doubtM3PerS }];
    case 'power':
      return [{ value: test.powerW, doubt: test.doubtW }];
    case 'shutoff-head':
      return [{ value: test.headM, doubt: test.doubtM }];
    default:
      return [];
  }
};

/** The surest of the tests of one kind that was made as found. */
const asFound = (tests: readonly BenchTest[], kind: BenchTest['kind']): Measured | undefined =>
  tests
    .flatMap((test): Measured[] => (test.state === 'as-found' && test.kind === kind ? readOff(test) : []))
    .toSorted((a, b) => a.doubt / a.value - b.doubt / b.value)[0];

const doneOf = ({ done = [] }: Faded): FadedReadings['done'] =>
  done.map(({ did, flow }) => {
    const quantity = acceptedQuantity(doneSchema.shape.flow, flow);
    const doubt = halfWidth(quantity, usualDoubt('flowNow', quantity.value));
    return { trial: did, flowAfter: { value: quantity.value, doubt } };
  });

const given = <Name extends string, Value>(name: Name, value: Value | undefined) =>
  (value === undefined ? {} : { [name]: value }) as { readonly [key in Name]?: Value };

/**
 * What a job tells of a flow that has faded, in SI units; what was measured as found stands in for what is not written.
 *
 * @returns undefined where nobody knows the flow now
 */
export function fadedReadings(document: JobDocument, { tests }: Model): FadedReadings | undefined {
  const faded = document.faded ?? {};
  const flowNow = measured(faded, 'flowNow') ?? asFound(tests, 'timed-volume');
  if (flowNow === undefined) return undefined;
  const { signs = {}, sinceCleaned } = faded;
  return {
    flowNow,
    ...given('flowBefore', measured(faded, 'flowBefore')),
    ...given('powerNow', measured(faded, 'powerNow') ?? asFound(tests, 'power')),
    ...given('powerBefore', measured(faded, 'powerBefore')),
    ...given('shutoffNow', measured(faded, 'shutoffNow') ?? asFound(tests, 'shutoff-head')),
    ...given('shutoffBefore', measured(faded, 'shutoffBefore')),
    ...(sinceCleaned === undefined
      ? {}
      : { sinceCleanedS: acceptedQuantity(fadedSchema.shape.sinceCleaned.unwrap(), sinceCleaned).value }),
    signs: Object.fromEntries(Object.entries(signs).filter(([, seen]) => seen !== undefined)),
    done: doneOf(faded),
  };
}
