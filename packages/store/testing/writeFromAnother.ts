/**
 * A second program at the same records: opens them, writes jobs of its own and changes job 1, as often as it is told.
 * Prints the numbers and revisions that were acknowledged, as JSON. Run with folder, name, and how often.
 */
import { openStore } from '../open.ts';
import { jobOf, titled } from './bench.ts';

const [folder = '', by = '', often = ''] = process.argv.slice(2);
const store = await openStore({ folder });
const numbers: number[] = [];
const revisions: (readonly [revision: number, title: string])[] = [];
for (let count = 0; count < Number(often); count++) {
  numbers.push((await store.jobs.create({ document: jobOf(), by })).number);
  const title = `Change ${count} of ${by}`;
  let base = 1;
  for (;;) {
    const ended = await store.jobs.revise({ number: 1, base, document: titled(title), by });
    if (ended.ok) {
      revisions.push([ended.revision, title]);
      break;
    }
    if (ended.reason === 'stale') base = ended.current.revision;
  }
}
await store.close();
process.stdout.write(JSON.stringify({ numbers, revisions }));
