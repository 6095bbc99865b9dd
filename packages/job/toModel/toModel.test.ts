import { media } from '@fettle/engine/catalogue/media.ts';
import { describe, expect, it } from 'vitest';
import { fullJob, jobWithForbidden } from '../testing/fullJob.ts';
import {
  givenOf,
  leastCanister,
  litresPerHour,
  modelWith,
  notesWith,
  perDay,
  readWith,
} from '../testing/readWith.ts';

describe('what is stated', () => {
  const model = modelWith({});

  it('the tank comes out in SI units', () => {
    expect(model.tank).toMatchObject({ salinity: 0, pH: 7.2, oxygenFraction: 0.92, planted: true });
    expect(model.tank.volumeM3).toBeCloseTo(0.18, 12);
    expect(model.tank.temperatureK).toBeCloseTo(298.15, 9);
    expect(model.tank.alkalinityKgPerM3).toBeCloseTo(4 * 0.017848, 9);
    expect(model.tank.feedKgPerS).toBeCloseTo(0.0014 * perDay, 15);
    expect(model.tank.feedProteinFraction).toBeCloseTo(0.42, 12);
    expect(model.tank.waterChangePerS).toBeCloseTo((0.3 / 7) * perDay, 15);
  });

  it('the pump keeps its measured points', () => {
    const { curve, ratedFlowM3PerS, powerW, speedRatio } = model.filter.pump;
    expect(curve.kind === 'points' && curve.points.map(({ headM }) => headM)).toEqual([1.3, 0.9, 0]);
    expect(ratedFlowM3PerS).toBeCloseTo(900 * litresPerHour, 12);
    expect([powerW, speedRatio]).toEqual([14, 1]);
  });

  it('hoses, gaps, price and life come out in SI units', () => {
    expect(model.filter.outlet).toEqual({
      lengthM: 1.2,
      boreM: 0.016,
      barbBoreM: 0.013,
      roughnessM: 2e-6,
      fittings: ['elbow-90'],
      extraK: 1,
      filmM: 0.0001,
      coil: { turns: 1.5, diameterM: 0.3 },
      kinkOpenFraction: 0.7,
      tapOpenFraction: 0.9,
      checkValveHeadM: 0.02,
      fallSlope: 0.3,
    });
    expect(model.filter).toMatchObject({
      outletLiftM: 0.02,
      chamberGapM: { 'basket-1': 0.0004, 'basket-2': 0.0005 },
      price: 85,
    });
    expect(model.filter.lifeYears).toBeCloseTo(8, 9);
  });

  it('beds get a depth from depth, share, volume or mass', () => {
    const depths = Object.fromEntries(
      Object.entries(model.packing).map(([chamber, beds]) => [chamber, beds.map(({ depthM }) => depthM)]),
    );
    const areaM2 = 0.16 * 0.15;
    expect(depths['basket-1']?.[0]).toBeCloseTo(0.03, 12);
    expect(depths['basket-1']?.[1]).toBeCloseTo(0.4 * 0.06, 12);
    expect(depths['basket-2']?.[0]).toBeCloseTo(0.0012 / areaM2, 12);
    const density = media['ceramic-rings-12mm']?.bulkDensityKgPerM3.value ?? Number.NaN;
    expect(depths['basket-3']?.[0]).toBeCloseTo(0.5 / density / areaM2, 12);
    expect(depths['basket-4']).toEqual([0.01, 0.02]);
  });

  it('beds have names of their own', () => {
    const ids = Object.values(model.packing).flatMap((beds) => beds.map(({ id }) => id));
    expect(new Set(ids).size).toBe(ids.length);
    expect(model.packing['basket-1']?.map(({ id }) => id)).toEqual(['basket-1:1', 'basket-1:2']);
  });

  it('a stated doubt is listed and no value is called assumed', () => {
    expect(model.givens.filter((given) => given.assumedBecause !== undefined)).toEqual([]);
    expect(givenOf(model, 'tank.volume')).toEqual({
      path: 'tank.volume',
      modelPath: 'tank.volumeM3',
      value: 0.18,
      unit: 'm3',
      doubt: { kind: 'plus-minus', size: expect.closeTo(0.009, 12) },
    });
    expect(givenOf(model, 'packing.basket-1[0].depth')?.doubt).toMatchObject({
      size: expect.closeTo(0.002, 9),
    });
    expect(givenOf(model, 'filter.measurements.basketHeight')?.doubt).toMatchObject({
      size: expect.closeTo(0.001, 9),
    });
    expect(givenOf(model, 'filter.gaps.basket-2')?.modelPath).toBe('filter.chamberGapM.basket-2');
  });

  it('every path of a given leads to its value in the model', () => {
    const all = [...model.givens, ...modelWith({}, leastCanister).givens];
    const of = (given: (typeof all)[number]) =>
      model.givens.includes(given) ? model : modelWith({}, leastCanister);
    for (const given of all) {
      const steps = given.modelPath.replaceAll(/\[(\d+)\]/g, '.$1').split('.');
      const found = steps.reduce<unknown>((value, step) => Object(value)[step], of(given));
      expect(Number(found), given.modelPath).toBeCloseTo(given.value, 12);
    }
  });

  it("the technician's own medium takes over all else from the one that it is like", () => {
    const own = model.media['my-rings'];
    const like = media['ceramic-rings-12mm'];
    expect(own).toMatchObject({
      id: 'my-rings',
      name: 'short ceramic rings',
      areaPerM: { value: 150, doubt: { kind: 'factor', size: 2 }, source: { kind: 'stated' } },
      resistance: { law: 'hollow', surfacePerM: { value: 380 } },
      cautions: ['Chips easily.'],
    });
    expect(own?.resistance.law === 'hollow' && own.resistance.sizeM).toMatchObject({
      value: 0.014,
      doubt: like?.resistance.law === 'hollow' && like.resistance.sizeM.doubt,
    });
    expect(model.media['my-foam']?.areaPerM).toEqual(media['foam-20ppi']?.areaPerM);
  });

  it('prices are those of the list, then of the shelf, then of the medium, then of the catalogue', () => {
    const prices = model.money.mediumPricePerM3;
    expect(prices['my-rings']).toBeCloseTo(5000, 9);
    expect(prices['floss-loose']).toBeCloseTo(3000, 9);
    expect(prices['foam-30ppi']).toBe(media['foam-30ppi']?.pricePerM3.value);
    expect(modelWith({ 'money.media': {} }).money.mediumPricePerM3['my-rings']).toBeCloseTo(6000, 9);
    expect(model.money.partPrice).toEqual({ 'seal-strip': 2.5 });
    expect(model.money.tariffPerJ).toBeCloseTo(0.27 / 3.6e6, 15);
    expect(model.money.labourPerS).toBeCloseTo(30 / 3600, 12);
  });

  it('shelf, alterations, other filters and claims', () => {
    expect(model.shelf).toEqual([{ medium: 'foam-20ppi' }, { medium: 'floss-loose', amountM3: 0.002 }]);
    expect(model.alterations).toEqual([
      { id: 'seal-gaps', settings: {} },
      { id: 'hose-bore', settings: { boreM: 0.019 } },
      { id: 'shorten-hose', settings: { lengthM: 0.9 } },
      { id: 'siphon-hole', settings: { depthM: 0.02 } },
    ]);
    expect(modelWith({}, jobWithForbidden).alterations).toEqual(model.alterations);
    const area = (media['foam-20ppi']?.areaPerM.value ?? Number.NaN) * 0.0005;
    expect(model.otherFilters[0]?.areaM2).toBeCloseTo(area, 9);
    expect(model.claims).toEqual(['Pump output 900 L/h (238 US gal/h)']);
  });
});

