import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Figure } from '../../model/figure.ts';
import type { Resistance } from '../../model/medium.ts';
import { cakePressureRuth1935, filtrationTimeHermia1982 } from './cake.ts';
import { captureCoefficient, filterCoefficientYao1971 } from './capture.ts';
import { caughtFractionIwasaki1937, depositIwasaki1937, fillingBedBohartAdams1920 } from './cleanBed.ts';
import { DEPOSIT_FACTOR, dirtFigures, STICKING_FRACTION } from './constants.ts';
import { nitrogenReturned, solidsDecayRate, solidsLeft } from './decay.ts';
import { solidsMade } from './production.ts';
import {
  depositFactorMaysHunt2005,
  resistanceRatioKozeny1927,
  resistanceRatioMaysHunt2005,
} from './resistance.ts';
import { solidsSizeClasses } from './sizes.ts';
import {
  fibreSpacing,
  strainedFraction,
  strainingCoefficient,
  throatOfGrains,
  throatOfHollowPieces,
} from './straining.ts';

const figure = (value: number): Figure => ({ value, source: { kind: 'memory', text: 'for a test' } });
const beds = {
  'coarse foam': { law: 'foam', cellM: figure(2.94e-3), voidage: figure(0.97) },
  floss: { law: 'fibre', fibreM: figure(3e-5), solidFraction: figure(0.02) },
  gravel: { law: 'grains', sizeM: figure(5e-3), voidage: figure(0.4) },
  rings: { law: 'hollow', sizeM: figure(0.015), voidage: figure(0.75), surfacePerM: figure(300) },
} as const satisfies Record<string, Resistance>;
const viscosityPaS = 9e-4;
const sizes = fc.double({ min: 2e-6, max: 5e-4, noNaN: true });

describe('sizes of solids', () => {
  it.each([1, 5, 6, 12])('in %i classes hold all of the mass', (count) => {
    const classes = solidsSizeClasses({ count });
    expect(classes.reduce((sum, one) => sum + one.massFraction, 0)).toBeCloseTo(1, 12);
    expect(classes[0]!.smallestM).toBe(2e-6);
    expect(classes.at(-1)!.largestM).toBe(5e-4);
  });

  it('in fine classes add up to the coarse ones', () => {
    const coarse = solidsSizeClasses({ count: 5 });
    const fine = solidsSizeClasses({ count: 15 });
    coarse.forEach((one, i) => {
      const parts = fine.slice(3 * i, 3 * i + 3).reduce((sum, part) => sum + part.massFraction, 0);
      expect(parts).toBeCloseTo(one.massFraction, 12);
    });
  });

  it('are nearly all finer than 20 µm by number, though not by mass', () => {
    // Fernandes et al. 2014 counted more than 94 % under 20 µm in recirculating water.
    const classes = solidsSizeClasses({ count: 200 });
    const numberOf = (one: (typeof classes)[number]): number => one.massFraction / one.sizeM ** 3;
    const fine = classes.filter(({ largestM }) => largestM < 20e-6);
    const share =
      fine.reduce((sum, one) => sum + numberOf(one), 0) /
      classes.reduce((sum, one) => sum + numberOf(one), 0);
    expect(share).toBeGreaterThan(0.94);
    expect(fine.reduce((sum, one) => sum + one.massFraction, 0)).toBeLessThan(0.15);
  });

  it('have their middle size where half the class is finer', () => {
    const [one] = solidsSizeClasses({ count: 1 });
    const [finer] = solidsSizeClasses({ count: 1, largestM: one!.sizeM });
    expect(one!.sizeM).toBeGreaterThan(finer!.sizeM);
    const power = 0.6;
    const share = (one!.sizeM ** power - 2e-6 ** power) / (5e-4 ** power - 2e-6 ** power);
    expect(share).toBeCloseTo(0.5, 12);
  });

  it('hold equal mass in every decade when the exponent is 4, where the formula changes', () => {
    const even = solidsSizeClasses({ count: 4, exponent: 4 });
    const nearly = solidsSizeClasses({ count: 4, exponent: 4 + 1e-7 });
    even.forEach((one, i) => {
      expect(one.massFraction).toBeCloseTo(0.25, 12);
      expect(nearly[i]!.massFraction).toBeCloseTo(0.25, 5);
      expect(nearly[i]!.sizeM / one.sizeM).toBeCloseTo(1, 5);
    });
  });
});

