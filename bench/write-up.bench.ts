import { toPdf } from '../packages/writeup/forms/pdf/pdf.ts';
import { withFortyDrawings } from '../packages/writeup/testing/manyDrawings.ts';
import type { Benchmark } from './benchmark.ts';

const runs = 12;

// The typesetter keeps what it has set: every run gets drawings of its own.
const documents = Array.from({ length: 2 * runs }, (_, run) => withFortyDrawings(`-${run}`));
let next = 0;

/** A build sheet with more than forty drawings, set as a tagged PDF; the typesetter is loaded already. */
const writeUpBenchmark: Benchmark = {
  name: 'write-up',
  unit: 'ms',
  runs,
  ours: () => toPdf(documents[next++ % documents.length]!, 'a4').byteLength,
};

export default writeUpBenchmark;