describe('bench tests', () => {
  const model = modelWith({});

  it('a timed filling gives the flow with the doubt of volume, watch and repeats together', () => {
    // Mean 31.1667 s; shares of the flow: volume 0.5 %, watch 0.15 s, scatter 0.3512/√3 s; ν 9.1, so k = 2.32.
    const test = model.tests[0];
    if (test?.kind !== 'timed-volume') throw new Error('no timed filling');
    expect(test).toMatchObject({ id: 'fill-as-found', state: 'as-found', repeats: 3 });
    expect(test.flowM3PerS / litresPerHour).toBeCloseTo(577.54, 2);
    expect(test.doubtM3PerS / litresPerHour).toBeCloseTo(12.75, 2);
  });

  it('one timing alone is read with the scatter that careful runs have', () => {
    const changes = { 'tests[0].times': ['31 s'] };
    const test = modelWith(changes).tests[0];
    // 2 √(0.5² + (0.15/0.31)² + 0.65²) %
    expect(test?.kind === 'timed-volume' && test.doubtM3PerS / test.flowM3PerS).toBeCloseTo(0.01904, 4);
    expect(notesWith(changes)).toContain('repeat-assumed tests[0]');
  });

  it('a run that lies outside what the others allow is named, and counted all the same', () => {
    const changes = { 'tests[0].times': ['31 s', '30 s', '1 min 2 s'] };
    const reading = readWith(changes);
    const odd = reading.ok ? reading.notes.find(({ code }) => code === 'odd-run') : undefined;
    expect(odd?.path).toBe('tests[0].times[2]');
    expect(odd?.says).toContain('(1 min 2 s) lies outside what the other runs allow (30 s to 31 s;');
    expect(modelWith(changes).tests[0]).toMatchObject({ repeats: 3 });
    expect(notesWith({}).filter((each) => each.startsWith('odd-run'))).toEqual([]);
  });

  it('states of the filter and readings without a doubt have their usual ones', () => {
    const changes = { 'tests[1].power': '40 W', 'tests[1].state': undefined };
    expect(modelWith(changes).tests[1]).toMatchObject({
      kind: 'power',
      state: 'as-found',
      powerW: 40,
      doubtW: 0.8,
    });
    expect(model.tests[1]).toMatchObject({ powerW: 13.2, doubtW: 0.5 });
    expect(model.tests[2]).toMatchObject({ kind: 'shutoff-head', headM: 1.25, doubtM: 0.02 });
    expect(model.tests[3]).toMatchObject({ kind: 'displacement', chamber: 'basket-1' });
    expect(model.tests.length).toBe(4);
  });

  it('tests that nothing is computed from yet are kept and named', () => {
    expect(notesWith({}).filter((each) => each.includes('tests'))).toEqual(['kept-not-used tests[5]']);
  });
});

