import { chmodSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { problemsSchema } from '@fettle/workflows/results/problems.ts';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demo, fettleProcess, fileWith, newFolder } from './support/program.ts';
import { unwrapped, type Workshop, workshopWithDrum } from './support/workshop.ts';

const trace = /\n\s+at |node:internal|\.ts:\d+|Error:/;

const large = (bytes: number): string => fileWith(Buffer.alloc(bytes, '# nothing\n'));

/** What is typed, the code of its problem and what the sentence must hold. */
const cases: readonly (readonly [
  what: string,
  words: (at: Workshop) => readonly string[],
  code: string,
  says: RegExp,
])[] = [
  ['a number that is not there', () => ['open', '99'], 'no-such-job', /no job 99.*fettle jobs/],
  ['a number that is none', () => ['open', 'twelve'], 'command-line-invalid-argument', /A job's number/],
  ['the number nought', () => ['open', '0'], 'command-line-invalid-argument', /A job's number/],
  [
    'a revision that is not there',
    () => ['open', '1', '--revision', '7'],
    'no-such-revision',
    /no revision 7.*1 to 1/,
  ],
  [
    'a file to write that is there',
    () => ['open', '1', '--out', fileWith('mine')],
    'file-unwritable',
    /there already/,
  ],
  [
    '--yaml with --out',
    () => ['open', '1', '--yaml', '--out', 'x'],
    'command-line-conflicting-option',
    /--yaml/,
  ],
  ['assessing a number that is not there', () => ['assess', '42'], 'no-such-job', /no job 42/],
  ['planning a number that is not there', () => ['plan', '42'], 'no-such-job', /no job 42/],
  [
    'an unknown stage',
    () => ['jobs', '--stage', 'lost'],
    'command-line-invalid-argument',
    /taken-in, tested/,
  ],
  [
    'an unknown order',
    () => ['jobs', '--order', 'age'],
    'command-line-invalid-argument',
    /promised, changed/,
  ],
  ['a count of nought', () => ['jobs', '--count', '0'], 'command-line-invalid-argument', /1 to 1000/],
  ['a file that is not there', () => ['import', 'no-such.yaml'], 'file-unreadable', /no such file/],
  ['a file name with a NUL', () => ['import', 'a\0b'], 'file-unreadable', /name/],
  ['broken YAML', () => ['import', fileWith('tank: [1,')], 'yaml-syntax', /YAML/],
  ['an empty file', () => ['import', fileWith('')], 'file-empty', /empty/],
  ['100 MB', () => ['import', large(100_000_000)], 'file-too-large', /larger than 2 MB/],
  ['a folder that is no export', () => ['import', newFolder()], 'export-not-whole', /no whole export/],
  [
    'an archive that is damaged',
    () => ['import', fileWith('PK\u0003\u0004 and then nothing', 'all.zip')],
    'archive-unreadable',
    /list of files is missing/,
  ],
  [
    'an archive of the large form',
    () => [
      'import',
      fileWith(
        Buffer.concat([Buffer.from('PK\u0003\u0004PK\u0005\u0006'), Buffer.alloc(18, 0xff)]),
        'all.zip',
      ),
    ],
    'archive-unreadable',
    /ZIP64.*unpack it/,
  ],
  [
    'of several files one that is empty',
    () => ['import', demo('tall-drum'), fileWith('', 'hollow.yaml')],
    'file-empty',
    /hollow\.yaml.*empty/,
  ],
  [
    'of several files one in another encoding',
    () => ['import', demo('tall-drum'), fileWith(Buffer.from([0x61, 0x3a, 0x20, 0xff]), 'foreign.yaml')],
    'file-not-utf8',
    /foreign\.yaml.*UTF-8/,
  ],
  [
    'of several files one with a control character',
    () => ['import', demo('tall-drum'), fileWith('a: \u0007', 'bell.yaml')],
    'file-control-character',
    /bell\.yaml, line 1/,
  ],
  ['nothing to import', () => ['import'], 'command-line-missing-argument', /paths/],
  ['an export without a folder', () => ['export'], 'command-line-missing-mandatory-option-value', /--out/],
  [
    'an export of a job that is not there',
    ({ path }) => ['export', '9', '--out', path('x')],
    'no-such-job',
    /no job 9/,
  ],
  [
    'an export into a folder that is in use',
    () => ['export', '--out', newFolderWithFile()],
    'folder-not-empty',
    /not an empty folder/,
  ],
  [
    'an export where a file is',
    () => ['export', '--out', fileWith('mine')],
    'folder-not-empty',
    /not an empty folder/,
  ],
  ['nothing to undo', () => ['undo', '1'], 'no-such-revision', /nothing to undo/],
  [
    'an undo to a revision that is not there',
    () => ['undo', '1', '--to', '8'],
    'no-such-revision',
    /no revision 8/,
  ],
  ['putting away what is not there', () => ['put-away', '8'], 'no-such-job', /no job 8/],
  ['a restore without a backup', () => ['restore', newFolder()], 'records-damaged', /no backup in/],
  [
    'a photograph that is none',
    () => ['attach', '1', fileWith('fettle: 1', 'photo.jpg')],
    'not-a-picture',
    /not a picture/,
  ],
  ['a photograph of no job', () => ['attach', '5', fileWith('x', 'a.png')], 'no-such-job', /no job 5/],
  [
    'an unknown action',
    () => ['accounts', 'remove', 'anna'],
    'command-line-invalid-argument',
    /add, password/,
  ],
  ['an account without a name', () => ['accounts', 'add'], 'command-line-accounts', /needs the name/],
  [
    'an account without a role',
    () => ['accounts', 'add', 'anna'],
    'command-line-accounts',
    /technician, helper, reader/,
  ],
  [
    'an account with a strange name',
    () => ['accounts', 'add', 'Anna!', '--role', 'reader'],
    'command-line-accounts',
    /small letters/,
  ],
  ['closing nobody', () => ['accounts', 'close', 'anna'], 'no-such-account', /no account/],
  ['a port that is none', () => ['serve', '--port', '70000'], 'command-line-invalid-argument', /0 to 65535/],
  [
    'an origin with a path',
    () => ['serve', '--origin', 'https://bench.example/a'],
    'command-line-invalid-argument',
    /without a path/,
  ],
  [
    'a certificate without its key',
    () => ['serve', '--share', '--cert', demo('tall-drum')],
    'certificate',
    /go together/,
  ],
  [
    'a certificate that is none',
    () => ['serve', '--cert', demo('tall-drum'), '--key', demo('tall-drum')],
    'certificate',
    /cannot be read as a certificate/,
  ],
];

function newFolderWithFile(): string {
  const folder = newFolder();
  writeFileSync(join(folder, 'mine.txt'), 'mine');
  return folder;
}

describe('bad input is one sentence and exit 2, and changes nothing', () => {
  const folder = mkdtempSync(join(tmpdir(), 'fettle-bad-input-'));
  let workshop: Workshop;
  beforeAll(async () => {
    workshop = await workshopWithDrum(folder);
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  test.each(cases)('%s', async (_what, words, code, says) => {
    const before = await workshop.json('jobs');
    const typed = words(workshop);
    const { code: ended, out, err } = await workshop.run(...typed);
    expect([ended, out]).toEqual([2, '']);
    expect(unwrapped(err)).toMatch(says);
    expect(err).not.toMatch(trace);
    for (const line of err.split('\n')) expect([...line].length, line).toBeLessThanOrEqual(80);
    const asJson = await workshop.run(...typed, '--json');
    expect([asJson.code, asJson.err]).toEqual([2, '']);
    const { problems } = problemsSchema.parse(JSON.parse(asJson.out));
    expect(problems.map((problem) => problem.code)).toContain(code);
    expect(await workshop.json('jobs')).toEqual(before);
  });

  test('--data that names no folder', async () => {
    for (const [data, says] of [
      ['', /--data names no folder/],
      [fileWith('mine'), /is no folder/],
      [join(fileWith('mine'), 'below'), /not a folder/],
    ] as const) {
      const { code, err } = fettleProcess(['jobs', '--data', data]);
      expect([code, unwrapped(err)]).toEqual([2, expect.stringMatching(says)]);
      expect(err).not.toMatch(trace);
    }
  });

  test('commands that need records say where there are none, and make none', async () => {
    const data = join(newFolder(), 'nothing');
    for (const words of [
      ['open', '1'],
      ['export', '--out', join(data, 'x')],
      ['backup'],
      ['undo', '1'],
      ['assess', '1'],
    ]) {
      const { code, err } = fettleProcess([...words, '--data', data]);
      expect([words, code, unwrapped(err)]).toEqual([
        words,
        2,
        expect.stringContaining('There are no records in'),
      ]);
    }
  });
});

test('FETTLE_DATA says where the records are, and --data is stronger', async () => {
  const { data } = await workshopWithDrum();
  const environment = { FETTLE_DATA: data };
  expect(fettleProcess(['jobs'], { environment }).out).toContain('Tall drum');
  const elsewhere = join(newFolder(), 'other');
  expect(fettleProcess(['jobs', '--data', elsewhere], { environment }).out).toContain('no jobs in');
  expect(unwrapped(fettleProcess(['checkup'], { environment }).out)).toContain('(by FETTLE_DATA)');
});

test('a port that another program has is told', async () => {
  const other = createServer();
  await new Promise<void>((resolve) => other.listen({ port: 0, host: '127.0.0.1' }, resolve));
  const address = other.address();
  const port = typeof address === 'object' && address ? address.port : 0;
  const { run } = await workshopWithDrum();
  const { code, err } = await run('serve', '--port', String(port));
  other.close();
  expect([code, unwrapped(err)]).toEqual([
    2,
    expect.stringContaining(`Port ${port} is taken by another program`),
  ]);
});

test.runIf(process.getuid?.() !== 0)('a data folder that this user may not write', async () => {
  const { data, run } = await workshopWithDrum();
  // With its journal, a database can be written even here.
  rmSync(join(data, 'fettle.db-journal'), { force: true });
  chmodSync(data, 0o500);
  const { code, err } = await run('import', demo('corner-box'));
  chmodSync(data, 0o700);
  expect([code, unwrapped(err)]).toEqual([
    2,
    expect.stringMatching(/not allowed|only be read|cannot be opened/),
  ]);
});

test('pictures are not written through a link that waits in the folder', async () => {
  const { told, run, path } = await workshopWithDrum();
  mkdirSync(path('pictures'));
  const { inventedPicture } = await import('../scripts/records/inventedPictures.ts');
  writeFileSync(path('a.png'), inventedPicture(3));
  await told('attach', '1', path('a.png'));
  const { photographs } = JSON.parse((await run('open', '1', '--json')).out);
  symlinkSync(path('victim'), join(path('pictures'), `a-${photographs[0].id}.jpg`));
  const { code, err } = await run('open', '1', '--photographs', path('pictures'));
  expect([code, unwrapped(err)]).toEqual([2, expect.stringContaining('there already')]);
});
