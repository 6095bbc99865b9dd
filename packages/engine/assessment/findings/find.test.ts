import { describe, expect, it } from 'vitest';
import type { BenchTest, Model } from '../../model/model.ts';
import { engineEnglish } from '../../wording/english/english.ts';
import { word } from '../../wording/word.ts';
import { assess } from '../assess.ts';
import type { Finding } from '../assessment.ts';
import { effectBetween, netGain } from '../effect.ts';
import { airCases } from '../testing/airCases.ts';
import { laid } from '../testing/laid.ts';
import {
  gramsPerDay,
  hangOnBack,
  hose,
  internalBox,
  type Layer,
  litresPerHour,
  oneBasket,
  splitCanister,
  stackCanister,
  withFilter,
  withMeasurements,
  withTank,
} from '../testing/models.ts';
import { withPulse } from '../testing/pulse.ts';
import { wayCases } from '../testing/wayCases.ts';
import { findingRules, findingsOf } from './find.ts';

const findings = (model: Model): Finding[] => findingsOf(model, assess(model));

/** A stack with these layers in the order of the water, one to a basket from the lowest up. */
const inOrder = (...layers: readonly Layer[]): Model =>
  stackCanister(Object.fromEntries(layers.map((layer, place) => [`basket-${place + 1}`, [layer]])));

const foam: Layer = ['foam-20ppi', 40];
const rings: Layer = ['ceramic-rings-15mm', 50];
const zeolite: Layer = ['zeolite-4mm', 30];
const good = inOrder(foam, rings, zeolite);
const tight = withMeasurements(good, { wallGap: 0 });
const outlet = (change: Parameters<typeof hose>[0], model = good): Model =>
  withFilter(model, { outlet: hose(change) });
const timed = (flow: number, state: 'as-found' | 'cleaned-original'): BenchTest => ({
  kind: 'timed-volume',
  id: 'flow-1',
  state,
  flowM3PerS: litresPerHour(flow),
  doubtM3PerS: litresPerHour(5),
  repeats: 3,
});
/** A filter in a cabinet, its intake so deep under a surface of 0.45 m². */
const placed = (intakeDepthM: number): Model =>
  withTank(withFilter(good, { placing: { humpM: 0.12, lidDepthM: 0.9, intakeDepthM, returnDepthM: 0 } }), {
    surfaceM2: 0.45,
  });
const lazy = (model: Model, speedRatio: number): Model =>
  withFilter(model, { pump: { ...model.filter.pump, speedRatio } });
const stopped = withMeasurements(
  hangOnBack({ 'slot-1': [['polishing-pad', 22]], 'slot-2': [['ceramic-rings-12mm', 20]] }),
  {
    railGap: 0,
  },
);

