import { basename } from 'node:path';
import { plansSchema } from '@fettle/workflows/results/plans.ts';
import { describe, expect, test } from 'vitest';
import { demo, demos, fettle } from './support/program.ts';
import { breachesOf, figuresOf } from './support/results.ts';

/** Enough candidates to compare, few enough to be quick. */
const CAP = '60';

const planned = async (file: string, ...options: readonly string[]) => {
  const { code, out, err } = await fettle('plan', file, '--json', '--cap', CAP, ...options);
  expect([code, err]).toEqual([0, '']);
  return plansSchema.parse(JSON.parse(out));
};

describe.each(demos.map((path) => [basename(path), path]))('plan --json of %s', async (_name, path) => {
  const free = await planned(path);
  const bought = await planned(path, '--budget', '10');

  test('fits the published schema, by a validator of its own', () => {
    expect(breachesOf('plans', free)).toEqual([]);
    expect(breachesOf('plans', bought)).toEqual([]);
    for (const { value, path: at } of figuresOf(bought)) expect(Number.isFinite(value), at).toBe(true);
  });

  test('costs nothing without a budget, and has nothing to buy', () => {
    for (const plan of free.plans) {
      expect(plan.cost.value).toBe(0);
      expect([...plan.purchases, ...plan.parts]).toEqual([]);
    }
  });

  test('stays within the budget, and its lines add up to its cost', () => {
    for (const { cost, purchases, parts } of bought.plans) {
      expect(cost.value).toBeLessThanOrEqual(10);
      const lines = [
        ...purchases.map(({ price }) => price.value),
        ...parts.map(({ price, count }) => price.value * count),
      ];
      expect(lines.reduce((sum, price) => sum + price, 0)).toBeCloseTo(cost.value, 9);
      expect(cost.unit).toMatch(/^(GBP|EUR|USD)$/);
    }
  });

  test('has packing, effect and steps in every plan, and none twice', () => {
    for (const { plans, asFound } of [free, bought]) {
      for (const plan of plans) {
        expect(plan.packing.map(({ chamber }) => chamber)).toHaveLength(asFound.packing.length);
        expect(plan.steps.length).toBeGreaterThan(3);
        expect(plan.effect.flow.after.unit).toBe('L/h');
        expect(plan.effect.feed.after.value).toBeCloseTo(plan.feed.value, 9);
        expect(plan.effect.feed.before.value).toBeCloseTo(asFound.feed.value, 9);
        expect(plan.effect.cleaningInterval.after.value).toBeCloseTo(plan.cleaningInterval.value, 9);
      }
      expect(new Set(plans.map(({ id }) => id)).size).toBe(plans.length);
    }
  });

  test('counts what was possible and what was assessed, within the cap', () => {
    for (const { counted } of [free, bought]) {
      expect(counted.assessed).toBeGreaterThan(0);
      expect(counted.assessed).toBeLessThanOrEqual(Number(CAP));
      expect(counted.possible).toBeGreaterThanOrEqual(counted.assessed);
    }
    expect(bought.counted.possible).toBeGreaterThanOrEqual(free.counted.possible);
  });

  test('tells on the screen what was possible and what was assessed', async () => {
    const text = (await fettle('plan', path, '--cap', CAP, '--budget', '10')).out;
    expect(text).toMatch(/candidates were\s+possible/);
    expect(text).toMatch(/were\s+assessed/);
  });

  test('has the same bytes in either system of units', async () => {
    const words = ['plan', path, '--json', '--cap', '10'];
    expect((await fettle(...words, '--units', 'us')).out).toBe((await fettle(...words)).out);
  });
});

test('no medium is packed that is neither in the filter nor bought, and no more of it', async () => {
  const { plans, asFound } = await planned(demo('tall-drum'), '--budget', '10');
  const litres = (packing: (typeof asFound)['packing']) => {
    const sums = new Map<string, number>();
    for (const { beds } of packing)
      for (const { medium, volume } of beds) sums.set(medium, (sums.get(medium) ?? 0) + volume.value);
    return sums;
  };
  const had = litres(asFound.packing);
  for (const plan of plans) {
    for (const [medium, volume] of litres(plan.packing)) {
      const more = plan.purchases.find((line) => line.medium === medium)?.volume.value ?? 0;
      expect(volume, `${plan.id} ${medium}`).toBeLessThanOrEqual((had.get(medium) ?? 0) + more + 1e-6);
    }
  }
});

test('--favour changes what comes first', async () => {
  const first = async (favour: string) => {
    const { plans } = await planned(demo('two-halves'), '--favour', favour);
    return plans[0];
  };
  const [feed, interval, flow] = [await first('feed'), await first('interval'), await first('flow')];
  expect(feed?.feed.value).toBeGreaterThanOrEqual(interval?.feed.value ?? Number.NaN);
  expect(interval?.cleaningInterval.value).toBeGreaterThanOrEqual(feed?.cleaningInterval.value ?? Number.NaN);
  expect(flow?.flow.value).toBeGreaterThanOrEqual(feed?.flow.value ?? Number.NaN);
  expect(feed?.packing).not.toEqual(interval?.packing);
});

test('--cap is the most that is assessed, down to one', async () => {
  for (const cap of ['1', '7']) {
    const { out } = await fettle('plan', demo('everything-wrong'), '--json', '--cap', cap);
    expect(JSON.parse(out).counted.assessed).toBeLessThanOrEqual(Number(cap));
    expect(JSON.parse(out).complete).toBe(false);
  }
});

test('--count is the most plans that are shown', async () => {
  expect((await planned(demo('tall-drum'), '--count', '2')).plans.length).toBeLessThanOrEqual(2);
  expect((await planned(demo('tall-drum'), '--count', '1')).plans).toHaveLength(1);
});

test('a budget of nothing is no budget', async () => {
  expect(await planned(demo('tall-drum'), '--budget', '0')).toEqual(await planned(demo('tall-drum')));
});

test('--day moves the comparison', async () => {
  const [usual, day30] = [await planned(demo('tall-drum')), await planned(demo('tall-drum'), '--day', '30')];
  expect(day30.asFound.feed.value).not.toBe(usual.asFound.feed.value);
  expect(day30.asFound.flow).toEqual(usual.asFound.flow);
});

test('the screen says whether the search was complete', async () => {
  const told = async (...options: readonly string[]) =>
    (await fettle('plan', demo('tall-drum'), ...options)).out.replaceAll(/\s+/g, ' ');
  expect(await told('--cap', '1000')).toContain('the search is complete');
  expect(await told('--cap', '5')).toContain('what was left out may hold a better one');
});

test('one budget gives one answer', async () => {
  const words = ['plan', demo('corner-box'), '--budget', '5', '--cap', '40', '--json'];
  expect((await fettle(...words)).out).toBe((await fettle(...words)).out);
});
