import { exampleOf, type Pair } from '@fettle/engine/reckonings/reckon.ts';
import { reckonings } from '@fettle/engine/reckonings/reckonings.ts';
import { Command } from 'commander';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { BadInput } from '../exits.ts';
import { addReckon } from './reckon.ts';

afterEach(() => vi.restoreAllMocks());

/** What the command writes, run in this process. */
const run = (...words: readonly string[]): string => {
  let text = '';
  vi.spyOn(process.stdout, 'write').mockImplementation((chunk) => {
    text += String(chunk);
    return true;
  });
  const program = new Command('fettle').exitOverride();
  addReckon(program);
  program.parse(['reckon', ...words], { from: 'user' });
  return text;
};

const problemsOf = (...words: readonly string[]) => {
  try {
    run(...words);
  } catch (error) {
    if (error instanceof BadInput) return error.problems;
    throw error;
  }
  return [];
};

const wordsOf = (pairs: readonly Pair[]): string[] => pairs.map(({ key, text }) => `${key}=${text}`);
const all = Object.values(reckonings);

test('without a name it lists every reckoning with its keys, fittings and media', () => {
  const text = run();
  for (const { name } of all) expect(text).toContain(`\n${name}: `);
  expect(text).toContain('elbow-90');
  expect(text).toContain('foam-20ppi');
  const listed = JSON.parse(run('--json'));
  expect(listed.reckonings).toHaveLength(all.length);
  expect(listed.reckonings[0].inputs[0]).toMatchObject({
    key: 'temperature',
    required: false,
    default: '25 °C',
  });
  expect(listed.fittings.map(({ id }: { id: string }) => id)).toContain('spray-bar');
});

describe.each(all)('$name', (reckoning) => {
  const words = [reckoning.name, ...wordsOf(exampleOf(reckoning))];

  test('JSON has these keys and no others, whatever the units of the screen', () => {
    const json = run(...words, '--json');
    const answer = JSON.parse(json);
    expect(Object.keys(answer)).toEqual(['name', 'results', 'within', 'warnings', 'source']);
    expect(answer.name).toBe(reckoning.name);
    for (const result of Object.values(answer.results))
      if (typeof result === 'object') expect(Object.keys(result!)).toEqual(['value', 'unit']);
    expect(run(...words, '--json', '--units', 'us')).toBe(json);
  });

  test.each(['metric', 'us'])('the screen shows results and source in 80 columns, %s', (units) => {
    const text = run(...words, '--units', units);
    expect(text).toContain('Source: ');
    for (const line of text.split('\n')) expect(line.length, line).toBeLessThanOrEqual(80);
    expect(text).not.toMatch(/NaN|undefined|Infinity|\[object/);
  });
});

test('US units on the screen', () => {
  const words = ['pump-duty', 'shutoff=2 m', 'maxFlow=1200 L/h', 'resistance=8e6 s2/m5'];
  expect(run(...words)).toContain('flow: 998.5 L/h');
  expect(run(...words, '--units', 'us')).toContain('flow: 263.8 US gal/h');
});

test('money keeps two decimals', () => {
  expect(run('power-cost', 'power=10 W', 'tariff=0.25 GBP/kWh')).toContain('cost in a year: 21.90 GBP');
});

test('a value outside of the law is shown with its warning', () => {
  expect(run('water-density', 'temperature=60 °C')).toMatch(/Warning: The temperature, 60\.00 °C/);
});

describe('bad input', () => {
  test.each([
    ['a word without =', ['water-density', 'temperature'], 'not-key-value'],
    ['a value without a key', ['water-density', '=20 °C'], 'not-key-value'],
    ['an unknown name', ['watre-density'], 'unknown-reckoning'],
    ['an unknown key', ['water-density', 'temprature=20 °C'], 'unknown-key'],
    ['a key twice', ['water-density', 'temperature=20 °C', 'temperature=21 °C'], 'duplicate-key'],
    ['a wrong unit', ['water-density', 'temperature=20 kg'], 'wrong-dimension'],
  ] as const)('%s', (_what, words, code) => {
    expect(problemsOf(...words).map((problem) => problem.code)).toEqual([code]);
  });

  test('missing keys are all named, with one example of the whole line', () => {
    const problems = problemsOf('hose-loss');
    expect(problems.map(({ path }) => path)).toEqual(['flow', 'bore', 'length']);
    const said = problems.map(({ says }) => says).join('\n');
    expect(said.match(/Example: fettle reckon hose-loss flow="600 L\/h"/g)).toHaveLength(1);
  });
});
