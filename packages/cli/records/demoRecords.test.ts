import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openStore } from '@fettle/store/open.ts';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { BadInput } from '../exits.ts';
import { demoNamed, layDemoRecords, mainDemo } from './demoRecords.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'fettle-demo-records-'));
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const { document } = demoNamed(mainDemo);
const ownFilter = { ...document, filter: { ...document.filter, name: 'A filter of my own' } };

const takeIn = async (taken: typeof document): Promise<void> => {
  const store = await openStore({ folder });
  await store.jobs.create({ document: taken, by: 'anna' });
  await store.close();
};

const numbers = async (): Promise<readonly number[]> => {
  const store = await openStore({ folder });
  const found = await store.jobs.numbers();
  await store.close();
  return found;
};

describe('the demo jobs of the workbench', () => {
  test('are laid once, and what was taken in beside them is kept at the next start', async () => {
    const first = await layDemoRecords(folder, document);
    const there = await numbers();
    await takeIn(ownFilter);
    expect(await layDemoRecords(folder, document)).toBe(first);
    expect(await numbers()).toHaveLength(there.length + 1);
  });

  test('never come among the jobs of a workshop', async () => {
    await takeIn(ownFilter);
    await expect(layDemoRecords(folder, document)).rejects.toThrow(BadInput);
    expect(await numbers()).toHaveLength(1);
  });
});
