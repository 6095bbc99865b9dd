import { chmodSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { problemsSchema } from '@fettle/workflows/results/problems.ts';
import { buildProgram } from 'fettle/program.ts';
import { run } from 'fettle/run.ts';
import { describe, expect, test, vi } from 'vitest';
import { demo, demoWith, fettle, fettleProcess, fileWith, newFolder } from './support/program.ts';

const tallDrum = demo('tall-drum');
const clean = demo('back-hanger');
const trace = /\n\s+at |node:internal|\.ts:\d+|Error:/;

describe('exit 0: fine', () => {
  test.each([
    ['assess', ['assess', tallDrum]],
    ['plan', ['plan', clean]],
    ['forecast', ['forecast', tallDrum, '--days', '30']],
    ['residence', ['residence', tallDrum]],
    ['claims', ['claims', tallDrum]],
    ['faded', ['faded', tallDrum]],
    ['check', ['check', tallDrum]],
    ['new', ['new']],
    ['reckon', ['reckon']],
    ['help', ['--help']],
    ['help of a command', ['assess', '--help']],
    ['version', ['--version']],
  ])('%s', async (_what, words) => {
    const { code, out, err } = await fettle(...words);
    expect([code, err]).toEqual([0, '']);
    expect(out.length).toBeGreaterThan(4);
  });

  test('a filter that is full of faults, where --fail-on does not ask', async () => {
    expect((await fettle('assess', demo('everything-wrong'))).code).toBe(0);
  });
});

describe('exit 1: findings that --fail-on asks for', () => {
  test.each(['grave', 'marked', 'slight', 'note'])(
    'a grave finding ends with 1 under --fail-on %s',
    async (least) => {
      const { code, out } = await fettle('assess', demo('everything-wrong'), '--fail-on', least);
      expect(code).toBe(1);
      expect(out).toContain('Findings');
    },
  );

  test('the severity asked for decides: each job ends with 1 from its gravest finding downward', async () => {
    const order = ['grave', 'marked', 'slight', 'note'];
    for (const name of ['back-hanger', 'corner-box']) {
      const { findings } = JSON.parse((await fettle('assess', demo(name), '--json')).out);
      const found = new Set(findings.map(({ severity }: { severity: string }) => severity));
      const codes: number[] = [];
      for (const least of order) codes.push((await fettle('assess', demo(name), '--fail-on', least)).code);
      expect(codes, name).toEqual(
        order.map((_, place) => (order.slice(0, place + 1).some((one) => found.has(one)) ? 1 : 0)),
      );
    }
  });

  test('with --json too, and the figures are there all the same', async () => {
    const { code, out } = await fettle('assess', tallDrum, '--fail-on', 'grave', '--json');
    expect(code).toBe(1);
    expect(JSON.parse(out).findings[0].severity).toBe('grave');
  });
});

const usage: readonly (readonly [string, readonly string[], string, RegExp])[] = [
  ['no command', [], 'command-line-missing-command', /assess, forecast, plan/],
  ['an unknown command', ['asess', tallDrum], 'command-line-unknown-command', /asess.*assess/],
  ['an unknown option', ['assess', tallDrum, '--jsn'], 'command-line-unknown-option', /--jsn/],
  ['a misspelt option', ['plan', tallDrum, '--budgt', '3'], 'command-line-unknown-option', /--budget/],
  ['no file and no number', ['assess'], 'command-line-missing-argument', /'job'/],
  ['two files', ['check', tallDrum, clean], 'command-line-excess-arguments', /too many/i],
  ['unknown units', ['assess', tallDrum, '--units', 'uk'], 'command-line-invalid-argument', /metric, us/],
  [
    'units without a value',
    ['assess', tallDrum, '--units'],
    'command-line-option-missing-argument',
    /--units/,
  ],
  [
    'an unknown severity',
    ['assess', tallDrum, '--fail-on', 'bad'],
    'command-line-invalid-argument',
    /grave, marked/,
  ],
  ['an unknown aim', ['plan', tallDrum, '--favour', 'all'], 'command-line-invalid-argument', /balance, feed/],
  ['an unknown family', ['new', '--family', 'barrel'], 'command-line-invalid-argument', /hang-on-back/],
  ...['NaN', 'Infinity', '-Infinity', '-1', 'ten', '', '1e400', '10,5'].map(
    (value) =>
      [
        `a budget of “${value}”`,
        ['plan', tallDrum, `--budget=${value}`],
        'command-line-invalid-argument',
        /--budget/,
      ] as const,
  ),
  ...['0', '1.5', '-3', 'NaN', 'Infinity', '1e9'].map(
    (value) =>
      [
        `a cap of ${value}`,
        ['plan', tallDrum, `--cap=${value}`],
        'command-line-invalid-argument',
        /--cap/,
      ] as const,
  ),
  ...['0', '21', '2.5', 'x'].map(
    (value) =>
      [
        `a count of ${value}`,
        ['plan', tallDrum, `--count=${value}`],
        'command-line-invalid-argument',
        /--count/,
      ] as const,
  ),
  ...['0', '366', 'NaN', '-5', 'soon'].map(
    (value) =>
      [
        `day ${value}`,
        ['assess', tallDrum, `--day=${value}`],
        'command-line-invalid-argument',
        /--day/,
      ] as const,
  ),
];

const inputs: readonly (readonly [string, () => readonly string[], string, RegExp])[] = [
  ['a file that is not there', () => ['assess', 'no-such.yaml'], 'file-unreadable', /no such file/],
  ['a folder for a file', () => ['plan', newFolder()], 'file-unreadable', /folder/],
  ['a file for a folder', () => ['claims', `${tallDrum}/x`], 'file-unreadable', /not a folder/],
  ['a file name with a NUL', () => ['plan', 'a\0b'], 'file-unreadable', /name/],
  ['a file name far too long', () => ['assess', 'x'.repeat(5000)], 'file-unreadable', /name/],
  [
    'an unknown medium',
    () => ['assess', fileWith(demoWith('tall-drum', ['floss-loose', 'flos-loose']))],
    'unknown-medium',
    /floss-loose/,
  ],
  ['an unknown reckoning', () => ['reckon', 'hose-los'], 'unknown-reckoning', /hose-loss/],
  [
    'a file to write that is there',
    () => ['new', '--out', fileWith('mine')],
    'file-unwritable',
    /there already/,
  ],
  [
    'a new job into a file for a folder',
    () => ['new', '--out', `${tallDrum}/x.yaml`],
    'file-unwritable',
    /not a folder/,
  ],
  [
    'a new job where a folder is',
    () => ['new', '--out', newFolder()],
    'file-unwritable',
    /there already|folder/,
  ],
];

const cases = [...usage.map(([what, words, ...rest]) => [what, () => words, ...rest] as const), ...inputs];

describe('exit 2: bad input', () => {
  test.each(cases)(
    '%s: a sentence on standard error, nothing on standard output',
    async (_what, words, _code, says) => {
      const { code, out, err } = await fettle(...words());
      expect([code, out]).toEqual([2, '']);
      expect(err.replaceAll(/\n\s*/g, ' ')).toMatch(says);
      expect(err).not.toMatch(trace);
      for (const line of err.split('\n')) expect([...line].length, line).toBeLessThanOrEqual(80);
      for (const sentence of err.split(/\n(?! )/).filter((one) => one !== ''))
        expect(sentence).toMatch(/[.?]\)?$/);
    },
  );

  test.each(cases)('%s: with --json the problems on standard output', async (_what, words, code, says) => {
    const [command, ...others] = words();
    if (command === undefined) return;
    const ended = await fettle(command, '--json', ...others);
    expect([ended.code, ended.err]).toEqual([2, '']);
    const { problems } = problemsSchema.parse(JSON.parse(ended.out));
    expect(problems.map((problem) => problem.code)).toContain(code);
    expect(problems.map((problem) => `${problem.says} ${problem.allowed}`).join('\n')).toMatch(says);
  });

  test.runIf(process.getuid?.() !== 0)('a file that may not be read', async () => {
    const file = fileWith('fettle: 1');
    chmodSync(file, 0);
    expect((await fettle('claims', file)).err).toContain('it may not be read');
  });

  test('--json after -- is a file name, and asks for nothing', async () => {
    const { code, out, err } = await fettle('claims', '--', '--json');
    expect([code, out]).toEqual([2, '']);
    expect(err).toContain('The file --json cannot be read');
  });
});

