import type { BenchTest, Model } from './model.ts';

type Power = Extract<BenchTest, { kind: 'power' }>;
type Shutoff = Extract<BenchTest, { kind: 'shutoff-head' }>;

/** The power test with the least doubt, or undefined where power was not measured. */
export const bestPowerTest = ({ tests }: Model): Power | undefined =>
  tests.flatMap((test) => (test.kind === 'power' ? [test] : [])).toSorted((a, b) => a.doubtW - b.doubtW)[0];

/** The test of the shut-off head with the least doubt, or undefined where it was not measured. */
export const bestShutoffTest = ({ tests }: Model): Shutoff | undefined =>
  tests
    .flatMap((test) => (test.kind === 'shutoff-head' ? [test] : []))
    .toSorted((a, b) => a.doubtM - b.doubtM)[0];
