/**
 * Reads many mutated job files and stops at the first that throws or is refused without a proper sentence:
 * `npx tsx scripts/fuzz-job.ts [count] [first seed]`.
 */
import { families } from '@fettle/engine/families/families.ts';
import { newJob } from '@fettle/job/newJob.ts';
import { readJob } from '@fettle/job/read.ts';
import { fullJob } from '@fettle/job/testing/fullJob.ts';
import { mutated } from '@fettle/job/testing/mutate.ts';

const [count = 30_000, first = 1] = process.argv.slice(2).map(Number);

const texts = [JSON.stringify(fullJob, null, 1)];
for (const family of families) {
  const started = newJob(family.id);
  if (started.ok) texts.push(started.text);
}

const codes = new Map<string, number>();
for (let seed = first; seed < first + count; seed++) {
  const text = mutated(texts[seed % texts.length] ?? '', seed);
  const reading = readJob(text);
  for (const { code, says } of reading.ok ? [] : reading.problems) {
    codes.set(code, (codes.get(code) ?? 0) + 1);
    if (!/^[^\n]*\S\.$/.test(says)) throw new Error(`seed ${seed}: ${says}`);
  }
  if (reading.ok) codes.set('reads', (codes.get('reads') ?? 0) + 1);
}
const rows = [...codes].toSorted(([, one], [, other]) => other - one);
for (const [code, times] of rows) console.log(`${String(times).padStart(7)} ${code}`);
