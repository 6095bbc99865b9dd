import type { BenchTest, TestState } from '@fettle/engine/model/model.ts';
import type { AssessedState } from '../source.ts';

export type TimedFlow = Extract<BenchTest, { kind: 'timed-volume' }>;

/** The flow that was timed in a state, the surest of several. */
export const timedFlow = (state: AssessedState, of: TestState): TimedFlow | undefined =>
  state.model.tests
    .flatMap((test) => (test.kind === 'timed-volume' && test.state === of ? [test] : []))
    .toSorted((one, other) => one.doubtM3PerS - other.doubtM3PerS)[0];
