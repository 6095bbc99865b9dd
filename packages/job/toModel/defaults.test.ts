import { fish, fishMassKg } from '@fettle/engine/catalogue/fish.ts';
import { families } from '@fettle/engine/families/families.ts';
import { describe, expect, it } from 'vitest';
import { newJob } from '../newJob.ts';
import { readJob } from '../read.ts';
import { givenOf, leastCanister, litresPerHour, modelWith, notesWith, perDay } from '../testing/readWith.ts';
import { commonShelf } from './supplies.ts';
import { pressureAt } from './tank.ts';

describe('what is not stated', () => {
  const model = modelWith({}, leastCanister);

  it('is assumed, and every assumption is listed with its reason', () => {
    const assumed = model.givens
      .filter((given) => given.assumedBecause !== undefined)
      .map(({ path }) => path);
    expect(assumed.toSorted()).toEqual(
      [
        ...[
          'temperature',
          'pH',
          'alkalinity',
          'salinity',
          'altitude',
          'oxygen',
          'feed',
          'protein',
          'planted',
        ].map((field) => `tank.${field}`),
        'tank.waterChange',
        ...['wallGap', 'floorOpenFraction', 'baseHeight', 'headSpace', 'downTubeBore'].map(
          (key) => `filter.measurements.${key}`,
        ),
        ...['shutoffHead', 'power', 'speed'].map((field) => `filter.pump.${field}`),
        ...['intake', 'outlet'].flatMap((side) =>
          ['length', 'bore', 'barbBore', 'roughness', 'extraLoss'].map(
            (field) => `filter.hoses.${side}.${field}`,
          ),
        ),
        'filter.hoses.outlet.lift',
        'filter.life',
        'money.tariff',
        'money.labour',
      ].toSorted(),
    );
    for (const { assumedBecause } of model.givens) expect(assumedBecause).toMatch(/^not stated: \S/);
  });

  it('takes the defaults', () => {
    expect(model.tank.temperatureK).toBeCloseTo(298.15, 9);
    expect(model.tank.waterChangePerS).toBeCloseTo((0.25 / 7) * perDay, 15);
    expect(model.tank.pressurePa).toBe(101_325);
    expect(model.tank.planted).toBe(false);
    expect(model.filter.pump.curve).toMatchObject({ kind: 'two-point', shutoffHeadM: 1.2 });
    expect(model.filter.pump.powerW).toBeCloseTo(10.5, 9);
    expect(model.filter.intake).toMatchObject({
      lengthM: 1.5,
      boreM: 0.012,
      roughnessM: 1.5e-6,
      fittings: ['strainer'],
    });
    expect(model.filter.intake?.barbBoreM).toBeCloseTo(0.8 * 0.012, 12);
    expect(model.filter.lifeYears).toBeCloseTo(8, 9);
    expect(model.filter.price).toBeUndefined();
    expect(model.money.currency).toBe('GBP');
    expect(model.shelf).toEqual(commonShelf.map((medium) => ({ medium })));
    expect(model.alterations).toEqual([]);
  });

  it.each([
    ['light', 0.4],
    ['normal', 0.8],
    ['heavy', 1.6],
  ])('a tank of 100 L with %s stock is fed %d g a day', (stock, grams) => {
    expect(modelWith({ 'tank.stock': stock }, leastCanister).tank.feedKgPerS).toBeCloseTo(
      (grams / 1000) * perDay,
      14,
    );
  });

  it('fish that are listed set the feed, more of them and in the warm more', () => {
    const fed = (changes: Readonly<Record<string, unknown>>) =>
      modelWith({ 'tank.fish': [{ kind: 'guppy', count: 20 }], ...changes }, leastCanister).tank.feedKgPerS;
    const kind = fish.guppy;
    if (kind === undefined) throw new Error('no guppy');
    const massKg = fishMassKg({ lengthMass: kind.lengthMass, lengthM: kind.adultLengthM.value });
    // 2 % of the mass a day at 10 g, more for a smaller fish.
    expect(fed({}) / (20 * massKg * perDay)).toBeGreaterThan(0.02);
    expect(fed({}) / (20 * massKg * perDay)).toBeLessThan(0.08);
    expect(fed({ 'tank.fish': [{ kind: 'guppy', count: 40 }] })).toBeCloseTo(2 * fed({}), 14);
    expect(fed({ 'tank.temperature': '20 °C' })).toBeLessThan(fed({}));
    expect(fed({ 'tank.fish': [{ kind: 'guppy', count: 20, length: '2 cm' }] })).toBeLessThan(fed({}));
    expect(fed({ 'tank.feed': '1 g/d' })).toBeCloseTo(0.001 * perDay, 14);
  });

  it('a curve without a rated flow gives it by its last point', () => {
    const curve = [
      { flow: '0 L/h', head: '1 m' },
      { flow: '500 L/h', head: '0.1 m' },
    ];
    const pumped = modelWith({ 'filter.pump': { curve } }, leastCanister);
    expect(pumped.filter.pump.ratedFlowM3PerS).toBeCloseTo(500 * litresPerHour, 12);
    expect(givenOf(pumped, 'filter.pump.ratedFlow')?.assumedBecause).toContain('last point');
  });

  it('a curve that begins above no flow starts from the stated shut-off head', () => {
    const curve = [
      { flow: '100 L/h', head: '0.9 m' },
      { flow: '500 L/h', head: '0.1 ± 0.02 m' },
    ];
    const pumped = modelWith({ 'filter.pump': { curve, shutoffHead: '1 m ± 5 cm' } }, leastCanister);
    const points = pumped.filter.pump.curve.kind === 'points' ? pumped.filter.pump.curve.points : [];
    expect(points.map(({ headM }) => headM)).toEqual([1, 0.9, 0.1]);
    expect(givenOf(pumped, 'filter.pump.shutoffHead')?.modelPath).toBe('filter.pump.curve.points[0].headM');
    expect(givenOf(pumped, 'filter.pump.curve[1].head')?.modelPath).toBe('filter.pump.curve.points[2].headM');
  });

  it.each([
    [300, 9],
    [350, 9],
    [600, 12],
    [900, 16],
    [1500, 19],
    [9000, 25],
  ])('a pump of %d L/h gets a hose of %d mm', (flow, bore) => {
    const model = modelWith({ 'filter.pump.ratedFlow': `${flow} L/h` }, leastCanister);
    expect(Math.floor((model.filter.intake?.boreM ?? 0) * 1000)).toBe(bore);
  });

  it('a box that hangs on the tank has a short tube and no outlet hose', () => {
    const started = newJob('hang-on-back');
    const reading = readJob((started.ok ? started.text : '').replace(/ {2}hoses:\n(?: {4,}.*\n)+/, ''));
    expect(reading.ok && reading.model.filter.intake?.lengthM).toBe(0.2);
    expect(reading.ok && reading.model.filter.intake?.barbBoreM).toBe(
      reading.ok && reading.model.filter.intake?.boreM,
    );
    expect(reading.ok && reading.model.filter.outlet).toBeUndefined();
  });
});