describe('straining', () => {
  it('never catches all and never less for larger solids', () => {
    const layer = { throatM: 1e-4, layerM: 1e-3 };
    fc.assert(
      fc.property(sizes, (sizeM) => {
        expect(strainedFraction({ ...layer, sizeM })).toBeLessThanOrEqual(0.95);
        expect(strainingCoefficient({ ...layer, sizeM: 1.1 * sizeM })).toBeGreaterThanOrEqual(
          strainingCoefficient({ ...layer, sizeM }),
        );
      }),
    );
  });

  it('of one layer is the share that its coefficient gives over that layer', () => {
    const layer = { sizeM: 6e-5, throatM: 1e-4, layerM: 1e-3 };
    const filterCoefficientPerM = strainingCoefficient(layer);
    expect(caughtFractionIwasaki1937({ filterCoefficientPerM, depthM: 1e-3 })).toBeCloseTo(0.216, 12);
  });

  it('takes spheres for rings of the same surface at a voidage of 0.4', () => {
    const sizeM = 0.004;
    expect(throatOfHollowPieces({ surfacePerM: (6 * 0.6) / sizeM, voidage: 0.4 })).toBeCloseTo(
      throatOfGrains({ sizeM }),
      12,
    );
  });

  it('spaces fibres closer when pressed', () => {
    const at = (solidFraction: number): number => fibreSpacing({ fibreM: 3e-5, solidFraction });
    expect(at(0.08) / at(0.02)).toBeCloseTo(0.5, 12);
  });
});

describe('capture by a clean bed', () => {
  it.each(Object.entries(beds))('of %s grows with the size of the solids', (_, resistance) => {
    fc.assert(
      fc.property(sizes, (sizeM) => {
        const small = captureCoefficient({ resistance, sizeM, viscosityPaS });
        const large = captureCoefficient({ resistance, sizeM: 1.2 * sizeM, viscosityPaS });
        expect(small.steadyPerM).toBeGreaterThan(0);
        expect(large.steadyPerM).toBeGreaterThan(small.steadyPerM);
        expect(large.settlingPerS / small.settlingPerS).toBeCloseTo(1.44, 9);
        expect(large.strainedFraction).toBeGreaterThanOrEqual(small.strainedFraction);
      }),
    );
  });

  it('is finest in floss, then foam, then gravel and rings', () => {
    const at = (resistance: Resistance): number =>
      captureCoefficient({ resistance, sizeM: 5e-5, viscosityPaS }).steadyPerM;
    const order = [beds.floss, beds['coarse foam'], beds.gravel, beds.rings].map(at);
    expect(order).toEqual([...order].sort((a, b) => b - a));
  });

  it('is straining alone where nothing sticks', () => {
    const bare = captureCoefficient({
      resistance: beds.gravel,
      sizeM: 2e-4,
      viscosityPaS,
      stickingFraction: 0,
    });
    const throatM = throatOfGrains({ sizeM: 5e-3 });
    expect(bare.settlingPerS).toBe(0);
    expect(bare.steadyPerM).toBe(strainingCoefficient({ sizeM: 2e-4, throatM, layerM: 5e-3 }));
  });

  it('settles in gravel as Yao’s filter coefficient says', () => {
    const sizeM = 1e-4;
    const settling = captureCoefficient({ resistance: beds.gravel, sizeM, viscosityPaS }).settlingPerS;
    const stokes = (60 * 9.80665 * sizeM ** 2) / (18 * viscosityPaS);
    const velocity = 0.01;
    const expected = filterCoefficientYao1971({
      collectorM: 5e-3,
      voidage: 0.4,
      contactEfficiency: stokes / velocity,
      stickingFraction: STICKING_FRACTION,
    });
    expect(settling / velocity / expected).toBeCloseTo(1, 12);
  });
});

describe('a bed that fills', () => {
  const bed = { filterCoefficientPerM: 12, depthM: 0.08 };

  it('starts as Iwasaki’s clean bed and ends full', () => {
    expect(fillingBedBohartAdams1920({ ...bed, suppliedOverFull: 0 })).toEqual({
      passedFraction: expect.closeTo(1 - caughtFractionIwasaki1937(bed), 12),
      filledFraction: 0,
    });
    const full = fillingBedBohartAdams1920({ ...bed, suppliedOverFull: 1000 });
    expect(full.passedFraction).toBe(1);
    expect(full.filledFraction).toBe(1);
  });

  it('holds what did not come through', () => {
    // ∫σ dz over the depth against ∫(1 − C/C₀) dt at its end, both in units of σ_full/λ.
    const steps = 2000;
    const a = 1.7;
    let held = 0;
    let stopped = 0;
    for (let i = 0; i < steps; i += 1) {
      const share = (i + 0.5) / steps;
      const at = { filterCoefficientPerM: 12, depthM: share * bed.depthM };
      held +=
        (fillingBedBohartAdams1920({ ...at, suppliedOverFull: a }).filledFraction * 12 * bed.depthM) / steps;
      const { passedFraction } = fillingBedBohartAdams1920({ ...bed, suppliedOverFull: share * a });
      stopped += ((1 - passedFraction) * a) / steps;
    }
    expect(held / stopped).toBeCloseTo(1, 6);
  });

  it('while clean holds per depth what Iwasaki says', () => {
    const run = { velocityMPerS: 0.01, inletKgPerM3: 0.004, timeS: 86_400 };
    const steps = 2000;
    let held = 0;
    for (let i = 0; i < steps; i += 1) {
      const depthM = ((i + 0.5) / steps) * bed.depthM;
      held += (depositIwasaki1937({ ...bed, ...run, depthM }) * bed.depthM) / steps;
    }
    const caught = caughtFractionIwasaki1937(bed) * run.velocityMPerS * run.inletKgPerM3 * run.timeS;
    expect(held / caught).toBeCloseTo(1, 6);
  });
});