describe('what there is to know', () => {
  it.each<readonly [string, Readonly<Record<string, unknown>>, unknown, string]>([
    [
      'plans may change nothing unless it is permitted',
      {},
      leastCanister,
      'alterations-not-stated alterations',
    ],
    ['without a shelf a common one is offered', {}, leastCanister, 'shelf-not-stated shelf'],
    ['the feed was reckoned', {}, leastCanister, 'feed-not-stated tank.feed'],
    [
      'alterations with settings must be permitted by name',
      { alterations: { forbidden: ['move-trays'] } },
      fullJob,
      'alterations-need-settings alterations',
    ],
    [
      'two beds of one medium lie on one another',
      { 'packing.basket-1[1].medium': 'foam-20ppi' },
      fullJob,
      'beds-alike packing.basket-1[1]',
    ],
    [
      'barbs are wider than their hose',
      { 'filter.hoses.outlet.bore': '12 mm', 'filter.hoses.outlet.barbBore': '13 mm' },
      fullJob,
      'barbs-wider-than-hose filter.hoses.outlet.barbBore',
    ],
  ])('%s', (_what, changes, document, expected) => {
    expect(notesWith(changes, document)).toContain(expected);
  });

  it('barbs as wide as their hose need no note', () => {
    const changes = { 'filter.hoses.outlet.bore': '12 mm', 'filter.hoses.outlet.barbBore': '12 mm' };
    expect(notesWith(changes).join()).not.toContain('barbs-wider-than-hose');
  });

  it('forbidding some permits the others that need no setting', () => {
    const model = modelWith({ alterations: { forbidden: ['move-trays'] } });
    expect(model.alterations.map(({ id }) => id)).toEqual(['seal-gaps', 'lower-outlet']);
  });
});
