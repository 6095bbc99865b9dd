import { describe, expect, it } from 'vitest';
import { assess } from '../assessment/assess.ts';
import {
  hangOnBack,
  hose,
  internalBox,
  splitCanister,
  stackCanister,
  sump,
  withFilter,
  withMeasurements,
  withTank,
} from '../assessment/testing/models.ts';
import { families } from '../families/families.ts';
import type { Model, PermittedAlteration } from '../model/model.ts';
import { engineEnglish } from '../wording/english/english.ts';
import type { Said } from '../wording/said.ts';
import { word } from '../wording/word.ts';
import {
  alterationKinds,
  alterationSets,
  altered,
  idleAlterations,
  partPrices,
  partsOf,
} from './alterations.ts';
import { searchPlans } from './search.ts';
import { cautionsOf, stepsOf } from './steps.ts';

const permit = (id: string, settings: Readonly<Record<string, number>> = {}): PermittedAlteration => ({
  id,
  settings,
});
const after = (model: Model, one: PermittedAlteration): Model => altered(model, assess(model).layout, [one]);
const cost = (model: Model, one: PermittedAlteration): number =>
  partsOf(model, assess(model).layout, [one]).reduce((sum, { count, price }) => sum + count * price, 0);

/** Each alteration on a filter that it helps: more water at the tank, or less of it past the media. */
const helps: readonly (readonly [one: PermittedAlteration, model: Model, gain: 'flow' | 'bypass'])[] = [
  [permit('seal-gaps'), withMeasurements(stackCanister(), { wallGap: 0.002 }), 'bypass'],
  [permit('seal-gaps'), withMeasurements(splitCanister(), { partitionGap: 0.002 }), 'bypass'],
  [permit('close-upper-slots'), withMeasurements(internalBox(), { upperSlotArea: 2e-4 }), 'bypass'],
  [permit('hose-bore', { boreM: 0.019 }), stackCanister(), 'flow'],
  [permit('shorten-hose', { lengthM: 0.8 }), stackCanister(), 'flow'],
  [permit('lower-outlet'), withFilter(stackCanister(), { outletLiftM: 0.3 }), 'flow'],
];

const inMetric = (saying: Said): string => word(saying, { language: engineEnglish, units: 'metric' });

