import type { Figure } from '../model/figure.ts';
import type { Medium } from '../model/medium.ts';
import { between, computed, fromMemory, plusMinus, secondary, times } from './figureOf.ts';
import { ammoniaTests, depositFactor, keptWhenRinsed, poundsPerLitre } from './shared.ts';

const voidage = fromMemory(
  0.62,
  plusMinus(0.06),
  'rings tipped in, the hole counted; 0.38 between the pieces',
);

/**
 * Surface of rings tipped in: cylinders as long as wide fill 0.62 of the bed, and a bore of 0.6 of the width
 * adds its wall and takes from the ends.
 */
const surfaceOf = (sizeM: number): Figure => {
  const bore = 0.6;
  const wallsAndEnds = Math.PI * (1 + bore) + (Math.PI / 2) * (1 - bore ** 2);
  const perPieceVolume = wallsAndEnds / (Math.PI / 4);
  const value = Number(((0.62 * perPieceVolume) / sizeM).toPrecision(2));
  return computed(value, times(1.3), 'geometry of rings as long as wide with a bore of 0.6, 0.62 of the bed');
};

const chipped =
  'Rinse new rings until the water runs clear, and throw out chipped ones: crumbs lodge in the pump.';
const gasArea =
  'The area printed on the pack is measured with gas in pores where no water moves: do not size a filter by it.';
const stepwise = 'When they crumble or stay clogged, replace a third at a time, weeks apart.';

/** Rings: hollow pieces, tipped in. */
export const rings = {
  'ceramic-rings-12mm': {
    id: 'ceramic-rings-12mm',
    name: 'small ceramic rings',
    stage: 'biological',
    form: 'rings',
    resistance: {
      law: 'hollow',
      sizeM: fromMemory(0.012, times(1.2)),
      voidage,
      surfacePerM: surfaceOf(0.012),
    },
    areaPerM: secondary(230, times(3), `between the outer surface (400) and 130 in ${ammoniaTests}`),
    bulkDensityKgPerM3: fromMemory(...between(480, 680)),
    depositFactor,
    care: 'rinse',
    bacteriaKept: keptWhenRinsed,
    pricePerM3: poundsPerLitre(3, 8),
    cautions: [chipped, gasArea, stepwise],
  },
  'ceramic-rings-15mm': {
    id: 'ceramic-rings-15mm',
    name: 'ceramic rings',
    stage: 'biological',
    form: 'rings',
    resistance: {
      law: 'hollow',
      sizeM: fromMemory(0.015, times(1.2)),
      voidage,
      surfacePerM: surfaceOf(0.015),
    },
    areaPerM: secondary(200, times(3), `between the outer surface (320) and 130 in ${ammoniaTests}`),
    bulkDensityKgPerM3: fromMemory(...between(450, 650)),
    depositFactor,
    care: 'rinse',
    bacteriaKept: keptWhenRinsed,
    pricePerM3: poundsPerLitre(3, 8),
    cautions: [chipped, gasArea, stepwise],
  },
  'porcelain-rings-15mm': {
    id: 'porcelain-rings-15mm',
    name: 'glazed porcelain rings',
    stage: 'mechanical',
    form: 'rings',
    resistance: {
      law: 'hollow',
      sizeM: fromMemory(0.015, times(1.2)),
      voidage,
      surfacePerM: surfaceOf(0.015),
    },
    areaPerM: computed(320, times(2), 'outer surface of the rings; glaze has no pores'),
    bulkDensityKgPerM3: fromMemory(...between(700, 950)),
    depositFactor,
    care: 'rinse',
    bacteriaKept: keptWhenRinsed,
    pricePerM3: poundsPerLitre(3, 8),
    cautions: ['They spread the water and hold leaves back, but catch almost none of the fine dirt.'],
  },
  'sintered-glass-rings-15mm': {
    id: 'sintered-glass-rings-15mm',
    name: 'sintered-glass rings',
    stage: 'biological',
    form: 'rings',
    resistance: {
      law: 'hollow',
      sizeM: fromMemory(0.015, times(1.2)),
      voidage: fromMemory(0.67, plusMinus(0.06), 'rings tipped in, the hole counted; pores of the glass not'),
      surfacePerM: surfaceOf(0.015),
    },
    areaPerM: fromMemory(
      ...between(100, 1000),
      'the greatest unknown on this shelf: outer surface 320, claims a thousand times more; fit it from an ammonia challenge',
    ),
    bulkDensityKgPerM3: fromMemory(...between(270, 400)),
    depositFactor,
    care: 'rinse',
    bacteriaKept: keptWhenRinsed,
    pricePerM3: poundsPerLitre(8, 20),
    cautions: [
      gasArea,
      'Put mechanical media ahead: its fine pores, once filled with dirt, cannot be rinsed out.',
      stepwise,
    ],
  },
} as const satisfies Readonly<Record<string, Medium>>;
