import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changeHolding, type Settled, settle, type TankTerms } from './settle.ts';

const DAY_S = 86_400;
const LITRE = 1e-3;
const load = 60e-6 / DAY_S;

/** Nothing but water changes. */
const bare = (of: Partial<TankTerms> = {}): TankTerms => ({
  volumeM3: 180 * LITRE,
  loadKgNPerS: load,
  changePerS: 0.25 / (7 * DAY_S),
  oxidise: () => ({ ammonia: 0, nitrite: 0 }),
  ...of,
});

/** Water that a filter with both steps of the first order sees at once. */
const linear =
  (first: number, second: number): TankTerms['oxidise'] =>
  (ammonia, nitrite) => ({
    ammonia: first * ammonia,
    nitrite: second * nitrite,
  });

/** Work that cannot go beyond what an area takes. */
const bounded =
  (most: number, half: number): TankTerms['oxidise'] =>
  (ammonia, nitrite) => ({
    ammonia: (most * ammonia) / (half + ammonia),
    nitrite: (most * nitrite) / (half + nitrite),
  });

const sum = (parts: { ammonia: number; nitrite: number; nitrate: number }): number =>
  parts.ammonia + parts.nitrite + parts.nitrate;

const nitrogenLost = (terms: TankTerms, { taken, changed, rising }: Settled): number =>
  Math.abs((sum(taken) + sum(changed) + sum(rising)) / terms.loadKgNPerS - 1);

describe('closed forms', () => {
  test('without a filter water changes alone carry off the ammonia: load/(V·change)', () => {
    const terms = bare();
    const { ammonia, nitrite, nitrate } = settle(terms);
    expect(ammonia / (load / (terms.volumeM3 * terms.changePerS))).toBeCloseTo(1, 12);
    expect([nitrite, nitrate]).toEqual([0, 0]);
  });

  test('an endless filter leaves nitrate alone: load/(V·change)', () => {
    const terms = bare({ oxidise: linear(1e3, 1e3) });
    const { ammonia, nitrite, nitrate } = settle(terms);
    expect(nitrate / (load / (terms.volumeM3 * terms.changePerS))).toBeCloseTo(1, 9);
    expect(Math.max(ammonia, nitrite)).toBeLessThan(1e-12);
  });

  test('two steps of the first order wash out as a chain', () => {
    const [first, second] = [3e-6, 1e-6];
    const terms = bare({ oxidise: linear(first, second) });
    const washed = terms.volumeM3 * terms.changePerS;
    const ammonia = load / (first + washed);
    const nitrite = (first * ammonia) / (second + washed);
    const found = settle(terms);
    expect(found.ammonia / ammonia).toBeCloseTo(1, 12);
    expect(found.nitrite / nitrite).toBeCloseTo(1, 12);
    expect(found.nitrate / ((second * nitrite) / washed)).toBeCloseTo(1, 12);
  });

  test('without water changes plants hold nitrate at m·h/(left − m), or not at all', () => {
    const halfKgNPerM3 = 5e-5;
    const strong = { mostKgNPerM3PerS: (2 * load) / 0.18, halfKgNPerM3 };
    const held = settle(bare({ changePerS: 0, plants: strong, oxidise: linear(1e3, 1e3) }));
    // Ammonia is nothing, so all their strength is left: load of half of it is held at half-saturation.
    expect(held.nitrate / halfKgNPerM3).toBeCloseTo(1, 3);
    const weak = { ...strong, mostKgNPerM3PerS: (0.5 * load) / 0.18 };
    const rises = settle(bare({ changePerS: 0, plants: weak, oxidise: linear(1e3, 1e3) }));
    expect(rises.nitrate).toBe(Number.POSITIVE_INFINITY);
    expect(rises.rising.nitrate / (0.5 * load)).toBeCloseTo(1, 3);
  });

  test('a filter that is too small without water changes lets the ammonia rise for ever', () => {
    const found = settle(bare({ changePerS: 0, oxidise: bounded(0.6 * load, 1e-4) }));
    expect(found.ammonia).toBe(Number.POSITIVE_INFINITY);
    expect(found.rising.ammonia / (0.4 * load)).toBeCloseTo(1, 3);
  });

  test('the change that holds nitrate with an endless filter is load/(V·target)', () => {
    const terms = bare({ oxidise: linear(1e3, 1e3) });
    expect(changeHolding(terms, 9e-3) / (load / (terms.volumeM3 * 9e-3))).toBeCloseTo(1, 6);
  });

  test('plants that take it all need no change', () => {
    const plants = { mostKgNPerM3PerS: (3 * load) / 0.18, halfKgNPerM3: 5e-5 };
    expect(changeHolding(bare({ plants, oxidise: linear(1e-3, 1e-3) }), 9e-3)).toBe(0);
  });
});

describe('whatever works on it', () => {
  const anyTerms = fc.record({
    most: fc.double({ min: -2, max: 2, noNaN: true }),
    half: fc.double({ min: -6, max: -2, noNaN: true }),
    change: fc.constantFrom(0, 1e-8, 1e-7, 1e-6, 1e-5),
    plants: fc.constantFrom(undefined, 1e-11, 1e-9, 1e-7),
    load: fc.double({ min: -13, max: -6, noNaN: true }),
  });

  test('no nitrogen is lost or made', () => {
    fc.assert(
      fc.property(anyTerms, ({ most, half, change, plants, load: size }) => {
        const loadKgNPerS = 10 ** size;
        const terms = bare({
          loadKgNPerS,
          changePerS: change,
          plants: plants === undefined ? undefined : { mostKgNPerM3PerS: plants, halfKgNPerM3: 5e-5 },
          oxidise: bounded(loadKgNPerS * 10 ** most, 10 ** half),
        });
        expect(nitrogenLost(terms, settle(terms))).toBeLessThan(1e-9);
      }),
    );
  });

  test('a target is held by the change that is named for it', () => {
    fc.assert(
      fc.property(fc.double({ min: -3.5, max: -1.5, noNaN: true }), (exponent) => {
        const terms = bare({ oxidise: bounded(5 * load, 1e-4) });
        const target = 10 ** exponent;
        const { nitrate } = settle({ ...terms, changePerS: changeHolding(terms, target) });
        expect(nitrate / target).toBeCloseTo(1, 5);
      }),
    );
  });
});
