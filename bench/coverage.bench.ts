import { coverage } from '../packages/engine/doubt/testing/hiddenTruth.ts';
import type { Count } from './benchmark.ts';

const FILTERS = 1000;
const DRAWS = 128;

/** Of a thousand filters with a hidden truth, the share of which the range told holds the volume that is truly served. */
export default {
  name: 'coverage',
  of: `${FILTERS} filters whose hidden truth is drawn from what is stated of them, ${DRAWS} draws each; 0.8 is meant`,
  counts: () => coverage(FILTERS, DRAWS),
  first: 'intervalEnd.servedM3',
} satisfies Count;