describe('alterations', () => {
  it.each(helps)('$id gains what it is for', (one, model, gain) => {
    const before = assess(model);
    const then = assess(after(model, one));
    if (gain === 'flow') expect(then.dutyPoint.flowM3PerS).toBeGreaterThan(before.dutyPoint.flowM3PerS);
    else expect(then.bypass.mechanical).toBeLessThan(before.bypass.mechanical);
  });

  it('turn-head turns the head, and twice turned it is as it was', () => {
    const model = splitCanister();
    const turned = after(model, permit('turn-head'));
    expect(turned.filter.measurements.headTurned).toBe(1);
    expect(assess(turned).routes[0]!.beds).toEqual(assess(model).routes[0]!.beds.toReversed());
    expect(after(turned, permit('turn-head')).filter.measurements.headTurned).toBe(0);
  });

  it('shorten-hose never makes a hose longer', () => {
    const short = withFilter(stackCanister(), { outlet: hose({ lengthM: 0.5 }) });
    expect(after(short, permit('shorten-hose', { lengthM: 1 })).filter.outlet!.lengthM).toBe(0.5);
    expect(after(short, permit('shorten-hose', { lengthM: 1 })).filter.intake!.lengthM).toBe(1);
  });

  it('leave hoses alone where a filter has none', () => {
    const box = internalBox();
    expect(after(box, permit('hose-bore', { boreM: 0.02 }))).toEqual(box);
  });

  it('seal-gaps never opens a gap that was tighter than a strip', () => {
    const model = withFilter(stackCanister(), { chamberGapM: { 'basket-1': 0, 'basket-2': 1e-5 } });
    const { chamberGapM } = after(model, permit('seal-gaps')).filter;
    expect(chamberGapM['basket-1']).toBe(0);
    expect(chamberGapM['basket-2']).toBe(1e-5);
    expect(chamberGapM['basket-3']).toBeLessThan(5.1e-5);
  });

  it('cost their parts at the user’s own price, else at the placeholder', () => {
    const hoses = permit('hose-bore', { boreM: 0.019 });
    expect(cost(stackCanister(), hoses)).toBeCloseTo(3 * partPrices['hose-per-metre']!, 12);
    const own = {
      ...stackCanister(),
      money: { ...stackCanister().money, partPrice: { 'hose-per-metre': 10 } },
    };
    expect(cost(own, hoses)).toBeCloseTo(30, 12);
    expect(cost(internalBox(), hoses)).toBe(0);
    expect(
      cost(withMeasurements(internalBox(), { upperSlotArea: 2e-4 }), permit('close-upper-slots')),
    ).toBeGreaterThan(0);
    expect(cost(internalBox(), permit('close-upper-slots'))).toBe(0);
    expect(cost(withMeasurements(stackCanister(), { wallGap: 0 }), permit('seal-gaps'))).toBe(0);
    for (const free of ['turn-head', 'move-trays', 'lower-outlet'])
      expect(cost(splitCanister(), permit(free))).toBe(0);
  });

  it('go together in every set, none twice; moving trays is part of every search', () => {
    const sets = alterationSets([
      permit('seal-gaps'),
      permit('move-trays'),
      permit('lower-outlet'),
      permit('unheard-of'),
    ]);
    expect(sets.map((set) => set.map(({ id }) => id))).toEqual([
      [],
      ['seal-gaps'],
      ['lower-outlet'],
      ['seal-gaps', 'lower-outlet'],
    ]);
  });

  it('that no figure rewards go into every set', () => {
    const sets = alterationSets([permit('seal-gaps'), permit('siphon-hole', { depthM: 0.02 })]);
    expect(sets.map((set) => set.map(({ id }) => id))).toEqual([
      ['siphon-hole'],
      ['siphon-hole', 'seal-gaps'],
    ]);
  });

  it('siphon-hole stops what a sump takes back, and what a canister loses by its intake', () => {
    const placing = { humpM: 0.1, lidDepthM: 0.9, intakeDepthM: 0.3, returnDepthM: 0.12 };
    const hole = permit('siphon-hole', { depthM: 0.02 });
    for (const [model, cause] of [
      [sump(), 'power-fails'],
      [stackCanister(), 'intake-hose-off'],
    ] as const) {
      const placed = withTank(withFilter(model, { placing }), { surfaceM2: 0.5 });
      const falls = [placed, after(placed, hole)].map(
        (each) => assess(each).site.spills.find((spill) => spill.cause === cause)!.fallM,
      );
      expect(falls[0]).toBeGreaterThanOrEqual(0.12);
      expect(falls[1]).toBeLessThanOrEqual(0.04);
    }
    expect(after(sump(), hole)).toEqual(sump());
  });

  it('siphon-hole is no lower than a hole that is there, and none where the mouth is as high', () => {
    const placing = { humpM: 0, lidDepthM: 0.9, intakeDepthM: 0.01, returnDepthM: 0.12, returnHoleM: 0.01 };
    const then = after(withFilter(stackCanister(), { placing }), permit('siphon-hole', { depthM: 0.02 }));
    expect(then.filter.placing).toEqual(placing);
  });

  it('are known for every family, and each says what to do with its settings', () => {
    for (const family of families)
      for (const id of family.alterations) expect(alterationKinds[id]).toBeDefined();
    for (const kind of Object.values(alterationKinds)) {
      const settings = Object.fromEntries(kind.settings.map((name) => [name, 0.0125]));
      expect(kind.says.length).toBeGreaterThan(5);
      for (const step of kind.steps(settings)) expect(inMetric(step)).toMatch(/\.$/);
      for (const step of kind.steps(settings)) expect(inMetric(step)).not.toContain('NaN');
    }
    expect(inMetric(alterationKinds['hose-bore']!.steps({ boreM: 0.0125 })[0]!)).toContain('12.5 mm');
  });
});

