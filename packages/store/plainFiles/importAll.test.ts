import { mkdirSync, readFileSync, renameSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import sharp from 'sharp';
import { beforeEach, describe, expect, test } from 'vitest';
import type { Store } from '../contract/store.ts';
import { hashOf } from '../files/durable.ts';
import { telephonePicture } from '../photographs/testing/pictures.ts';
import { exportAll } from './exportAll.ts';
import { type Imported, importAll } from './importAll.ts';
import type { ExportManifest } from './layout.ts';
import { filesIn, fillWorkshop, newFolder, newStore } from './testing/workshop.ts';

let from: string;
let store: Store;

beforeEach(async () => {
  const full = await newStore();
  await fillWorkshop(full);
  from = join(newFolder(), 'out');
  await exportAll({ store: full, to: from });
  store = await newStore();
});

const revision = 'jobs/000001/revisions/0002.yaml';

/** Changes the list of files. */
function relist(change: (manifest: ExportManifest & Record<string, unknown>) => unknown): void {
  const path = join(from, 'export.json');
  const manifest = JSON.parse(readFileSync(path, 'utf8'));
  writeFileSync(path, JSON.stringify(change(manifest) ?? manifest));
}

/** Puts other bytes in the place of a file and lists them as if they belonged there. */
function forge(path: string, bytes: Uint8Array | string): void {
  writeFileSync(join(from, path), bytes);
  const sha256 = hashOf(bytes);
  relist((manifest) => {
    manifest.files[path] = { bytes: Buffer.byteLength(bytes), sha256 };
  });
}

function forgeText(path: string, change: (text: string) => string): void {
  forge(path, change(readFileSync(join(from, path), 'utf8')));
}

/** The import is refused in one sentence, and nothing is in the store. */
async function refused(says: RegExp): Promise<void> {
  const result: Imported = await importAll({ store, from, by: 'orlinde' });
  expect(result.ok).toBe(false);
  if (!result.ok) expect(`${result.problems[0]?.path} ${result.problems[0]?.says}`).toMatch(says);
  expect(await store.jobs.numbers()).toEqual([]);
  expect(await store.deeds.list({})).toEqual([]);
  expect(await store.books.revisions('settings')).toEqual([]);
}

describe('an export that is not whole is refused, and nothing is written', () => {
  test('a folder that is none', async () => {
    from = join(newFolder(), 'nothing');
    await refused(/there is no such folder/);
    from = newFolder();
    await refused(/export\.json is missing/);
  });

  test('a file is missing, changed, cut short or longer', async () => {
    const path = join(from, revision);
    const bytes = readFileSync(path);
    for (const other of [
      bytes.subarray(1),
      Buffer.concat([bytes, bytes]),
      Buffer.from(bytes).fill('x', 0, 1),
    ]) {
      writeFileSync(path, other);
      await refused(/0002\.yaml was changed since it was exported/);
    }
    rmSync(path);
    await refused(/0002\.yaml is missing/);
  });

  test.each([
    '../outside.yaml',
    'jobs/000001/../../outside.yaml',
    '/etc/passwd',
    'jobs/000001/revisions/..',
    'C:\\outside.yaml',
    'jobs\\000001\\job.yaml',
    'export.json',
    'constructor',
    'jobs/000001/photographs/../../../a.jpg',
    'jobs/000001/photographs/aaaaaaaaaaaaaaaa.svg',
  ])('the list names %s', async (path) => {
    const text = readFileSync(join(from, 'export.json'), 'utf8');
    const entry = `${JSON.stringify(path)}: {"bytes": 1, "sha256": "${'a'.repeat(64)}"}`;
    writeFileSync(join(from, 'export.json'), text.replace('"files": {', `"files": {${entry},`));
    await refused(/export\.json is not the list of an export|is missing/);
  });

  test('a link stands for a file or for a folder', async () => {
    const outside = join(newFolder(), 'outside');
    renameSync(join(from, revision), outside);
    symlinkSync(outside, join(from, revision));
    await refused(/0002\.yaml is missing/);
    renameSync(outside, join(from, revision.replace('0002', '0009')));
    rmSync(join(from, revision));
    renameSync(join(from, revision.replace('0002', '0009')), join(from, revision));
    renameSync(join(from, 'jobs'), outside);
    symlinkSync(outside, join(from, 'jobs'));
    await refused(/is missing/);
  });

  test('the list is of another edition, not JSON, not a list, or not UTF-8', async () => {
    relist((manifest) => ({ ...manifest, fettleExport: 2 }));
    await refused(/an edition that this version does not know/);
    for (const text of ['{', '[]', 'null', '"x"', '{"fettleExport": 1}', Buffer.from([0xff, 0xfe, 0x7b])]) {
      writeFileSync(join(from, 'export.json'), text);
      await refused(/export\.json is/);
    }
  });

  test('the list counts more than there is', async () => {
    relist(({ counts, ...rest }) => ({ ...rest, counts: { ...counts, revisions: 99 } }));
    await refused(/counts 99 revisions/);
  });

  test('a job file is huge, not UTF-8, a bomb of aliases, too deep, or no job', async () => {
    forge(revision, `fettle: 1\nnotes: ${'x'.repeat(100_000_000)}\n`);
    await refused(/at most 2000000/);
    forge(revision, Buffer.from([0x66, 0xff, 0xfe]));
    await refused(/0002\.yaml /);
    forge(revision, 'a: &a [x, x]\nb: &b [*a, *a]\nc: [*b, *b]\n');
    await refused(/0002\.yaml .*(?:anchor|alias)/i);
    forge(revision, '['.repeat(100_000));
    await refused(/0002\.yaml /);
    forge(revision, '{}');
    await refused(/is not a job document/);
    forge(revision, '!!js/function "x"');
    await refused(/0002\.yaml /);
  });

  test('a job file says another number, or has a field that no job has', async () => {
    forgeText(revision, (text) => text.replace('number: 1', 'number: 2'));
    await refused(/is not of job 1/);
    forgeText(revision, (text) => text.replace('number: 2', 'number: 1').replace('tank:', 'tonk:'));
    await refused(/0002\.yaml /);
  });

  test('a table has other columns, a row too few, or cells that cannot be', async () => {
    const path = 'jobs/000001/revisions.csv';
    forgeText(path, (text) => text.replace('"kind"', '"sort"'));
    await refused(/is not a table with the columns revision, at/);
    forgeText(path, (text) => text.replace('"sort"', '"kind"').replace('"put-away"', '"burnt"'));
    await refused(/row 4 does not hold what it should/);
    forgeText(path, (text) => text.replace('"burnt"', '"put-away"').replace('"4"', '"5"'));
    await refused(/row 4 does not hold what it should/);
    forgeText('log.csv', (text) => text.replace(/2026-/g, '20-'));
    await refused(/revisions\.csv row 4/);
  });

  test.each([
    ['log.csv', '"2"', '"1"'],
    ['jobs/004711/readings.csv', undefined, undefined],
    ['jobs/004711/photographs.csv', undefined, undefined],
  ])('two rows of %s have one id', async (path, second, first) => {
    const text = readFileSync(join(from, path), 'utf8');
    const ids = [...text.matchAll(/"[a-z0-9]{16}"/g)].map(([id]) => id);
    const forged = text.replace(second ?? ids[1] ?? '', first ?? ids[0] ?? '');
    expect(forged).not.toBe(text);
    forge(path, forged);
    await refused(/\.csv row 2 has the id \w+ of a row before it; each row must have its own/);
  });

  test('settings that are none', async () => {
    forge('settings/0001.yaml', 'workshop: [1]\n');
    await refused(/settings\/0001\.yaml /);
  });
});

describe('photographs in a forged export', () => {
  function photograph(): string {
    return [...filesIn(from).keys()].find(
      (name) => name.startsWith('jobs/004711/') && name.endsWith('.jpg'),
    )!;
  }

  test('with place and maker in them are written anew', async () => {
    forge(photograph(), await telephonePicture(80, 60));
    expect(await importAll({ store, from, by: 'x' })).toMatchObject({ ok: true });
    for (const attachment of await store.attachments.list(4711)) {
      const { bytes } = await store.attachments.read(attachment, 'whole');
      expect((await sharp(bytes).metadata()).exif).toBeUndefined();
      expect(Buffer.from(bytes).includes('Invented')).toBe(false);
    }
    expect(await store.attachments.broken()).toEqual([]);
  });

  test('with a page behind the picture lose the page', async () => {
    const path = photograph();
    forge(path, Buffer.concat([readFileSync(join(from, path)), Buffer.from('<script>alert(1)</script>')]));
    await importAll({ store, from, by: 'x' });
    const all = await Promise.all(
      (await store.attachments.list(4711)).map((each) => store.attachments.read(each, 'whole')),
    );
    for (const { bytes } of all) expect(Buffer.from(bytes).includes('script')).toBe(false);
  });

  test('that are none keep their job out, and the others come in', async () => {
    forge(photograph(), '<svg xmlns="http://www.w3.org/2000/svg"/>');
    expect(await importAll({ store, from, by: 'x' })).toMatchObject({
      ok: true,
      jobs: [
        { number: 1, result: 'laid' },
        { number: 4711, result: 'refused', says: expect.stringContaining('an SVG drawing') },
      ],
    });
    expect(await store.jobs.numbers()).toEqual([1]);
  });
});

test('a revision that reads no more comes in with its job, and is told', async () => {
  const path = 'jobs/004711/revisions/0001.yaml';
  forgeText(path, (text) => text.replace(/^( +baskets:).*$/m, '$1 many'));
  const imported = await importAll({ store, from, by: 'x' });
  expect(imported).toMatchObject({ ok: true });
  const job = imported.ok ? imported.jobs.find(({ number }) => number === 4711) : undefined;
  expect(job).toMatchObject({ result: 'laid', says: expect.stringMatching(/^Revision 1 does not read: /) });
});

test('no mutation of an export brings the program down or leaves half a job', async () => {
  const names = [...filesIn(from).keys()];
  const sound = filesIn(from);
  const hit = fc.record({
    name: fc.constantFrom(...names),
    at: fc.nat(),
    bytes: fc.uint8Array({ minLength: 1, maxLength: 8 }),
    listed: fc.boolean(),
  });
  await fc.assert(
    fc.asyncProperty(hit, async ({ name, at, bytes, listed }) => {
      for (const [path, whole] of sound) writeFileSync(join(from, path), whole);
      const mutant = Buffer.from(sound.get(name)!);
      mutant.set(bytes.subarray(0, mutant.length - (at % mutant.length)), at % mutant.length);
      if (listed && name !== 'export.json') forge(name, mutant);
      else writeFileSync(join(from, name), mutant);
      const fresh = await newStore();
      const result = await importAll({ store: fresh, from, by: 'x' });
      const numbers = await fresh.jobs.numbers();
      if (result.ok) expect(numbers.length).toBe(result.jobs.filter((job) => job.result === 'laid').length);
      else expect(numbers).toEqual([]);
      expect(await fresh.attachments.broken()).toEqual([]);
      await fresh.close();
    }),
    { numRuns: 25 },
  );
});

test('a folder may be named by a link, and files that are not of the export are passed over', async () => {
  mkdirSync(join(from, 'mine'));
  writeFileSync(join(from, 'mine', 'note.txt'), 'mine');
  const link = join(newFolder(), 'link');
  symlinkSync(from, link);
  expect(await importAll({ store, from: link, by: 'x' })).toMatchObject({ ok: true });
});
