import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { inventedPicture } from '../scripts/records/inventedPictures.ts';
import { demo, demos, fettle, fettleProcess, fileWith } from './support/program.ts';
import { edit, newWorkshop, unwrapped, workshopWithDrum } from './support/workshop.ts';

test('a job’s whole life by commands: taken in, worked on, looked back at, taken away', async () => {
  const { told, json, path, data } = newWorkshop();
  expect(await told('jobs')).toContain('no jobs in');
  expect(await told('jobs')).toContain('fettle new --out job.yaml');
  expect(existsSync(data), 'looking makes no folder').toBe(false);

  expect(await told('import', demo('tall-drum'))).toContain('as job 1. Next: fettle open 1');
  const opened = await told('open', '1');
  expect(opened).toContain('Job 1, revision 1: Tall drum');
  expect(opened).toMatch(/633 L\/h flows.*Worst fault: .*Revisions.*taken in.*Next Test it as found/);

  const file = path('job.yaml');
  await told('open', '1', '--out', file);
  edit(file, 'received: 2026-11-02', 'stage: planned\n  tags: [club, urgent]\n  received: 2026-11-02');
  edit(file, 'feed: 1.5 g/d', 'feed: 1.9 g/d');
  expect(await told('import', file)).toContain(
    'Job 1 is now at revision 2, changed in job.stage, job.tags, tank.feed.',
  );
  expect(await told('import', file)).toContain('nothing was written');
  expect(await told('jobs')).toMatch(/1 planned 2026-11-20 .*\[club, urgent\].*1 job\./);

  writeFileSync(path('gap.png'), inventedPicture(4));
  expect(await told('attach', '1', path('gap.png'), '--caption', 'The gap')).toContain(
    'Attached 1 photograph to job 1',
  );
  expect(await told('open', '1')).toMatch(/Photographs .* gap\.png, 48 × 36: The gap/);

  const { revisions, photographs, document, next } = await json('open', '1');
  expect(revisions.map(({ kind }: { kind: string }) => kind)).toEqual(['taken-in', 'edited']);
  expect(photographs).toHaveLength(1);
  expect(document.job.stage).toBe('planned');
  expect(next).toContain('Quote it');

  expect(await told('undo', '1')).toContain('as it was at revision 1, as its new revision 3');
  expect((await json('open', '1')).document.job.stage).toBeUndefined();
  expect(await told('undo', '1')).toContain('as it was at revision 2, as its new revision 4');
  expect(await told('put-away', '1')).toContain('put away');
  expect(await told('jobs')).toContain('All jobs are put away');
  expect(await told('jobs', '--put-away')).toContain('Tall drum');
  await told('bring-back', '1');
  expect(await told('jobs')).toContain('1 job.');
});

describe('the list of jobs', () => {
  test('finds by words, stage, tag and family; pages; keeps to 80 columns', async () => {
    const { run, json, told } = newWorkshop();
    await told('import', ...demos);
    const numbers = async (...words: readonly string[]) =>
      (await json('jobs', ...words)).jobs.map(({ number }: { number: number }) => number).toSorted();
    expect((await json('jobs')).total).toBe(demos.length);
    expect(await numbers('drum')).toEqual(
      (await json('jobs', 'DRUM')).jobs.map(({ number }: { number: number }) => number).toSorted(),
    );
    expect((await numbers('slow', 'tall')).length).toBe(1);
    expect(await numbers('--family', 'hang-on-back')).toHaveLength(1);
    expect(await numbers('--stage', 'closed')).toEqual([]);
    expect(await told('jobs', '--tag', 'nothing')).toContain('No job matches');
    const page = await json('jobs', '--order', 'number', '--count', '2', '--skip', '1');
    expect([page.total, page.jobs.length]).toEqual([demos.length, 2]);
    expect(await told('jobs', '--count', '2')).toContain(
      `1 to 2 of ${demos.length} jobs. The next: --skip 2.`,
    );
    for (const line of (await run('jobs')).out.split('\n'))
      expect([...line].length, line).toBeLessThanOrEqual(80);
  });

  test('takes titles of any length and script, and carries out nothing that they hold', async () => {
    const { run, told } = newWorkshop();
    const document = parse(readFileSync(demo('tall-drum'), 'utf8'));
    const titles = [
      'x'.repeat(190),
      '濾過器'.repeat(40),
      '\u001b[2J\u001b[31mred',
      'Фильтр '.repeat(20).trim(),
    ];
    for (const [place, title] of titles.entries())
      await told(
        'import',
        fileWith(JSON.stringify({ ...document, job: { number: place + 1, title } }), 'job.json'),
      );
    for (const words of [['jobs'], ['open', '3']]) {
      const { out } = await run(...words);
      expect(out).not.toContain('\u001b');
      for (const line of out.split('\n')) expect([...line].length, line).toBeLessThanOrEqual(80);
    }
  });
});