describe('money in another currency', () => {
  it('keeps the numbers for pounds, says so and widens their doubt', () => {
    const changes = { 'money.currency': 'EUR', money: { currency: 'EUR' } };
    const model = modelWith(changes, leastCanister);
    expect(model.money.currency).toBe('EUR');
    expect(givenOf(model, 'money.tariff')?.assumedBecause).toContain('taken for EUR');
    expect(givenOf(model, 'money.tariff')?.doubt?.size).toBeGreaterThan(1.5);
    expect(notesWith(changes, leastCanister)).toContain('placeholder-prices money.currency');
  });
});

describe('air pressure by height', () => {
  // Standard atmosphere, ISO 2533:1975, from memory.
  it.each([
    [0, 101_325],
    [1000, 89_875],
    [2000, 79_495],
    [5000, 54_020],
  ])('%d m: %d Pa', (height, pressure) => {
    expect(pressureAt(height) / pressure).toBeCloseTo(1, 3);
  });
});

describe('a job to start from', () => {
  it.each(families)('$name reads clean', ({ id }) => {
    const started = newJob(id);
    const reading = readJob(started.ok ? started.text : '');
    expect(reading.ok ? [] : reading.problems).toEqual([]);
  });

  it.each(families)('$name has beds in it that water passes', ({ id }) => {
    const started = newJob(id);
    const reading = readJob(started.ok ? started.text : '');
    const beds = reading.ok ? Object.values(reading.model.packing).flat() : [];
    expect(beds.length).toBeGreaterThan(0);
    expect(beds.every(({ depthM }) => depthM > 0)).toBe(true);
  });

  it.each([
    ['basket-stack-canister', /Pump output 900 L\/h/, /ratedFlow: 900 L\/h/],
    ['hang-on-back', /"Flow 400 L\/h"/, /shutoffHead: 0\.25 m/],
    ['internal-box', /"Pump output 400 L\/h"/, /power: 5 W/],
  ])('%s has figures of its own kind', (id, claim, pump) => {
    const started = newJob(id);
    const text = started.ok ? started.text : '';
    expect(text).toMatch(claim);
    expect(text).toMatch(pump);
    expect(text).toContain('docs/catalogue.md');
    if (id !== 'basket-stack-canister') expect(text).not.toMatch(/1\.3 m|14 W|\b900 L\/h$/m);
  });

  it('with every line behind a sign taken in still reads', () => {
    for (const { id } of families) {
      const started = newJob(id);
      const text = started.ok ? started.text : '';
      const taken = text.replace(/^( *)# (?=[A-Za-z]+: [^#])/gm, (_all, space: string) => space);
      expect(taken).toMatch(/^shelf: /m);
      // An air-lift has no head of a maker's to state.
      if (!/airFlow:/.test(taken)) expect(taken).toMatch(/^ {4}shutoffHead: /m);
      const reading = readJob(taken);
      expect(reading.ok ? [] : reading.problems, id).toEqual([]);
    }
  });

  it('is refused for a family that nobody knows', () => {
    expect(newJob('hang-on-bak')).toMatchObject({
      ok: false,
      problem: { code: 'not-among', path: 'filter.family' },
    });
  });
});