/** For each kind of finding a job that shows it, and one that must not. */
const cases: readonly (readonly [id: string, shown: Model, hidden: Model])[] = [
  ['pump-cannot-lift', withFilter(good, { outletLiftM: 2 }), withFilter(good, { outletLiftM: 0.5 })],
  ['biological-before-mechanical', inOrder(rings, foam), inOrder(foam, rings)],
  [
    'fine-before-coarse',
    inOrder(['floss-packed', 20], foam, rings),
    inOrder(foam, ['floss-packed', 20], rings),
  ],
  ['chemical-before-biological', inOrder(foam, zeolite, rings), good],
  [
    'bypass-past-bed',
    withFilter(oneBasket([['floss-packed', 100]]), { chamberGapM: { 'basket-1': 0.003 } }),
    tight,
  ],
  ['cut-too-small', laid(oneBasket([['foam-45ppi', 100]]), { cutGapM: 0.004 }), tight],
  [
    'packed-tight',
    laid(oneBasket([['floss-loose', 60]]), { pressedRatio: 3 }),
    oneBasket([['floss-loose', 60]]),
  ],
  [
    'past-bag',
    laid(oneBasket([['carbon-granular-2mm', 100]]), { bag: { openFraction: 0.4, cornerRadiusM: 0.02 } }),
    laid(oneBasket([['carbon-granular-2mm', 100]]), { bag: { openFraction: 0.4, cornerRadiusM: 0 } }),
  ],
  [
    'slot-past-media',
    withFilter(oneBasket([['floss-packed', 100]]), {
      otherSlots: [
        {
          id: 'lip',
          chamber: 'basket-1',
          at: 'tray-lip',
          thicknessM: 0.002,
          widthM: 0.4,
          lengthM: 0.003,
        },
      ],
    }),
    tight,
  ],
  ['opening-past-media', withMeasurements(internalBox(), { upperSlotArea: 2e-4 }), internalBox()],
  ...wayCases,
  ['opening-narrower-than-hose', withMeasurements(good, { downTubeBore: 0.01 }), good],
  ['bed-too-shallow', inOrder(['foam-10ppi', 8], rings), good],
  ['dead-chamber', inOrder(foam, rings), good],
  ['stage-missing', inOrder(foam, foam), good],
  ['replaced-often', withTank(inOrder(['polishing-pad', 10], rings), { feedKgPerS: gramsPerDay(5) }), good],
  ['media-unsuited', withTank(good, { salinity: 30 }), good],
  [
    'media-unsuited',
    withTank(inOrder(foam, rings, ['peat-granules-5mm', 20]), { alkalinityKgPerM3: 0.2 }),
    withTank(inOrder(foam, rings, ['peat-granules-5mm', 20]), { alkalinityKgPerM3: 0.03 }),
  ],
  [
    'full-before-replaced',
    withTank(inOrder(foam, rings, ['ferric-oxide-1mm', 3]), { feedKgPerS: gramsPerDay(20) }),
    inOrder(foam, rings),
  ],
  [
    'dirt-in-biological-bed',
    withTank(inOrder(['gravel-4mm', 50]), { feedKgPerS: gramsPerDay(1.5) }),
    inOrder(['floss-packed', 40], rings),
  ],
  ['hose-too-long', outlet({ lengthM: 4 }), outlet({ lengthM: 1 })],
  ['hose-kinked', outlet({ extraK: 4 }), good],
  ['barbs-too-narrow', outlet({ barbBoreM: 0.008 }), outlet({ barbBoreM: 0.016 })],
  ['outlet-lift', withFilter(good, { outletLiftM: 0.2 }), good],
  ['flow-for-tank', withTank(good, { volumeM3: 1 }), good],
  ['flow-for-tank', withTank(good, { volumeM3: 0.03 }), good],
  ['flow-for-tank', lazy(good, 0.1), withFilter(good, { outletLiftM: 2 })],
  [
    'fed-more-than-carried',
    withTank(good, { feedKgPerS: gramsPerDay(10) }),
    withTank(good, { feedKgPerS: gramsPerDay(0.1) }),
  ],
  ['oxygen-starved-outlet', withTank(good, { oxygenFraction: 0.3 }), good],
  [
    'clogs-soon',
    withTank(inOrder(['floss-packed', 40], rings), { feedKgPerS: gramsPerDay(5) }),
    withTank(good, { feedKgPerS: gramsPerDay(0.05) }),
  ],
  ['overflow-open', stopped, hangOnBack()],
  ['spills-over', placed(0.3), placed(0.002)],
  ['jet-sweeps-tank', withTank(placed(0.3), { standsCurrentMPerS: 0.02 }), placed(0.3)],
  ['alkalinity-runs-down', withTank(good, { waterChangePerS: 0 }), withTank(good, { waterChangePerS: 1e-5 })],
  [
    'measured-differs',
    { ...good, tests: [timed(200, 'cleaned-original')] },
    { ...good, tests: [timed(630, 'cleaned-original')] },
  ],
  [
    'measured-differs',
    { ...good, tests: [timed(1200, 'as-found')] },
    { ...good, tests: [timed(100, 'as-found')] },
  ],
  ['dye-early', withPulse(good, [1, 3, 60]), withPulse(good, [20, 33, 60])],
  ['dye-dead-room', withPulse(good, [8, 15, 22]), withPulse(good, [20, 33, 60])],
  [
    'measured-below-dirty',
    { ...good, tests: [timed(100, 'as-found')] },
    { ...good, tests: [timed(100, 'as-found'), timed(630, 'cleaned-original')] },
  ],
  ...airCases,
  ['water-too-acid', withTank(good, { pH: 6.4 }), good],
  ['order-follows-the-water', good, inOrder(rings, foam)],
  ['little-bypass', tight, withMeasurements(internalBox(), { upperSlotArea: 2e-4 })],
];

