import { spawnSync } from 'node:child_process';
import { basename, join } from 'node:path';
import { outputFor } from 'fettle/output.ts';
import { afterEach, describe, expect, test, vi } from 'vitest';
import {
  demo,
  demos,
  demoWith,
  fettle,
  fettleProcess,
  fileWith,
  inProject,
  newFolder,
} from './support/program.ts';

const colour = String.fromCharCode(0x1b);

const expectReadable = (text: string): void => {
  expect(text).not.toMatch(/NaN|undefined|\[object|Infinity|null/);
  expect(text).not.toContain(colour);
  for (const line of text.split('\n')) {
    expect([...line].length, line).toBeLessThanOrEqual(80);
    expect(line).toBe(line.trimEnd());
  }
};

const inUnits = ['metric', 'us'] as const;
const isLong = process.env.FETTLE_LONG !== undefined;

/** What has a table in two kinds of units, in both; anything else in one, turn by turn, and in both at length. */
const cases = demos.flatMap((path, place) =>
  inUnits.map((units, turn) => [basename(path), units, path, isLong || place % 2 === turn] as const),
);

describe.each(cases)('%s in %s units', (_name, units, path, isTurn) => {
  test('assess is no wider than 80 columns, says nothing odd, and speaks of head and beds in these units alone', async () => {
    const { code, out } = await fettle('assess', path, '--units', units);
    expect(code).toBe(0);
    expectReadable(out);
    // A figure and its unit stay on one line.
    expect(out).not.toMatch(/\d\n +(%|L|US gal|mm|cm|in|ft|d|GBP)\s/);
    expect(out).not.toMatch(/^ +(?:(?:mm|cm|in|ft)(?:\/s)?\s*)+$/m);
    const ours = out
      .slice(out.indexOf('\nHead\n'), out.indexOf('\nBench tests'))
      .replace(/Chemical media[\s\S]*/, '')
      // A size that stands in the name of a medium.
      .replaceAll(/\d mm\s+gravel/g, 'gravel');
    expect(ours).toMatch(/\d (in|mm|cm)\b/);
    if (units === 'us') expect(ours).not.toMatch(/\d (L|L\/h|mm|cm|m)\b/);
    else expect(ours).not.toMatch(/\d (US gal|gal|in|ft|oz|lb)\b/);
  });

  const others = [
    ['assess on the last day', ['assess', path, '--day', '365']],
    ['plan', ['plan', path, '--cap', '20', '--budget', '10']],
    ['claims', ['claims', path]],
    ['faded', ['faded', path]],
    ['check', ['check', path]],
  ] as const;
  test.each(isTurn ? others : [])(
    '%s is no wider than 80 columns and says nothing odd',
    async (_command, words) => {
      const { code, out } = await fettle(...words, '--units', units);
      expect(code).toBe(0);
      expectReadable(out);
    },
  );
});

describe.each(['metric', 'us'])('without a job, in %s units', (units) => {
  test.each([['new'], ['reckon']])('%s', async (command) => {
    const { out } = await fettle(command, '--units', units);
    expect(out).not.toMatch(/NaN|undefined|\[object|Infinity/);
    expect(out).not.toContain(colour);
  });

  test('the demo', async () => {
    expectReadable((await fettle('demo', '--units', units, '--out', join(newFolder(), 'demo.svg'))).out);
  });
});

test('names of any length and script keep to 80 columns', async () => {
  const names = [
    'x'.repeat(150),
    'Фильтр для очень большого аквариума '.repeat(4).trim(),
    '濾過器'.repeat(40),
    '🐟'.repeat(60),
  ];
  for (const name of names) {
    const file = fileWith(demoWith('tall-drum', ['name: Tall drum', `name: ${name}`]));
    for (const words of [
      ['assess', file],
      ['plan', file, '--cap', '5'],
      ['claims', file],
      ['faded', file],
      ['check', file],
    ])
      for (const line of (await fettle(...words)).out.split('\n'))
        expect([...line].length, line).toBeLessThanOrEqual(80);
  }
});

test('a maker’s endless word keeps to 80 columns', async () => {
  const file = fileWith(demoWith('tall-drum', ['Media volume 4.9 L', `Best${'!'.repeat(200)} 4.9 L`]));
  for (const command of ['assess', 'claims']) {
    const { out } = await fettle(command, file);
    for (const line of out.split('\n')) expect([...line].length, line).toBeLessThanOrEqual(80);
  }
});

describe('colour', () => {
  const { isTTY } = process.stdout;
  const { NO_COLOR } = process.env;
  const asIf = (terminal: boolean, noColour?: string) => {
    process.stdout.isTTY = terminal;
    if (noColour === undefined) delete process.env.NO_COLOR;
    else process.env.NO_COLOR = noColour;
  };
  afterEach(() => {
    process.stdout.isTTY = isTTY;
    if (NO_COLOR === undefined) delete process.env.NO_COLOR;
    else process.env.NO_COLOR = NO_COLOR;
    vi.restoreAllMocks();
  });

  test.each([
    ['on a terminal', true, undefined, true],
    ['on a terminal with NO_COLOR', true, '1', false],
    ['on a terminal with an empty NO_COLOR', true, '', true],
    ['elsewhere', false, undefined, false],
  ])('%s', (_where, terminal, noColour, expected) => {
    asIf(terminal, noColour);
    expect(outputFor({}).colour).toBe(expected);
  });

  test('bold heads on a terminal, at the same widths', async () => {
    asIf(true);
    const { out } = await fettle('assess', demo('tall-drum'));
    expect(out).toContain(`${colour}[1mRoutes${colour}[22m`);
    const plain = out.replaceAll(new RegExp(`${colour}\\[\\d+m`, 'g'), '');
    asIf(false);
    expect(plain).toBe((await fettle('assess', demo('tall-drum'))).out);
  });

  test('never in JSON', async () => {
    asIf(true);
    expect((await fettle('assess', demo('tall-drum'), '--json')).out).not.toContain(colour);
  });

  test('none in a pipe, whatever FORCE_COLOR says', () => {
    const environment = { FORCE_COLOR: '1', NO_COLOR: undefined };
    expect(fettleProcess(['claims', demo('tall-drum')], { environment }).out).not.toContain(colour);
    expect(fettleProcess(['plan', demo('tall-drum'), '--cap', '5'], { environment }).out).not.toContain(
      colour,
    );
  });

  const onTerminal = (environment: NodeJS.ProcessEnv) => {
    const words = [
      process.execPath,
      '--import',
      'tsx',
      'packages/cli/main.ts',
      'assess',
      'demo/corner-box.yaml',
    ];
    return spawnSync('script', ['-qec', words.join(' '), '/dev/null'], {
      cwd: inProject(''),
      encoding: 'utf8',
      input: '',
      env: { ...process.env, NO_COLOR: undefined, TERM: 'xterm', ...environment },
    });
  };

  test.runIf(process.platform === 'linux')('on a real terminal, and not there with NO_COLOR', () => {
    const coloured = onTerminal({});
    expect(coloured.error).toBeUndefined();
    expect(coloured.stdout).toContain(`${colour}[1mRoutes`);
    expect(onTerminal({ NO_COLOR: '1' }).stdout).not.toContain(`${colour}[1m`);
  });
});
