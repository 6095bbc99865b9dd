import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { assessmentSchema } from '@fettle/workflows/results/assessment.ts';
import { describe, expect, test } from 'vitest';
import { demo, demos, demoWith, fettle, fettleProcess, fileWith } from './support/program.ts';
import { bareNumbersOf, breachesOf, figuresOf } from './support/results.ts';

const assessed = async (file: string, ...options: readonly string[]) => {
  const { code, out, err } = await fettle('assess', file, '--json', ...options);
  expect([code, err]).toEqual([0, '']);
  return assessmentSchema.parse(JSON.parse(out));
};

/** Unit of every figure by the last name on its path; money apart. */
const units: readonly (readonly [RegExp, string])[] = [
  [/^\/dutyPoint\/flow$/, 'L/h'],
  [/^\/dutyPoint\/head$/, 'm'],
  [/^\/headBudget\/\d+\/head$/, 'm'],
  [/^\/headBudget\/\d+\/share$/, '1'],
  [/^\/routes\/\d+\/share$/, '1'],
  [/^\/routes\/\d+\/contactTime$/, 's'],
  [/^\/bypass\/\w+$/, '1'],
  [/^\/turnover$/, '1/h'],
  [/^\/beds\/\d+\/(depth|head)$/, 'm'],
  [/^\/beds\/\d+\/volume$/, 'L'],
  [/^\/beds\/\d+\/flow$/, 'L/h'],
  [/^\/beds\/\d+\/contactTime$/, 's'],
  [/^\/carries\/(\w+\/)?day$/, 'd'],
  [/^\/carries\/(\w+\/)?feed$/, 'g/d'],
  [/^\/carries\/(\w+\/)?served\/(light|normal|heavy)$/, 'L'],
  [/^\/carries\/(\w+\/)?flow$/, 'L/h'],
  [/^\/cleaningInterval$/, 'd'],
  [/^\/cost\/energy$/, 'kWh/a'],
  [/^\/findings\/\d+\/effect\/flow(\/before|\/after)?$/, 'L/h'],
  [/^\/findings\/\d+\/effect\/feed(\/before|\/after)?$/, 'g/d'],
  [/^\/findings\/\d+\/effect\/cleaningInterval(\/before|\/after)?$/, 'd'],
];