describe('opening a job', () => {
  test('--yaml prints a job file that reads as the same job', async () => {
    const { run, json } = await workshopWithDrum();
    const { out } = await run('open', '1', '--yaml');
    expect(parse(out)).toEqual((await json('open', '1')).document);
    expect((await fettle('check', fileWith(out))).code).toBe(0);
  });

  test('an earlier revision is shown as it was', async () => {
    const { told, json, path } = await workshopWithDrum();
    await told('open', '1', '--out', path('job.yaml'));
    edit(path('job.yaml'), '180 L', '200 L');
    await told('import', path('job.yaml'));
    expect((await json('open', '1', '--revision', '1')).document.tank.volume).toContain('180 L');
    expect(await told('open', '1', '--revision', '1')).toContain('Job 1, as of revision 1 of 2');
  });

  test('lays photographs down as files, the same as were kept', async () => {
    const { told, json, path } = await workshopWithDrum();
    for (const seed of [1, 2]) {
      writeFileSync(path(`p${seed}.png`), inventedPicture(seed));
      await told('attach', '1', path(`p${seed}.png`));
    }
    const { files } = await json('open', '1', '--photographs', path('pictures'));
    expect(readdirSync(path('pictures')).toSorted()).toEqual(
      files.map((file: string) => file.split('/').at(-1)).toSorted(),
    );
    expect(files).toHaveLength(2);
    for (const file of files) expect(readFileSync(file).length).toBeGreaterThan(100);
  });

  test.each(['assess', 'claims', 'check'])('%s takes a number as well as a file', async (command) => {
    const { run } = await workshopWithDrum();
    expect(await run(command, '1', '--json')).toEqual(await fettle(command, demo('tall-drum'), '--json'));
    expect((await run(command, '1')).out).toBe((await fettle(command, demo('tall-drum'))).out);
  });

  test('plan takes a number too', async () => {
    const { run } = await workshopWithDrum();
    const words = ['--cap', '20', '--json'];
    expect(await run('plan', '1', ...words)).toEqual(await fettle('plan', demo('tall-drum'), ...words));
  });
});

describe('importing where the job is there already', () => {
  test('another file of its number is refused, with both ways named', async () => {
    const { run, told, json } = await workshopWithDrum();
    const other = fileWith(readFileSync(demo('tall-drum'), 'utf8').replace('180 L', '240 L'));
    const { code, err } = await run('import', other);
    expect(code).toBe(2);
    expect(unwrapped(err)).toMatch(
      /differs from job 1 .* in tank\.volume; nothing was written\. Allowed: --revise .*--new/,
    );
    expect(await told('import', other, '--new')).toContain('as job 2');
    expect(await told('import', other, '--revise')).toMatch(
      /revision 2, changed in tank\.volume\. .* took the place of revision 1/,
    );
    expect((await json('open', '1')).document.tank.volume).toContain('240 L');
    expect((await json('open', '2')).document.job.number).toBe(2);
  });

  test('two changes of one revision: the second is told what changed, and --merge takes both', async () => {
    const { run, told, json, path } = await workshopWithDrum();
    for (const name of ['mine.yaml', 'yours.yaml']) await told('open', '1', '--out', path(name));
    edit(path('mine.yaml'), '180 L', '200 L');
    edit(path('yours.yaml'), 'feed: 1.5 g/d', 'feed: 2.5 g/d');
    await told('import', path('mine.yaml'));
    const { code, err } = await run('import', path('yours.yaml'));
    expect(code).toBe(2);
    expect(unwrapped(err)).toMatch(
      /since revision 1.*at revision 2.*tank\.volume: 180 L.* -> 200 L.*tank\.feed.*--merge/,
    );
    expect((await json('open', '1')).revision).toBe(2);
    expect(await told('import', path('yours.yaml'), '--merge')).toContain(
      'revision 3, with the changes of both',
    );
    const { tank } = (await json('open', '1')).document;
    expect([tank.volume, tank.feed]).toEqual([
      expect.stringContaining('200 L'),
      expect.stringContaining('2.5 g/d'),
    ]);
  });

  test('two changes of one field: --merge does not choose, and nothing is written', async () => {
    const { run, told, json, path } = await workshopWithDrum();
    for (const [name, volume] of [
      ['mine.yaml', '200 L'],
      ['yours.yaml', '220 L'],
    ] as const) {
      await told('open', '1', '--out', path(name));
      edit(path(name), '180 L', volume);
    }
    await told('import', path('mine.yaml'));
    const { code, err } = await run('import', path('yours.yaml'), '--merge');
    expect(code).toBe(2);
    expect(unwrapped(err)).toMatch(/Both changed tank\.volume \(there 200 L.*, in the file 220 L.*\)/);
    expect((await json('open', '1')).revision).toBe(2);
  });

  test('a file that began in another workshop’s job of the same number is not taken for a change of this one', async () => {
    const [here, there] = [await workshopWithDrum(), newWorkshop()];
    const other = fileWith(readFileSync(demo('corner-box'), 'utf8').replace(/number: \d+/, 'number: 1'));
    await there.told('import', other);
    await there.told('open', '1', '--out', there.path('job.yaml'));
    const { code, err } = await here.run('import', there.path('job.yaml'));
    expect(code).toBe(2);
    expect(unwrapped(err)).toContain('differs from job 1');
  });
});

