import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solidsMade } from '../../laws/dirt/production.ts';
import { march } from '../dirt/march.ts';
import { compiledJob } from '../testing/compiled.ts';
import { familyModels } from '../testing/familyModels.ts';
import {
  days,
  hangOnBack,
  oneBasket,
  stackCanister,
  withFilter,
  withMeasurements,
  withTank,
} from '../testing/models.ts';
import { randomModel } from '../testing/randomModels.ts';
import { comparePatterns, usualPatterns } from './compare.ts';
import { forecast, forecastCompiled } from './forecast.ts';
import type { CleaningPattern } from './pattern.ts';

const parts = (...rules: (readonly [string, number])[]): CleaningPattern => ({
  kind: 'parts',
  rules: rules.map(([what, everyDays]) => ({ what, everyDays })),
});

const allHeld = (model: ReturnType<typeof forecast>, day: number): number =>
  model.days.beds.reduce((sum, { dirtKg }) => sum + dirtKg[day]!, 0);

describe('solids of a forecast', () => {
  it('that were there and made are held, suspended, changed, caught elsewhere, rotted or cleaned out: any filter, any pattern', () => {
    const pattern = fc.oneof(
      fc.constantFrom(...usualPatterns),
      fc.integer({ min: 1, max: 20 }).map((every) => parts(['all', every])),
    );
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1_000_000 }), pattern, fc.boolean(), (seed, of, torn) => {
        const plain = randomModel(seed);
        const otherFilters = seed % 3 === 0 ? [{ name: 'sponge', flowM3PerS: 1e-4, areaM2: 1 }] : [];
        const detachment = torn ? { detachment: { thresholdPa: 0.01, perS: 1e-6 } } : {};
        const found = forecast({ ...plain, otherFilters }, { days: 25, pattern: of, ...detachment });
        expect(Math.abs(found.balanceError)).toBeLessThan(1e-9);
        for (const bed of found.days.beds) {
          expect(bed.dirtKg.every((held) => held >= 0)).toBe(true);
          expect(Math.max(...bed.profile.flat())).toBeLessThan(0.51);
        }
      }),
      { numRuns: 12 },
    );
  });

  it('are none where nothing is fed: the flow stays clean for ever', () => {
    const found = forecast(withTank(stackCanister(), { feedKgPerS: 0 }), { days: 730 });
    expect(allHeld(found, 730)).toBe(0);
    expect(found.days.flowRatio.every((ratio) => Math.abs(ratio - 1) < 1e-7)).toBe(true);
    expect(found.firstEnd).toBeUndefined();
    expect(found.days.day).toHaveLength(731);
  });

  it('lie thickest where the water comes in', () => {
    for (const bed of forecast(stackCanister()).days.beds)
      expect(bed.profile.at(-1)).toEqual(bed.profile.at(-1)!.toSorted((a, b) => b - a));
  });

  it('torn off by shear are caught again or stay in the water: less is held, and nothing is lost', () => {
    const quiet = forecast(stackCanister(), { days: 60 });
    const torn = forecast(stackCanister(), { days: 60, detachment: { thresholdPa: 1e-3, perS: 1e-6 } });
    expect(allHeld(torn, 60)).toBeLessThan(allHeld(quiet, 60));
    expect(torn.days.suspendedKgPerM3.at(-1)).toBeGreaterThan(quiet.days.suspendedKgPerM3.at(-1)!);
  });
});