describe('findings', () => {
  it.each(cases)('%s is found where it is and only there', (id, shown, hidden) => {
    expect(findings(shown).map((finding) => finding.id)).toContain(id);
    expect(findings(hidden).map((finding) => finding.id)).not.toContain(id);
  });

  it('has a case for every kind', () => {
    const covered = new Set(cases.map(([id]) => id));
    expect(findingRules.map(({ id }) => id).filter((id) => !covered.has(id))).toEqual([]);
  });

  it('come worst first', () => {
    const rank = { grave: 0, marked: 1, slight: 2, note: 3, strength: 4 };
    for (const [, shown] of cases) {
      const ranks = findings(shown).map(({ severity }) => rank[severity]);
      expect(ranks).toEqual(ranks.toSorted((a, b) => a - b));
    }
  });

  it('say what is wrong in whole sentences and in numbers that exist', () => {
    for (const [, shown] of cases) {
      for (const { says, cure } of findings(shown)) {
        expect(says).toMatch(/^[A-Z0-9].*\.$/);
        expect(cure).toMatch(/\.$/);
        expect(says).not.toMatch(/NaN|Infinity|undefined/);
      }
    }
  });

  it('say what kinks cost as the head that they take at the clean flow', () => {
    const kinked = outlet({ extraK: 4 });
    const flow = assess(kinked).dutyPoint.flowM3PerS;
    const head = (4 * ((4 * flow) / (Math.PI * 0.016 ** 2)) ** 2) / (2 * 9.80665);
    const says = findings(kinked).find(({ id }) => id === 'hose-kinked')!.says;
    expect(Number(/cost ([\d.]+) cm of head/.exec(says)?.[1])).toBeCloseTo(100 * head, 1);
    expect(says).not.toContain('velocity');
  });

  it('are coded, so that another wording says them in both systems of units', () => {
    const long = outlet({ lengthM: 4 });
    const { said, cureSaid, says } = findingsOf(long, assess(long)).find(({ id }) => id === 'hose-too-long')!;
    const both = { language: engineEnglish, units: 'both' } as const;
    expect(word(said, both)).toMatch(
      /^The outlet hose, 4\.00 m \(13\.1 ft\) of 16\.0 mm \(0\.630 in\) bore, /,
    );
    expect(word(cureSaid, both)).toContain('1.00 m (3.28 ft)');
    expect(word(said, { language: engineEnglish, units: 'metric' })).toBe(says);
  });

  it('print in the system of units asked for', () => {
    const long = outlet({ lengthM: 4 });
    const says = (system: 'metric' | 'us'): string =>
      findingsOf(long, assess(long), { system }).find(({ id }) => id === 'hose-too-long')!.says;
    expect(says('metric')).toContain('4.00 m');
    expect(says('us')).toMatch(/ (ft|in) /);
  });
});

/** Faults with the job in which only the fault is cured. */
const cures: readonly (readonly [id: string, fault: Model, cured: Model])[] = [
  ['outlet-lift', withFilter(good, { outletLiftM: 0.2 }), good],
  ['hose-kinked', outlet({ extraK: 4 }), outlet({ extraK: 0 })],
  ['hose-too-long', outlet({ lengthM: 4 }), outlet({ lengthM: 1 })],
  ['barbs-too-narrow', outlet({ barbBoreM: 0.008 }), outlet({ barbBoreM: 0.016 })],
  [
    'opening-past-media',
    withMeasurements(internalBox(), { upperSlotArea: 2e-4 }),
    withMeasurements(internalBox(), { upperSlotArea: 0 }),
  ],
  ['pump-cannot-lift', withFilter(good, { outletLiftM: 2 }), good],
  [
    'partition-leaks',
    withMeasurements(splitCanister(), { partitionGap: 0.002 }),
    withMeasurements(splitCanister(), { partitionGap: 5e-5 }),
  ],
];

describe('the effect of a finding', () => {
  it.each(cures)('%s is the difference between two assessments', (id, fault, cured) => {
    const found = findings(fault).find((finding) => finding.id === id)!;
    expect(found.effect).toEqual(effectBetween(assess(fault), assess(cured)));
  });

  it('of an order that is put right keeps every bed and its volume', () => {
    const wrong = inOrder(rings, foam);
    const right = inOrder(foam, rings);
    const { effect } = findings(wrong).find(({ id }) => id === 'biological-before-mechanical')!;
    const after = assess({ ...wrong, packing: right.packing });
    expect(effect!.feed.afterKgPerS / after.carries.day.feedKgPerS).toBeCloseTo(1, 6);
    expect(effect!.cleaningInterval.afterS / after.cleaning.timeS).toBeCloseTo(1, 6);
  });

  it('is grave, marked, slight or a note by what the cure gains', () => {
    const severity = (outletLiftM: number): string | undefined =>
      findings(withFilter(good, { outletLiftM })).find(({ id }) => id === 'outlet-lift')?.severity;
    expect(severity(1.3)).toBe('grave');
    expect(severity(0.01)).toBe('note');
    expect(['marked', 'slight']).toContain(severity(0.2));
  });

  it.each([
    ['pump-cannot-lift', 'grave', lazy(good, 0), 'gains nothing here on the whole'],
    ['biological-before-mechanical', 'note', inOrder(rings, ['foam-30ppi', 40]), 'loses more here than'],
  ])('says of %s, a %s, where its cure does no good by itself', (id, severity, fault, says) => {
    const found = findings(fault).find((finding) => finding.id === id)!;
    expect(found.severity).toBe(severity);
    const gain = netGain(found.effect!);
    expect(says.startsWith('loses') ? gain < -0.03 : gain === 0).toBe(true);
    expect(found.cure).toContain(`By itself this ${says}`);
  });

  it('says nothing of the kind of a cure that does good', () => {
    for (const { cure, effect } of findings(outlet({ extraK: 4 })))
      if (effect !== undefined && netGain(effect) > 0) expect(cure).not.toContain('By itself');
  });

  it('is absent where there is no room for the cure', () => {
    const full = oneBasket([
      ['foam-10ppi', 10],
      ['gravel-4mm', 190],
    ]);
    const shallow = findings(full).find(({ id }) => id === 'bed-too-shallow')!;
    expect(shallow.effect).toBeUndefined();
    expect(shallow.severity).toBe('note');
  });
});
