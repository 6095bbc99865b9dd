import { appendFileSync, existsSync, symlinkSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { demo, fileWith, newFolder } from './support/program.ts';
import { newWorkshop, unwrapped, workshopWithDrum } from './support/workshop.ts';

const damagedExport = async (): Promise<string> => {
  const { told, path } = await workshopWithDrum();
  await told('export', '--out', path('out'));
  appendFileSync(path('out/README.txt'), 'more');
  return path('out');
};

describe('a refused import', () => {
  test.each([
    ['of an export in which a file was changed', async () => [await damagedExport()]],
    ['of a job file beside such an export', async () => [demo('tall-drum'), await damagedExport()]],
    ['of a folder that is no export', async () => [newFolder()]],
    ['of an archive that is damaged', async () => [fileWith('PK\u0003\u0004 and then nothing', 'all.zip')]],
    ['of a file that is empty', async () => [fileWith('')]],
    ['of two files that are one job', async () => [fileOfJob(4), fileOfJob(4)]],
  ])('%s begins no records', async (_what, paths) => {
    const { run, data } = newWorkshop();
    const { code } = await run('import', ...(await paths()));
    expect([code, existsSync(data)]).toEqual([2, false]);
  });
});

const fileOfJob = (number: number): string =>
  fileWith(`fettle: 1\njob:\n  number: ${number}\ntank:\n  volume: 180 L\nfilter:\n  family: internal-box\n`);

describe('a backup that cannot go where it should', () => {
  test('names what is in the way', async () => {
    const { run, path } = await workshopWithDrum();
    writeFileSync(path('file'), 'mine');
    symlinkSync(path('away'), path('link'));
    for (const [out, says] of [
      ['file', `${path('file')} is no folder.`],
      ['file/below', `${path('file')} is no folder, or lies in none.`],
      ['link', `${path('link')} is a link that leads nowhere.`],
    ] as const)
      for (const more of [[], ['--list']]) {
        const { code, err } = await run('backup', '--out', path(out), ...more);
        expect([code, unwrapped(err)], `${out} ${more}`).toEqual([
          2,
          expect.stringMatching(/is no folder|leads nowhere/),
        ]);
        if (more.length === 0) expect(unwrapped(err)).toContain(says);
      }
  });

  test('makes the folders on the way to one that is not there yet', async () => {
    const { told, path } = await workshopWithDrum();
    await told('backup', '--out', path('new/deep'));
    expect(existsSync(path('new/deep'))).toBe(true);
  });
});