describe('clogging', () => {
  it('makes a clean bed no worse, and γ comes back from the rise it gives', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-3, max: 0.3, noNaN: true }),
        fc.double({ min: 1, max: 80, noNaN: true }),
        (depositFraction, depositFactor) => {
          const resistanceRatio = resistanceRatioMaysHunt2005({ depositFraction, depositFactor });
          expect(depositFactorMaysHunt2005({ resistanceRatio, depositFraction })).toBeCloseTo(
            depositFactor,
            8,
          );
        },
      ),
    );
    expect(resistanceRatioMaysHunt2005({ depositFraction: 0, depositFactor: DEPOSIT_FACTOR })).toBe(1);
    expect(resistanceRatioKozeny1927({ voidage: 0.4, depositFraction: 0 })).toBe(1);
  });

  it('by narrower pores alone is far less than by deposits in the throats', () => {
    for (const depositFraction of [0.005, 0.02, 0.05]) {
      const even = resistanceRatioKozeny1927({ voidage: 0.4, depositFraction });
      expect(even).toBeGreaterThan(1);
      expect(even).toBeLessThan(resistanceRatioMaysHunt2005({ depositFraction, depositFactor: 17 }));
    }
  });

  it('by a mat takes as long as its pressure says', () => {
    // dv/dt = Δp/(µ(αCv + R)): the integral of the mat's own law.
    const run = {
      resistanceMPerKg: 1e10,
      viscosityPaS,
      solidsKgPerM3: 0.005,
      mediumResistancePerM: 2e7,
      pressurePa: 300,
    };
    const step = 1e-4;
    const rate =
      (filtrationTimeHermia1982({ ...run, filtrateM: 20 + step }) -
        filtrationTimeHermia1982({ ...run, filtrateM: 20 - step })) /
      (2 * step);
    const mat = cakePressureRuth1935({ ...run, cakeKgPerM2: 20 * 0.005, velocityMPerS: 1 / rate });
    const below = (viscosityPaS * run.mediumResistancePerM) / rate;
    expect((mat + below) / run.pressurePa).toBeCloseTo(1, 7);
  });
});

describe('decay of what is caught', () => {
  const decayPerS = solidsDecayRate({ temperatureK: 298.15 });

  it('is faster in warm water', () => {
    expect(solidsDecayRate({ temperatureK: 303.15 })).toBeGreaterThan(decayPerS);
    expect(decayPerS * 86_400).toBeCloseTo(0.055, 12);
  });

  it('without decay keeps all, and with time settles where as much rots as comes', () => {
    const bed = { caughtKgPerS: 1e-8, timeS: 1e6 };
    expect(solidsLeft({ ...bed, decayPerS: 0, startKg: 0.002 })).toBeCloseTo(0.012, 12);
    expect(solidsLeft({ ...bed, decayPerS: 1e-12 })).toBeCloseTo(solidsLeft({ ...bed, decayPerS: 0 }), 7);
    const settled = solidsLeft({ ...bed, decayPerS, timeS: 1e9 });
    expect(nitrogenReturned({ solidsKg: settled, decayPerS })).toBeCloseTo(0.04 * 1e-8, 15);
  });
});

describe('figures of dirt', () => {
  it('make a quarter of the feed into solids', () => {
    expect(solidsMade({ feedKgPerS: 4e-8 })).toBeCloseTo(1e-8, 16);
    expect(solidsMade({ feedKgPerS: 4e-8, solidsPerFeedRatio: 0.4 })).toBeCloseTo(1.6e-8, 16);
  });

  it.each(Object.entries(dirtFigures))('%s has a doubt that leaves it its sign', (_, { value, doubt }) => {
    if (doubt.kind === 'factor') expect(doubt.size).toBeGreaterThan(1);
    else expect(doubt.size).toBeLessThan(value);
  });
});