describe('the full march', () => {
  it.each(familyModels)(
    'of a %s agrees with the reduced form on the cleaning interval within a tenth',
    (_f, model) => {
      const reduced = march(compiledJob(model), solidsMade(model.tank), days(60)).ending;
      const full = forecast(model, { days: 365 }).firstEnd;
      expect(full === undefined).toBe(reduced.beyond);
      if (full === undefined) return;
      expect([full.place, full.endedBy]).toEqual([reduced.place, reduced.endedBy]);
      expect(Math.abs(reduced.timeS / full.timeS - 1)).toBeLessThan(0.1);
    },
  );

  it('is of second order in its steps', () => {
    const model = oneBasket([['foam-45ppi', 100]]);
    const held = (stepS: number): number =>
      forecast(model, { days: 8, closeness: { stepS } }).days.beds[0]!.headM.at(-1)!;
    const [coarse, middle, fine] = [days(1), days(0.5), days(0.25)].map(held) as [number, number, number];
    const order = Math.log2(Math.abs((coarse - middle) / (middle - fine)));
    expect(order).toBeGreaterThan(1.7);
  });

  it('comes to the same with finer slices, at first order or better', () => {
    const model = oneBasket([['foam-45ppi', 100]]);
    const held = (refinement: number): number =>
      forecast(model, { days: 20, closeness: { refinement } }).days.beds[0]!.headM.at(-1)!;
    const [coarse, middle, fine] = [1, 2, 4].map(held) as [number, number, number];
    const order = Math.log2(Math.abs((coarse - middle) / (middle - fine)));
    expect(order).toBeGreaterThan(0.9);
  });

  it.each(familyModels)(
    'of a %s in its own steps differs from hourly steps by less than a thousandth',
    (_f, model) => {
      const compiled = compiledJob(model);
      const own = forecastCompiled(compiled, { days: 45 });
      const fine = forecastCompiled(compiled, { days: 45, closeness: { stepS: 3600 } });
      own.days.flowRatio.forEach((ratio, day) => {
        expect(Math.abs(ratio - fine.days.flowRatio[day]!)).toBeLessThan(1e-3);
      });
      // A sock is full within a day or two, which asks for short steps.
      expect(own.steps).toBeLessThan(fine.steps / 6);
    },
  );
});

describe('cleaning', () => {
  it('by rinsing leaves a tenth of what lies in the bed, by replacing nothing', () => {
    const found = forecast(stackCanister(), { days: 30, pattern: parts(['all', 30]) });
    const [before] = [allHeld(found, 30)];
    const cleaning = found.cleanings[0]!;
    expect(cleaning).toMatchObject({ day: 30, because: 'calendar' });
    expect([...cleaning.rinsed, ...cleaning.replaced].toSorted()).toEqual([
      'basket-1/1',
      'basket-2/1',
      'basket-3/1',
    ]);
    const rinsed = found.days.beds.filter(({ id }) => cleaning.rinsed.includes(id));
    const left = rinsed.reduce((sum, { dirtKg, matKg }) => sum + 0.1 * (dirtKg[30]! - matKg[30]!), 0);
    expect(found.account.heldKg / left).toBeCloseTo(1, 9);
    expect((before - cleaning.takenKg) / left).toBeCloseTo(1, 9);
  });

  it('of what is named leaves the other beds alone', () => {
    const { cleanings } = forecast(stackCanister(), {
      days: 90,
      pattern: parts(['mechanical', 30], ['all', 90]),
    });
    expect(cleanings.map(({ day, rinsed, replaced }) => [day, rinsed.length + replaced.length])).toEqual([
      [30, 2],
      [60, 2],
      [90, 3],
    ]);
  });

  it('by the usual pattern comes when the interval ends, and begins it anew', () => {
    const never = forecast(stackCanister(), { days: 365 });
    const usual = forecast(stackCanister(), { days: 365, pattern: { kind: 'usual' } });
    expect(usual.cleanings[0]!.day).toBe(Math.ceil(never.firstEnd!.timeS / days(1)));
    expect(Math.min(...usual.days.flowRatio)).toBeGreaterThan(Math.min(...never.days.flowRatio));
    expect(usual.cleanings.at(-1)).toMatchObject({ day: 365, because: 'yearly' });
  });

  it('by the flow keeps the flow up', () => {
    const tight = withFilter(stackCanister({ 'basket-1': [['floss-packed', 50]] }), {
      chamberGapM: { 'basket-1': 0 },
    });
    const never = forecast(tight, { days: 90 });
    const kept = forecast(tight, { days: 90, pattern: { kind: 'flow', lossShare: 0.25 } });
    expect(never.losses.map(({ timeS }) => timeS !== undefined)).toEqual([true, true, true]);
    expect(kept.cleanings.length).toBeGreaterThan(1);
    expect(kept.cleanings[0]!.day).toBe(Math.ceil(never.losses[0]!.timeS! / days(1)));
    expect(Math.min(...kept.days.flowRatio)).toBeGreaterThan(Math.min(...never.days.flowRatio));
  });

  it('that never comes is overdue on every day after the interval; the usual one never is', () => {
    const model = oneBasket([['floss-loose', 25]]);
    const never = forecast(model, { days: 60 });
    expect(never.overdueDays).toBe(61 - Math.ceil(never.firstEnd!.timeS / days(1)));
    expect(forecast(model, { days: 60, pattern: { kind: 'usual' } }).overdueDays).toBe(0);
  });

  it('compared by patterns: the one asked for first, more work for less dirt', () => {
    const { outcomes } = comparePatterns(compiledJob(stackCanister()), { pattern: parts(['all', 7]) });
    expect(outcomes[0]!.pattern).toEqual(parts(['all', 7]));
    expect(outcomes).toHaveLength(usualPatterns.length + 1);
    const byWork = outcomes.filter(({ pattern }) => pattern.kind === 'never' || patternIsAll(pattern));
    const ranked = byWork.toSorted((a, b) => a.workDaysPerYear - b.workDaysPerYear);
    const held = ranked.map(({ meanHeldKg }) => meanHeldKg);
    expect(held).toEqual(held.toSorted((a, b) => b - a));
    expect(ranked).toHaveLength(4);
  });
});