describe.each(demos.map((path) => [basename(path), path]))('assess --json of %s', async (name, path) => {
  const text = (await fettle('assess', path, '--json')).out;
  const result = assessmentSchema.parse(JSON.parse(text));
  const figures = figuresOf(result);

  test('fits the published schema, by a validator of its own', () => {
    expect(breachesOf('assessment', JSON.parse(text))).toEqual([]);
  });

  test('has every promised key', () => {
    expect(Object.keys(result)).toEqual(
      expect.arrayContaining([
        ...[
          'edition',
          'state',
          'assumed',
          'dutyPoint',
          'headBudget',
          'routes',
          'bypass',
          'turnover',
          'carries',
        ],
        ...['cleaningInterval', 'cost', 'claims', 'findings'],
      ]),
    );
    expect(Object.keys(result.carries)).toEqual(
      expect.arrayContaining(['feed', 'served', 'bindingLimit', 'clean', 'intervalEnd']),
    );
    expect(Object.keys(result.carries.clean)).toEqual(expect.arrayContaining(['feed', 'served']));
    expect(Object.keys(result.cost)).toContain('perYear');
    for (const finding of result.findings)
      expect(Object.keys(finding)).toEqual(
        expect.arrayContaining(['id', 'severity', 'place', 'says', 'cure']),
      );
    // Nothing that is wrong with sand held up by water can be cured by computing.
    if (name !== 'sand-column.yaml')
      expect(result.findings.some(({ effect }) => effect !== undefined)).toBe(true);
  });

  test('gives every figure in its one unit', () => {
    for (const [pattern, unit] of units) {
      const matching = figures.filter((figure) => pattern.test(figure.path));
      for (const figure of matching) expect([figure.path, figure.unit]).toEqual([figure.path, unit]);
      if (!String(pattern).includes('findings')) expect(matching.length, String(pattern)).toBeGreaterThan(0);
    }
    const money = figures.filter(({ path: at }) => /^\/cost\/(.*P|p)erYear$/.test(at));
    for (const { unit } of money) expect(unit).toMatch(/^(GBP|EUR|USD)\/a$/);
    expect(money.length).toBeGreaterThanOrEqual(4);
  });

  test('gives no bare number, and a range with low and high where there is one', () => {
    expect(bareNumbersOf(result).filter((at) => !/^\/assumed\/\d+\/doubt\/size$/.test(at))).toEqual([]);
    for (const { path: at, keys, value } of figures) {
      expect(keys.includes('low'), at).toBe(keys.includes('high'));
      expect(Number.isFinite(value), at).toBe(true);
    }
  });

  test('has what is most likely within the range of what it serves, of flow and interval', () => {
    const { carries, dutyPoint, cleaningInterval } = result;
    for (const { value, low, high } of [
      carries.intervalEnd.served.normal,
      carries.clean.feed,
      dutyPoint.flow,
      cleaningInterval,
    ]) {
      expect(low).toBeLessThanOrEqual(value * (1 + 1e-9));
      expect(high).toBeGreaterThanOrEqual(value * (1 - 1e-9));
    }
  });

  test('says in its own words what it serves, how sure that is, and what to measure next', () => {
    const [serves, ...rest] = result.doubt!.says;
    expect(serves).toMatch(/serves .* at a normal stock: .* to .* in eight of ten/);
    expect(rest.at(-1)).toMatch(/^Measure next: /);
    expect(result.doubt!.measureNext[0]!.widthLeft.value).toBeLessThan(0.9);
  });

  test('does not round', () => {
    const digits = figures.map(({ value }) => String(value).replace(/\D/g, '').length);
    expect(digits.filter((count) => count > 12).length).toBeGreaterThan(figures.length / 4);
  });

  test('has the same bytes in either system of units', async () => {
    expect((await fettle('assess', path, '--json', '--units', 'us')).out).toBe(text);
  });

  test('shares the whole flow out among its routes', () => {
    const whole = result.routes.reduce((sum, route) => sum + route.share.value, 0);
    expect(Math.abs(whole - 1)).toBeLessThan(1e-9);
  });

  test('shares the whole head out among its parts', () => {
    const whole = result.headBudget.reduce((sum, part) => sum + part.share.value, 0);
    const head = result.headBudget.reduce((sum, part) => sum + part.head.value, 0);
    expect(Math.abs(whole - 1)).toBeLessThan(1e-6);
    expect(Math.abs(head / result.dutyPoint.head.value - 1)).toBeLessThan(1e-6);
  });

  test('a stage without a bed is missed by all water', () => {
    const packed = new Set(result.beds.map(({ stage }) => stage));
    for (const stage of ['mechanical', 'biological', 'chemical'] as const)
      if (!packed.has(stage)) expect(result.bypass[stage].value, stage).toBe(1);
      else expect(result.bypass[stage].value, stage).toBeLessThanOrEqual(1);
  });

  test('an effect is after less before', () => {
    for (const { effect } of result.findings)
      for (const change of effect ? [effect.flow, effect.feed, effect.cleaningInterval] : [])
        expect(change.value).toBeCloseTo(change.after.value - change.before.value, 12);
  });
});

test('ways too small to name are gathered in a route called rest', async () => {
  const { routes } = await assessed(demo('tall-drum'));
  expect(routes.map(({ id }) => id)).toContain('rest');
});

