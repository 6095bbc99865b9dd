import { describe, expect, it } from 'vitest';
import { bodyShapes } from './bodyShapes.ts';
import { fish, fishMassKg } from './fish.ts';
import { fittings } from './fittings.ts';
import { hoses } from './hoses.ts';
import { stockClasses } from './stock.ts';

const STANDARD_OVER_TOTAL = 1 / 1.25;

describe('mass of a fish from its length', () => {
  // FishBase manual, the LENGTH-WEIGHT table: a normal, fusiform fish of 10 cm weighs on the order of 10 g.
  it('makes a fusiform fish of 10 cm total length weigh about 10 g', () => {
    const massKg = fishMassKg({ lengthMass: bodyShapes.fusiform, lengthM: 0.1 * STANDARD_OVER_TOTAL });
    expect(massKg).toBeGreaterThan(0.007);
    expect(massKg).toBeLessThan(0.014);
  });

  // Abstract of a study of 1,746 Pethia conchonius of the Atrai River, Bangladesh: 4.2–8.1 cm, 1.0–8.7 g.
  it.each([
    { totalCm: 4.2, grams: 1.0 },
    { totalCm: 8.1, grams: 8.7 },
  ])('covers the $grams g of a rosy barb of $totalCm cm within its doubt', ({ totalCm, grams }) => {
    const { lengthMass } = fish['rosy-barb']!;
    const ours = 1000 * fishMassKg({ lengthMass, lengthM: (totalCm / 100) * STANDARD_OVER_TOTAL });
    const { doubt } = lengthMass.a;
    expect(Math.max(ours / grams, grams / ours)).toBeLessThan(doubt?.kind === 'factor' ? doubt.size : 1);
  });

  it('has about forty kinds at least, each grown between 2 cm and half a metre', () => {
    const kinds = Object.values(fish);
    expect(kinds.length).toBeGreaterThanOrEqual(40);
    expect(kinds.filter(({ adultLengthM: { value } }) => value < 0.02 || value > 0.5)).toEqual([]);
    expect(
      kinds.filter(({ scientificName }) => !/^[A-Z][a-z]+ ([a-z]+|spp\.)$/.test(scientificName)),
    ).toEqual([]);
  });
});

describe('stock classes', () => {
  it('feed 0.8 g of dry feed per 100 L and day when normally stocked, half when lightly, twice when heavily', () => {
    const gramsPerDayPer100L = Object.values(stockClasses).map(
      ({ feedKgPerM3PerS }) => feedKgPerM3PerS.value * 0.1 * 86_400 * 1000,
    );
    expect(gramsPerDayPer100L).toEqual([0.4, 0.8, 1.6].map((grams) => expect.closeTo(grams, 9)));
  });
});

describe('fittings', () => {
  it('know the ends that every hose run has', () => {
    expect(fittings['entrance-sharp']?.replacesEnd).toBe('intake');
    expect(fittings.exit).toMatchObject({ replacesEnd: 'outlet', scalesWithBore: false });
  });

  it('charge a fitting that takes the place of an end at least what a rounded entrance loses', () => {
    const cheap = Object.values(fittings).filter(
      ({ replacesEnd, kInfinity }) => replacesEnd === 'outlet' && kInfinity.value < 1,
    );
    expect(cheap).toEqual([]);
  });
});

describe('hoses', () => {
  it('come in rising bores, each with a wall and a range of flow', () => {
    const all = Object.values(hoses);
    const bores = all.map(({ boreM }) => boreM.value);
    expect(bores).toEqual(bores.toSorted((one, other) => one - other));
    expect(all.filter(({ boreM, outerM }) => outerM.value < boreM.value + 0.002)).toEqual([]);
    expect(all.filter(({ usualFlow }) => usualFlow.leastM3PerS >= usualFlow.mostM3PerS)).toEqual([]);
  });

  it('carry water at no more than about two metres a second at their usual most', () => {
    const fast = Object.values(hoses).filter(
      ({ boreM, usualFlow }) => usualFlow.mostM3PerS / ((Math.PI / 4) * boreM.value ** 2) > 2.3,
    );
    expect(fast.map(({ id }) => id)).toEqual([]);
  });
});
