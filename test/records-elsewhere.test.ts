import { existsSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { inventedPicture } from '../scripts/records/inventedPictures.ts';
import { demos, fettle } from './support/program.ts';
import { edit, newWorkshop, unwrapped } from './support/workshop.ts';

describe('taking the records elsewhere', () => {
  async function filled() {
    const workshop = newWorkshop();
    await workshop.told('import', ...demos);
    await workshop.told('open', '1', '--out', workshop.path('job.yaml'));
    edit(workshop.path('job.yaml'), '180 L', '200 L');
    await workshop.told('import', workshop.path('job.yaml'));
    writeFileSync(workshop.path('gap.png'), inventedPicture(7));
    await workshop.told('attach', '1', workshop.path('gap.png'));
    return workshop;
  }

  /** All that a workshop holds, as its commands tell it. */
  async function everything({ json }: Awaited<ReturnType<typeof filled>>) {
    const { jobs } = await json('jobs', '--order', 'number');
    const opened = [];
    for (const { number } of jobs) opened.push(await json('open', String(number)));
    return { jobs, opened: opened.map(({ next: _, ...job }) => job) };
  }

  test('a backup of one folder restores into another, and every command says the same', async () => {
    const [here, there] = [await filled(), newWorkshop()];
    expect(await here.told('backup', '--out', here.path('stick'))).toContain(
      'restored it on trial: it is whole',
    );
    expect(await here.told('backup', '--list', '--out', here.path('stick'))).toContain(String(demos.length));
    expect(await there.told('restore', here.path('stick'))).toContain(`Restored ${demos.length} jobs`);
    expect(await everything(there)).toEqual(await everything(here));
    expect((await there.run('checkup', '--thorough')).code).toBe(0);
  });

  test('restore keeps what was there before aside', async () => {
    const { told, json, data } = await filled();
    await told('backup');
    await told('undo', '1');
    const { setAside } = await json('restore');
    expect(existsSync(setAside)).toBe(true);
    expect(setAside.startsWith(join(data, 'fettle.db.'))).toBe(true);
    expect((await json('open', '1')).revision).toBe(2);
  });

  test('an export is plain files, and imported elsewhere it is the same records', async () => {
    const [here, there] = [await filled(), newWorkshop()];
    await here.told('export', '--out', here.path('all'));
    const files = readdirSync(here.path('all'), { recursive: true }).map(String);
    expect(files).toEqual(expect.arrayContaining(['README.txt', 'jobs.csv', 'jobs/000001/job.yaml']));
    expect((await fettle('assess', join(here.path('all'), 'jobs/000001/job.yaml'))).code).toBe(0);
    expect(await there.told('import', here.path('all'))).toContain(`${demos.length} taken in`);
    expect(await everything(there)).toEqual(await everything(here));
    expect(await there.told('import', here.path('all'))).toContain(`${demos.length} there already`);
  });

  test('an export of some jobs holds these alone, and never writes over a folder', async () => {
    const { told, run, json, path } = await filled();
    expect((await json('export', '1', '2', '1', '--out', path('some'))).counts.jobs).toBe(2);
    const again = await run('export', '--out', path('some'));
    expect([again.code, again.err]).toEqual([2, expect.stringContaining('not an empty folder')]);
    expect(readdirSync(join(path('some'), 'jobs'))).toEqual(['000001', '000002']);
    expect(await told('jobs')).toContain(`${demos.length} jobs.`);
  });

  test('an export in which a file was changed is refused whole', async () => {
    const [here, there] = [await filled(), newWorkshop()];
    await here.told('export', '--out', here.path('all'));
    edit(join(here.path('all'), 'jobs/000002/job.yaml'), 'job:', '# by hand\njob:');
    const { code, err } = await there.run('import', here.path('all'));
    expect(code).toBe(2);
    expect(unwrapped(err)).toMatch(/no whole export: jobs\/000002\/job\.yaml was changed/);
    expect((await there.json('jobs')).total).toBe(0);
  });
});