test('the problems of a job are the output of check, and its own mistakes are errors', async () => {
  const { code, out, err } = await fettle('check', fileWith('fettle: 1'));
  expect([code, err]).toEqual([2, '']);
  expect(out).toContain('tank is missing');
  expect((await fettle('check')).out).toBe('');
});

describe('exit 70: a fault of the program', () => {
  const broken = async (...words: readonly string[]) => {
    let err = '';
    const spy = vi.spyOn(process.stderr, 'write').mockImplementation((chunk) => {
      err += String(chunk);
      return true;
    });
    const program = buildProgram();
    program
      .command('break')
      .option('--json')
      .action(() => {
        throw new RangeError('a planted fault');
      });
    const before = process.exitCode;
    try {
      await run(['break', ...words], program);
      return { code: process.exitCode, err };
    } finally {
      process.exitCode = before;
      spy.mockRestore();
    }
  };

  test.each([[[]], [['--json']]])('says so, without a stack trace %s', async (words: string[]) => {
    const { code, err } = await broken(...words);
    expect(code).toBe(70);
    expect(err.replaceAll(/\n\s*/g, ' ')).toContain(
      'a fault of the program, not of your input: a planted fault.',
    );
    expect(err).not.toMatch(trace);
  });
});

test('nothing is written where the input is bad', async () => {
  const folder = newFolder();
  const file = join(folder, 'made');
  expect((await fettle('demo', '--units', 'bad', '--out', file)).code).toBe(2);
  expect((await fettle('new', '--family', 'bad', '--out', file)).code).toBe(2);
  expect(readdirSync(folder)).toEqual([]);
});

describe('as a process of its own', () => {
  test.each([
    [0, ['--version']],
    [1, ['assess', tallDrum, '--fail-on', 'grave']],
    [2, ['assess', 'no-such.yaml']],
    [2, []],
  ])('it ends with %i for %j', (code, words) => {
    const ended = fettleProcess(words);
    expect(ended.code).toBe(code);
    expect(ended.err).not.toMatch(trace);
  });
});
