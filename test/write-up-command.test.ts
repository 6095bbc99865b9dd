import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { demo, fettle, newFolder } from './support/program.ts';

const filesIn = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1))
    .toSorted();

describe('fettle writeup', () => {
  test('writes everything that leaves the workshop, and the same again', async () => {
    const folder = join(newFolder(), 'written', 'up');
    const told = await fettle('writeup', demo('handed-back'), '--out', folder);
    expect(told.code, told.err).toBe(0);
    const files = filesIn(folder);
    for (const file of [
      'sheet-a4.pdf',
      'sheet-letter.pdf',
      'sheet.html',
      'sheet.md',
      'build.pdf',
      'care.pdf',
      'quote.pdf',
      'preview.png',
      'drawings/water-path.svg',
      'drawings/water-path.png',
    ])
      expect(files).toContain(file);
    const before = files.map((file) => readFileSync(join(folder, file)));
    const again = JSON.parse((await fettle('writeup', demo('handed-back'), '--out', folder, '--json')).out);
    expect(again.files.map(({ path }: { path: string }) => path).toSorted()).toEqual(files);
    expect(again.notes).toEqual([]);
    files.forEach((file, at) => {
      expect(Buffer.compare(readFileSync(join(folder, file)), before[at]!), file).toBe(0);
    });
    expect(filesIn(folder)).toEqual(files);
  });

  test('keeps own words in their place, and tells of words that have none', async () => {
    const folder = newFolder();
    const job = join(folder, 'job.yaml');
    const words = `  words:\n    summary: { instead: "It came in slow.\\n\\nIt is not slow any more." }\n    sumary: { after: "Lost." }\n`;
    writeFileSync(job, `${readFileSync(demo('corner-box'), 'utf8')}writeUp:\n${words}`);
    const told = await fettle('writeup', job, '--out', folder);
    expect(told.code).toBe(0);
    expect(told.out.replace(/\s+/g, ' ')).toContain(
      'writeUp.words.sumary: nothing that is published has a paragraph of that name; there is summary.',
    );
    const text = readFileSync(join(folder, 'sheet.md'), 'utf8');
    expect(text).toContain('\n\nIt came in slow.\n\nIt is not slow any more.\n\n');
    expect(text).not.toContain('Lost.');
    expect(readFileSync(join(folder, 'sheet.html'), 'utf8')).toContain('It is not slow any more.');
  });

  test('tells of a job that nobody filled in that its figures are of an invented filter', async () => {
    const folder = newFolder();
    const job = join(folder, 'job.yaml');
    await fettle('new', '--family', 'basket-stack-canister', '--out', job);
    const told = await fettle('writeup', job, '--out', join(folder, 'sheets'));
    expect(told.code, told.err).toBe(0);
    expect(told.out.replace(/\s+/g, ' ')).toContain(
      'These fields still say what fettle new wrote, figures of an invented filter: ',
    );
    const { notes } = JSON.parse((await fettle('writeup', job, '--out', folder, '--json')).out);
    expect(notes).toEqual([expect.stringContaining('figures of an invented filter')]);
  });

  test('refuses a folder that is a file, and leaves the file as it was', async () => {
    const file = join(newFolder(), 'taken');
    writeFileSync(file, 'mine');
    const told = await fettle('writeup', demo('corner-box'), '--out', file);
    expect(told.code).toBe(2);
    expect(told.err).toContain('cannot be written');
    expect(readFileSync(file, 'utf8')).toBe('mine');
  });

  test('refuses a file of its own name that is a folder, and leaves nothing half written beside it', async () => {
    const folder = newFolder();
    mkdirSync(join(folder, 'sheet-a4.pdf'));
    const told = await fettle('writeup', demo('corner-box'), '--out', folder);
    expect(told.code).toBe(2);
    expect(told.err).toContain('sheet-a4.pdf');
    expect(readdirSync(folder)).toEqual(['sheet-a4.pdf']);
  });

  test.each([
    ['an unknown paper', ['--paper', 'a3'], 'a4, letter'],
    ['no folder', [], '--out'],
  ])('refuses %s with a sentence', async (_what, words, says) => {
    const told = await fettle(
      'writeup',
      demo('corner-box'),
      ...words,
      ...(words.length > 0 ? ['--out', 'x'] : []),
    );
    expect(told.code).toBe(2);
    expect(told.err).toContain(says);
    expect(existsSync('x')).toBe(false);
  });

  test('refuses a job that does not read, and writes nothing', async () => {
    const folder = newFolder();
    const job = join(folder, 'job.yaml');
    writeFileSync(job, `${readFileSync(demo('corner-box'), 'utf8')}writeUp: { language: none-of-these }\n`);
    const told = await fettle('writeup', job, '--out', join(folder, 'out'));
    expect(told.code).toBe(2);
    expect(told.err).toContain('writeUp.language');
    expect(existsSync(join(folder, 'out'))).toBe(false);
  });
});
