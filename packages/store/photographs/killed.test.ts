import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { document, newFolder, newStore } from '../plainFiles/testing/workshop.ts';
import { mostPictures } from './attachments.ts';

const rounds = Number(process.env.KILL_ROUNDS ?? 10);

/** Lets a process add pictures and kills it after so many milliseconds. Gives the lines that it said. */
function killedAfter(folder: string, afterMs: number, seed: number): Promise<readonly string[]> {
  const script = fileURLToPath(new URL('./testing/addPictures.ts', import.meta.url));
  const child = spawn(process.execPath, ['--import', 'tsx', script, folder, String(seed)], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  let said = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    if (said === '') setTimeout(() => child.kill('SIGKILL'), afterMs);
    said += text;
  });
  return new Promise((resolve) => {
    child.on('close', () => resolve(said.split('\n').slice(1, -1)));
  });
}

test(
  'a program killed while it adds pictures leaves no row without its whole file, and loses none that it said',
  async () => {
    let folder = '';
    let acknowledged = new Map<string, string>();
    let most = 0;
    for (let round = 0; round < rounds; round++) {
      // Before a job is full it takes a new one.
      if (round % 10 === 0) {
        folder = join(newFolder(), 'data');
        acknowledged = new Map();
        const first = await newStore(folder);
        await first.jobs.create({ document: document(), by: 'tamsel' });
        await first.close();
      }
      const lines = await killedAfter(folder, Math.random() * 250, round);
      for (const line of lines) acknowledged.set(line.split(' ')[0]!, line.split(' ')[1]!);
      most = Math.max(most, lines.length);

      const store = await newStore(folder);
      expect((await store.checkup({ thorough: true })).faults).toEqual([]);
      expect(await store.attachments.broken()).toEqual([]);
      const list = new Map((await store.attachments.list(1)).map((each) => [each.id, each]));
      expect(list.size).toBeLessThan(mostPictures);
      for (const [id, hash] of acknowledged) {
        expect(list.get(id)?.hash).toBe(hash);
        await store.attachments.read(list.get(id)!, 'whole');
        await store.attachments.read(list.get(id)!, 'thumbnail');
      }
      await store.close();
    }
    // A kill that always came too early would have tried nothing.
    expect(most).toBeGreaterThan(0);
  },
  120_000 + rounds * 5_000,
);
