import type { Medium } from '../model/medium.ts';
import { between, computed, fromMemory, plusMinus, secondary, times } from './figureOf.ts';
import { ammoniaTests, depositFactor, keptWhenRinsed, poundsPerLitre } from './shared.ts';

/** Shaped plastic pieces. */
export const plastics = {
  'plastic-balls-35mm': {
    id: 'plastic-balls-35mm',
    name: 'plastic balls',
    stage: 'biological',
    form: 'plastic',
    resistance: {
      law: 'hollow',
      sizeM: fromMemory(...between(0.025, 0.045)),
      voidage: fromMemory(0.91, plusMinus(0.04)),
      surfacePerM: fromMemory(...between(120, 350)),
    },
    areaPerM: secondary(
      ...between(110, 330),
      `330 in ${ammoniaTests}; 200 by arithmetic there, less in larger balls`,
    ),
    bulkDensityKgPerM3: fromMemory(...between(50, 110)),
    depositFactor,
    care: 'rinse',
    bacteriaKept: keptWhenRinsed,
    pricePerM3: poundsPerLitre(1, 4),
    cautions: ['Made for trickling water: under water they carry little for the room they take.'],
  },
  'plastic-carrier-10mm': {
    id: 'plastic-carrier-10mm',
    name: 'plastic carrier, lying still',
    stage: 'biological',
    form: 'plastic',
    resistance: {
      law: 'hollow',
      sizeM: fromMemory(...between(0.007, 0.012)),
      voidage: fromMemory(0.84, plusMinus(0.03)),
      surfacePerM: fromMemory(800, times(1.3), 'all of the surface, inside and out'),
    },
    areaPerM: secondary(
      650,
      times(1.5),
      `between the 500 sheltered at full filling of Rusten et al. 2006, Aquacult. Eng. 34, 322–331, and 850 in ${ammoniaTests}`,
    ),
    bulkDensityKgPerM3: fromMemory(...between(115, 165)),
    depositFactor,
    care: 'rinse',
    bacteriaKept: keptWhenRinsed,
    pricePerM3: poundsPerLitre(1, 3),
    cautions: [
      'Lying still it gathers mud: to keep itself clean it must tumble, and then fill at most two thirds of its chamber.',
      'New carrier floats for weeks until growth makes it heavier.',
    ],
  },
  'plastic-carrier-10mm-tumbling': {
    id: 'plastic-carrier-10mm-tumbling',
    name: 'plastic carrier, tumbling',
    stage: 'biological',
    form: 'plastic',
    madeAs: 'carriers',
    resistance: {
      law: 'hollow',
      sizeM: fromMemory(...between(0.007, 0.012)),
      voidage: fromMemory(0.84, plusMinus(0.03)),
      surfacePerM: fromMemory(800, times(1.3), 'all of the surface, inside and out'),
    },
    areaPerM: secondary(
      500,
      times(1.3),
      'sheltered surface at full filling, Rusten et al. 2006, Aquacult. Eng. 34, 322–331; what lies outside is rubbed bare',
    ),
    bulkDensityKgPerM3: fromMemory(...between(115, 165)),
    depositFactor,
    care: 'rinse',
    bacteriaKept: keptWhenRinsed,
    pricePerM3: poundsPerLitre(1, 3),
    cautions: [
      'Fill at most two thirds of the chamber, and keep it tumbling.',
      'New carrier floats for weeks until growth makes it heavier.',
    ],
  },
  // Knitted ribbon: fibres of the same surface and solid share stand for it.
  'pot-scrubbers': {
    id: 'pot-scrubbers',
    name: 'plastic pot scrubbers',
    stage: 'biological',
    form: 'plastic',
    resistance: {
      law: 'fibre',
      fibreM: computed(0.4e-3, times(2), 'round fibre of the same surface and solid share, 4c/a'),
      solidFraction: fromMemory(0.05, times(1.4)),
    },
    areaPerM: secondary(
      ...between(260, 920),
      `from arithmetic on the ribbon to the test, both in ${ammoniaTests}`,
    ),
    bulkDensityKgPerM3: fromMemory(...between(32, 62)),
    depositFactor,
    care: 'rinse',
    bacteriaKept: keptWhenRinsed,
    pricePerM3: poundsPerLitre(1, 2),
    cautions: ['Take plain plastic without soap or metal, and wash it hot before use.'],
  },
} as const satisfies Readonly<Record<string, Medium>>;
