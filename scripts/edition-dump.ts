/**
 * Prints a database of the current edition of the tables, filled with sample records, as statements. Run once for
 * every edition that is released:
 * `npx tsx scripts/edition-dump.ts > packages/store/migrations/testing/edition-1.sql`.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { dumpOf } from '@fettle/store/migrations/testing/dump.ts';
import { writeSampleRecords } from '@fettle/store/migrations/testing/sampleRecords.ts';
import { openStore } from '@fettle/store/open.ts';
import { openFile } from '@fettle/store/sqlite/driver.ts';

const folder = mkdtempSync(join(tmpdir(), 'fettle-edition-'));
try {
  const store = await openStore({ folder, clock: () => new Date('2026-11-02T09:00:00Z') });
  await writeSampleRecords(store);
  await store.close();
  const file = openFile(join(folder, 'fettle.db'));
  process.stdout.write(dumpOf(file));
  file.close();
} finally {
  rmSync(folder, { recursive: true, force: true });
}
