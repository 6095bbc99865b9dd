import { appendFileSync, existsSync, symlinkSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { inventedPicture } from '../scripts/records/inventedPictures.ts';
import { demo, fileWith, newFolder } from './support/program.ts';
import { edit, newWorkshop, unwrapped, workshopWithDrum } from './support/workshop.ts';

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

describe('an export that differs from the records', () => {
  test('is told with what differs and how it comes across, and nothing is written', async () => {
    const { told, run, json, path } = await workshopWithDrum();
    await told('readings', '1', 'add', 'ammonia', '0.25 mg/L');
    writeFileSync(path('a.png'), inventedPicture(3));
    const { attached } = JSON.parse((await run('attach', '1', path('a.png'), '--json')).out);
    await told('export', '--out', path('out'));
    await told('readings', '1', 'add', 'ammonia', '0.5 mg/L');
    await told('photographs', '1', 'caption', attached[0].id, 'The gap');
    const before = await json('open', '1');
    const { code, out } = await run('import', path('out'));
    const says = unwrapped(out);
    expect(code).toBe(2);
    expect(says).toContain(
      'Job 1 was left alone: it differs from what is here in its readings (1 here alone)',
    );
    expect(says).toContain('photographs (1 with other content)');
    expect(says).toContain('fettle photographs 1 caption');
    expect(says, 'the export has no reading that is not here').not.toContain('fettle readings 1 add');
    expect(says).not.toContain('--revise');
    const [{ jobs }] = JSON.parse((await run('import', path('out'), '--json')).out).exports;
    expect(jobs[0].differs).toEqual([
      { part: 'readings', inExport: 0, here: 1, changed: 0 },
      { part: 'photographs', inExport: 0, here: 0, changed: 1 },
    ]);
    expect(await json('open', '1')).toEqual(before);
  });

  test('in its revisions comes across by the way that is told', async () => {
    const { told, run, json, path } = await workshopWithDrum();
    await told('export', '--out', path('out'));
    await told('open', '1', '--out', path('job.yaml'));
    edit(path('job.yaml'), '180 L', '200 L');
    await told('import', path('job.yaml'));
    const says = unwrapped((await run('import', path('out'))).out);
    expect(says).toContain('revisions (1 here alone)');
    expect(says).toContain('fettle import jobs/000001/job.yaml --revise');
    await told('import', path('out/jobs/000001/job.yaml'), '--revise');
    expect((await json('open', '1')).document.tank.volume).toContain('180 L');
  });
});

test('a picture that the job has already is told with its id', async () => {
  const { told, run, path } = await workshopWithDrum();
  writeFileSync(path('a.png'), inventedPicture(3));
  const [first] = JSON.parse((await run('attach', '1', path('a.png'), '--json')).out).attached;
  expect(first).toMatchObject({ id: expect.stringMatching(/^[a-z0-9]{16}$/), sameAs: [] });
  const says = unwrapped(await told('attach', '1', path('a.png')));
  expect(says).toContain(`there already, the same picture, as ${first.id}`);
  const { photographs } = JSON.parse((await run('photographs', '1', '--json')).out);
  expect(says).toContain(photographs[1].id);
});