test('an empty filter is missed by all water at every stage', async () => {
  const text = readFileSync(demo('tall-drum'), 'utf8').replace(/^ {4}- \{ medium: .*\n/gm, '');
  const { bypass, beds } = await assessed(fileWith(text.replaceAll(/^( {2}basket-\d:).*$/gm, '$1 []')));
  expect(beds).toEqual([]);
  expect(bypass).toMatchObject({
    mechanical: { value: 1, unit: '1' },
    biological: { value: 1, unit: '1' },
    chemical: { value: 1, unit: '1' },
  });
});

/** Coarse media in plenty, and next to no feed. */
const lazy = () =>
  readFileSync(demo('tall-drum'), 'utf8')
    .replace('feed: 1.5 g/d ± 0.3 g/d', 'feed: 0.005 g/d')
    .replace(/packing:[\s\S]*?alterations:/, () =>
      [
        'packing:',
        '  basket-3: [{ medium: foam-20ppi, depth: 50 mm }]',
        '  basket-2: [{ medium: ceramic-rings-15mm, depth: 55 mm }]',
        '  basket-1: [{ medium: foam-10ppi, depth: 50 mm }]',
        'alterations:',
      ].join('\n'),
    );

test('an interval of more than a year is told as beyond a year', async () => {
  const file = fileWith(lazy());
  expect((await assessed(file)).cleaningInterval).toMatchObject({ value: 365, unit: 'd', beyond: true });
  expect((await fettle('assess', file)).out.replaceAll(/\s+/g, ' ')).toContain('after more than a year');
});

test('--day moves what the filter carries, and nothing that is clean', async () => {
  const [usual, day30] = [
    await assessed(demo('two-halves')),
    await assessed(demo('two-halves'), '--day', '30'),
  ];
  expect(usual.carries.day).toEqual({ value: 60, unit: 'd' });
  expect(day30.carries.day).toEqual({ value: 30, unit: 'd' });
  expect(day30.carries.feed.value).not.toBe(usual.carries.feed.value);
  expect(day30.dutyPoint).toEqual(usual.dutyPoint);
  // Draws that clog later than on that day are marched in other steps.
  const { low: _, high: __, ...interval } = usual.cleaningInterval;
  expect(day30.cleaningInterval).toMatchObject(interval);
  expect(day30.carries.clean.feed.value).toBe(usual.carries.clean.feed.value);
});

test('- reads standard input and gives the same bytes', async () => {
  const input = readFileSync(demo('corner-box'));
  const ended = fettleProcess(['assess', '-', '--json'], { input });
  expect([ended.code, ended.err]).toEqual([0, '']);
  expect(ended.out).toBe((await fettle('assess', demo('corner-box'), '--json')).out);
});

test('the same job twice gives the same bytes, as JSON too', async () => {
  expect((await fettle('assess', demo('back-hanger'))).out).toBe(
    (await fettle('assess', demo('back-hanger'))).out,
  );
});

describe('a pump that cannot lift the water', () => {
  const text = demoWith('tall-drum', [
    'fittings: [elbow-90] }\n  price',
    'fittings: [elbow-90], lift: 1.4 m }\n  price',
  ]);

  test('is no bad input: no flow, and a finding that says so', async () => {
    const result = await assessed(fileWith(text));
    expect(result.dutyPoint.flow.value).toBe(0);
    expect(result.findings.map(({ id }) => id)).toContain('pump-cannot-lift');
    expect(breachesOf('assessment', result)).toEqual([]);
    for (const { value, path } of figuresOf(result)) expect(Number.isFinite(value), path).toBe(true);
  });

  test.each(['assess', 'plan', 'claims', 'check'])(
    '%s says something sensible on the screen',
    async (command) => {
      const cap = command === 'plan' ? ['--cap', '20'] : [];
      const { code, out } = await fettle(command, fileWith(text), ...cap);
      expect(code).toBe(0);
      expect(out).not.toMatch(/NaN|undefined|Infinity|\[object/);
      for (const line of out.split('\n')) expect([...line].length, line).toBeLessThanOrEqual(80);
    },
  );
});
