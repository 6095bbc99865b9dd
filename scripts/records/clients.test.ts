import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startServer } from '@fettle/server/start.ts';
import { openStore } from '@fettle/store/open.ts';
import { expect, test } from 'vitest';
import { chanceFrom } from './chance.ts';
import { type Client, newDesk, putAwayOrBringBack, rewrite, takeIn } from './clients.ts';
import { newLedger } from './ledger.ts';
import { lossesIn } from './losses.ts';

test('a job that one client puts away after another has changed it is no loss', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-clients-'));
  try {
    const server = await startServer({ folder, port: 0 });
    const ledger = newLedger();
    const client = (seed: number): Client => ({
      address: server.address,
      ledger,
      chance: chanceFrom(seed),
      desk: newDesk(),
    });
    const [one, other] = [client(1), client(2)];
    await takeIn(one);
    for (const [number, job] of one.desk.jobs) other.desk.jobs.set(number, job);
    await rewrite(other);
    await rewrite(one);
    expect(ledger.outrun).toBe(1);
    await putAwayOrBringBack(one);
    await rewrite(one);
    await putAwayOrBringBack(one);
    expect(ledger.acknowledged).toBe(4);
    await server.stop();
    const store = await openStore({ folder });
    expect(await lossesIn(store, ledger)).toEqual([]);
    await store.close();
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
