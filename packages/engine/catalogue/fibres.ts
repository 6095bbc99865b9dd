import type { Medium } from '../model/medium.ts';
import { between, computed, fromMemory, times } from './figureOf.ts';
import { depositFactor, keptWhenReplaced, keptWhenRinsed, lifeInWeeks, poundsPerLitre } from './shared.ts';

const fibreSurface = 'surface of the fibres, 4c/d';
const treated =
  'Use only fibre that is free of biocide, flame retardant and perfume: wadding sold for furniture or quilts often is not.';
const packedTight = 'Packed tight it chokes a weak pump: lay it loosely and never stuff a corner.';

/** Pads and floss of synthetic fibre. */
export const fibres = {
  'floss-loose': {
    id: 'floss-loose',
    name: 'loose floss',
    stage: 'mechanical',
    form: 'fibre',
    madeAs: 'floss',
    resistance: {
      law: 'fibre',
      fibreM: fromMemory(...between(20e-6, 40e-6)),
      solidFraction: computed(0.008, times(1.6), 'bulk density over 1380 kg/m³ of polyester'),
    },
    areaPerM: computed(1100, times(2.5), fibreSurface),
    bulkDensityKgPerM3: fromMemory(...between(8, 15)),
    depositFactor,
    care: 'replace',
    bacteriaKept: keptWhenReplaced,
    lifeS: lifeInWeeks(2, 8),
    pricePerM3: poundsPerLitre(1, 4),
    cautions: [treated, packedTight],
  },
  'floss-packed': {
    id: 'floss-packed',
    name: 'packed floss',
    stage: 'mechanical',
    form: 'fibre',
    madeAs: 'floss',
    resistance: {
      law: 'fibre',
      fibreM: fromMemory(...between(20e-6, 40e-6)),
      solidFraction: computed(0.02, times(1.5), 'bulk density over 1380 kg/m³ of polyester'),
    },
    areaPerM: computed(2800, times(2.5), fibreSurface),
    bulkDensityKgPerM3: fromMemory(...between(20, 38)),
    depositFactor,
    care: 'replace',
    bacteriaKept: keptWhenReplaced,
    lifeS: lifeInWeeks(2, 8),
    pricePerM3: poundsPerLitre(2, 8),
    cautions: [treated, packedTight],
  },
  'coarse-pad': {
    id: 'coarse-pad',
    name: 'coarse bonded pad',
    stage: 'mechanical',
    form: 'fibre',
    resistance: {
      law: 'fibre',
      fibreM: fromMemory(...between(70e-6, 140e-6)),
      solidFraction: fromMemory(0.022, times(1.5)),
    },
    areaPerM: computed(890, times(2), fibreSurface),
    bulkDensityKgPerM3: fromMemory(...between(22, 40)),
    depositFactor,
    care: 'rinse',
    bacteriaKept: keptWhenRinsed,
    pricePerM3: poundsPerLitre(2, 6),
    cautions: [treated],
  },
  'polishing-pad': {
    id: 'polishing-pad',
    name: 'polishing pad',
    stage: 'mechanical',
    form: 'fibre',
    resistance: {
      law: 'fibre',
      fibreM: fromMemory(...between(15e-6, 27e-6)),
      solidFraction: fromMemory(0.058, times(1.5)),
    },
    areaPerM: fromMemory(
      2500,
      times(2.5),
      'far below the surface of the fibres, which lie closer together than growth is thick',
    ),
    bulkDensityKgPerM3: fromMemory(...between(55, 115)),
    depositFactor,
    care: 'replace',
    bacteriaKept: keptWhenReplaced,
    lifeS: lifeInWeeks(1, 4),
    pricePerM3: poundsPerLitre(5, 15),
    cautions: [
      'Lay it last among the mechanical media and look at it weekly: it stops the flow before it looks dirty.',
      treated,
    ],
  },
  'sock-felt': {
    id: 'sock-felt',
    name: 'sock felt',
    stage: 'mechanical',
    form: 'fibre',
    madeAs: 'cloth',
    resistance: {
      law: 'fibre',
      fibreM: computed(
        80e-6,
        times(1.6),
        'so coarse that the mean way between fibres is the 200 µm it is sold by',
      ),
      solidFraction: fromMemory(0.07, times(1.5)),
    },
    areaPerM: fromMemory(
      1500,
      times(2.5),
      'far below the surface of the fibres; it is washed every few days',
    ),
    bulkDensityKgPerM3: fromMemory(...between(70, 130)),
    depositFactor,
    care: 'rinse',
    bacteriaKept: keptWhenRinsed,
    pricePerM3: poundsPerLitre(10, 40),
    cautions: [
      'Change it every two to four days and wash it without soap or softener; a full sock spills over its rim and catches nothing.',
    ],
  },
  'needled-mat': {
    id: 'needled-mat',
    name: 'needled mat',
    stage: 'biological',
    form: 'fibre',
    resistance: {
      law: 'fibre',
      fibreM: fromMemory(...between(0.25e-3, 0.6e-3)),
      solidFraction: fromMemory(0.026, times(1.5), 'voidage 0.96 to 0.98 in pond mats'),
    },
    areaPerM: fromMemory(
      ...between(200, 350),
      'as sold for ponds; agrees with the surface of the fibres, 4c/d',
    ),
    bulkDensityKgPerM3: fromMemory(...between(25, 48)),
    depositFactor,
    care: 'rinse',
    bacteriaKept: keptWhenRinsed,
    pricePerM3: poundsPerLitre(1.5, 4),
    cautions: ['Stand the sheets along the flow with dirt caught ahead of them, or they fill with mud.'],
  },
} as const satisfies Readonly<Record<string, Medium>>;