describe('importing several files', () => {
  test('all problems of all files are told, and nothing is written', async () => {
    const { run, data } = newWorkshop();
    const bad = [fileWith('fettle: 1', 'a.yaml'), fileWith('fettle: [', 'b.yaml')];
    const { code, err } = await run('import', demo('tall-drum'), ...bad, 'no-such.yaml');
    expect(code).toBe(2);
    expect(unwrapped(err)).toMatch(/a\.yaml.*: tank is missing.*b\.yaml.*YAML.*no-such\.yaml cannot be read/);
    expect(existsSync(data)).toBe(false);
  });

  test('files without a number do not take that of another file', async () => {
    const { json, told } = newWorkshop();
    const text = readFileSync(demo('corner-box'), 'utf8');
    const none = fileWith(text.replace(/^ *number: \d+\n/m, '').replace(/title: .*/, 'title: Another'));
    const first = fileWith(text.replace(/number: \d+/, 'number: 1'), 'first.yaml');
    expect(await told('import', none, first)).toContain('2 files: 2 taken in.');
    expect((await json('jobs')).total).toBe(2);
  });

  test('a file without a number is taken in once, until it is said that it is another filter', async () => {
    const { told, json, path } = newWorkshop();
    const file = path('none.yaml');
    writeFileSync(file, readFileSync(demo('corner-box'), 'utf8').replace(/^ *number: \d+\n/m, ''));
    expect(await told('import', file)).toContain('as job 1');
    expect(await told('import', file)).toMatch(
      /says the same as job 1, which was taken in on \d{4}-.*; nothing was written\. .* --new takes it in/,
    );
    const [again] = (await json('import', file)).imported;
    expect([again.how, again.number, again.before.changedSince]).toEqual(['there-already', 1, false]);
    expect(await told('import', file, '--new')).toContain('as job 2');
    await told('put-away', '2');
    for (const number of ['1', '2']) {
      await told('open', number, '--out', path(`${number}.yaml`));
      edit(path(`${number}.yaml`), /volume: .*/, 'volume: 77 L');
      await told('import', path(`${number}.yaml`));
    }
    expect(await told('import', file)).toMatch(
      /the same as job 1, .* and was changed since; nothing was written/,
    );
    edit(file, /volume: .*/, 'volume: 78 L');
    expect(await told('import', file)).toContain('as job 3');
  });

  test('two files of one number are told before anything is written', async () => {
    const { run, data } = newWorkshop();
    const { code, err } = await run('import', demo('tall-drum'), demo('tall-drum'));
    expect([code, unwrapped(err)]).toEqual([2, expect.stringContaining('both say that they are job 1')]);
    expect((await run('jobs', '--json', '--data', data)).out).toContain('"total": 0');
  });

  test('- reads a job from standard input', async () => {
    const { data, json } = newWorkshop();
    const input = readFileSync(demo('two-halves'));
    const { code, out } = fettleProcess(['import', '-', '--data', data], { input });
    expect([code, out]).toEqual([0, expect.stringContaining('Took in standard input as job')]);
    expect((await json('jobs')).total).toBe(1);
  });
});
