/**
 * Opens the records in a folder and writes a job, as whoever runs it. Prints what came of it, as JSON. Run with the
 * folder and, where a driver is to be used, its name.
 */
import { StoreFailure } from '../contract/failure.ts';
import { openStore } from '../open.ts';
import { by, titled } from './bench.ts';

const [folder = '', driver] = process.argv.slice(2);
const named = driver === 'libsql' || driver === 'node:sqlite' ? { driver } : {};
try {
  const store = await openStore({ folder, ...named });
  await store.jobs.create({ document: titled('Written'), by });
  await store.close();
  process.stdout.write(JSON.stringify({ ok: true }));
} catch (error) {
  if (!(error instanceof StoreFailure)) throw error;
  const { code, message, advice } = error;
  process.stdout.write(JSON.stringify({ ok: false, code, message, advice }));
}