describe('steps of a plan', () => {
  const dry: Model = {
    ...withFilter(stackCanister(), { outletLiftM: 2 }),
    alterations: [permit('lower-outlet')],
    shelf: [{ medium: 'foam-10ppi' }],
  };
  const { plans } = searchPlans(dry, { budget: 12, cap: 120 });

  it('begin with the plug and end with tests of the water', () => {
    expect(plans.length).toBeGreaterThan(0);
    for (const plan of plans) {
      const steps = stepsOf(plan);
      expect(steps.findIndex((step) => step.startsWith('Unplug'))).toBe(
        plan.purchases.length + plan.renewals.length,
      );
      expect(steps.at(-1)).toContain('test ammonia and nitrite on days 1, 3, 5, 7 and 14');
    }
  });

  it('speak of taps and seals to canisters alone', () => {
    const texts = [hangOnBack(), internalBox()].flatMap((model) => {
      const planned = searchPlans({ ...model, shelf: [{ medium: 'foam-20ppi' }] }, { budget: 10, cap: 40 });
      return planned.plans.flatMap((plan) => stepsOf(plan));
    });
    expect(texts.length).toBeGreaterThan(0);
    expect(texts.filter((text) => /taps|main seal|clips/.test(text))).toEqual([]);
  });

  it('name every chamber once, packed or left empty, and every purchase', () => {
    for (const plan of plans) {
      const steps = stepsOf(plan);
      for (const chamber of plan.assessment.layout.chambers)
        expect(
          steps.filter(
            (step) => step.startsWith(`Pack ${chamber.label}`) || step === `Leave ${chamber.label} empty.`,
          ),
        ).toHaveLength(1);
      expect(steps.filter((step) => step.startsWith('Get '))).toHaveLength(plan.purchases.length);
      expect(steps.some((step) => step.startsWith('Keep at least a third'))).toBe(plan.purchases.length > 0);
    }
  });

  it('carry out the alterations; the cautions of the media stand apart, each with its medium', () => {
    const [best] = plans;
    const steps = stepsOf(best!);
    expect(steps.some((step) => step.startsWith('Lower the outlet'))).toBe(true);
    const used = new Set(Object.values(best!.packing).flatMap((beds) => beds.map(({ medium }) => medium)));
    for (const medium of used)
      for (const says of dry.media[medium]!.cautions)
        expect(cautionsOf(best!)).toContainEqual({ medium: dry.media[medium]!.name, says });
  });
});

describe('an alteration that changes nothing on a filter', () => {
  const idle = (model: Model): string[] => {
    const { layout } = assess(model);
    return [...idleAlterations(Object.keys(alterationKinds), model, layout)];
  };

  it('is told: an outlet under the surface, gaps that are sealed, slots that there are none of', () => {
    const canister = stackCanister();
    expect(idle(withFilter(canister, { outletLiftM: 0 }))).toContain('lower-outlet');
    expect(idle(withFilter(canister, { outletLiftM: 0.1 }))).not.toContain('lower-outlet');
    expect(idle(canister)).toContain('close-upper-slots');
    expect(idle(withMeasurements(canister, { wallGap: 0 }))).toContain('seal-gaps');
    expect(idle(canister)).not.toContain('seal-gaps');
  });

  it('leaves the model as it is, and is none that has settings', () => {
    const model = withMeasurements(withFilter(stackCanister(), { outletLiftM: 0 }), { wallGap: 0 });
    const { layout } = assess(model);
    for (const id of idle(model)) {
      expect(alterationKinds[id]!.settings).toEqual([]);
      expect(alterationKinds[id]!.apply(model, layout, {})).toEqual(model);
    }
  });
});