const patternIsAll = (pattern: CleaningPattern): boolean =>
  pattern.kind === 'parts' && pattern.rules.every(({ what }) => what === 'all');

describe('what a forecast tells', () => {
  it('of a hang-on-back without a gap: the overflow opens, and water goes past the media', () => {
    const tight = withMeasurements(hangOnBack({ 'slot-1': [['floss-packed', 20]] }), { railGap: 0 });
    const found = forecast(tight, { days: 30 });
    expect(found.firstEnd).toMatchObject({ endedBy: 'overflow', place: 'overflow-lip' });
    expect(found.overflowOpensS).toBeDefined();
    expect(Math.abs(found.overflowOpensS! - found.firstEnd!.timeS)).toBeLessThan(3600);
    expect(found.days.overflowShare[0]).toBe(0);
    expect(found.days.overflowShare.at(-1)).toBeGreaterThan(0.01);
    expect(found.days.bypass.mechanical.at(-1)).toBeGreaterThan(found.days.overflowShare.at(-1)! * 0.99);
  });

  it('of a filter whose floss has no gap beside it: the floss takes the flow, by a quarter, a third, a half', () => {
    const tight = withFilter(stackCanister({ 'basket-1': [['floss-packed', 50]] }), {
      chamberGapM: { 'basket-1': 0 },
    });
    const { losses } = forecast(tight, { days: 90 });
    const times = losses.map(({ timeS }) => timeS!);
    expect(times).toEqual(times.toSorted((a, b) => a - b));
    expect(losses.map(({ place }) => place)).toEqual(['basket-1/1', 'basket-1/1', 'basket-1/1']);
  });

  it('of a filter through which no water runs is that nothing happens', () => {
    const still = { ...stackCanister(), filter: { ...stackCanister().filter, outletLiftM: 3 } };
    const found = forecast(still, { days: 10, pattern: { kind: 'usual' } });
    expect(found.days.flowM3PerS.every((flow) => Math.abs(flow) < 1e-12)).toBe(true);
    expect(allHeld(found, 10)).toBe(0);
    expect(found.cleanings).toEqual([]);
    expect(Math.abs(found.balanceError)).toBeLessThan(1e-9);
  });

  it('is the same each time', () => {
    expect(forecast(stackCanister(), { days: 30 })).toEqual(forecast(stackCanister(), { days: 30 }));
  });
});
