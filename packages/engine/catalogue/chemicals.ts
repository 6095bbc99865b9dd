import type { Medium } from '../model/medium.ts';
import { between, commonPractice, computed, fromMemory, plusMinus, secondary, times } from './figureOf.ts';
import { depositFactor, keptWhenRinsed, lifeInWeeks, poundsPerLitre, spheresText } from './shared.ts';

const WEEK_S = 7 * 86_400;

const carbonDust =
  'Rinse it outdoors and do not breathe the dust, which irritates gills and wears pumps too.';
const medication = 'Take it out while fish are medicated: it takes most medicines out of the water.';
const noAmmonia = 'It takes out neither ammonia nor nitrite nor nitrate.';
const carbonCapacity = fromMemory(
  0.03,
  times(3),
  'kg of organic carbon per kg at a few mg/L, as carbon in drinking-water works; no figure for tannins found',
);
const closelyPacked =
  'below the outer surface of spheres: the pieces lie closer together than growth is thick';

const kgPhosphorus = 'kg of phosphorus per kg; half of what is held at saturation';
const genz = 'Genz, Kornmüller & Jekel 2004, Water Res. 38, 844–850';

/** Media that take something out of the water until they are full. */
export const chemicals = {
  'carbon-granular-1mm': {
    id: 'carbon-granular-1mm',
    name: 'fine granular carbon',
    stage: 'chemical',
    form: 'grains',
    resistance: {
      law: 'grains',
      sizeM: fromMemory(0.001, times(1.3), 'sieved 0.6 to 1.7 mm'),
      voidage: fromMemory(0.42, plusMinus(0.04)),
    },
    areaPerM: fromMemory(2500, times(2), closelyPacked),
    bulkDensityKgPerM3: fromMemory(...between(420, 540)),
    depositFactor,
    care: 'rinse',
    bacteriaKept: keptWhenRinsed,
    lifeS: lifeInWeeks(2, 8),
    pricePerM3: poundsPerLitre(3, 8),
    removes: { substance: 'dissolved-organics', capacityRatio: carbonCapacity },
    cautions: [carbonDust, medication, noAmmonia],
  },
  'carbon-granular-2mm': {
    id: 'carbon-granular-2mm',
    name: 'granular carbon',
    stage: 'chemical',
    form: 'grains',
    resistance: {
      law: 'grains',
      sizeM: fromMemory(0.002, times(1.4), 'sieved 1 to 3 mm'),
      voidage: fromMemory(0.42, plusMinus(0.04)),
    },
    areaPerM: computed(1700, times(2), spheresText),
    bulkDensityKgPerM3: fromMemory(...between(400, 520)),
    depositFactor,
    care: 'rinse',
    bacteriaKept: keptWhenRinsed,
    lifeS: lifeInWeeks(2, 8),
    pricePerM3: poundsPerLitre(3, 8),
    removes: { substance: 'dissolved-organics', capacityRatio: carbonCapacity },
    cautions: [carbonDust, medication, noAmmonia],
  },
  'carbon-pellets-4mm': {
    id: 'carbon-pellets-4mm',
    name: 'carbon pellets',
    stage: 'chemical',
    form: 'grains',
    resistance: {
      law: 'grains',
      sizeM: fromMemory(0.0045, times(1.2), 'sphere of the volume of a 4 mm pellet 5 mm long'),
      voidage: fromMemory(0.4, plusMinus(0.04)),
    },
    areaPerM: computed(800, times(2), spheresText),
    bulkDensityKgPerM3: fromMemory(...between(420, 540)),
    depositFactor,
    care: 'rinse',
    bacteriaKept: keptWhenRinsed,
    lifeS: lifeInWeeks(2, 8),
    pricePerM3: poundsPerLitre(3, 8),
    removes: { substance: 'dissolved-organics', capacityRatio: carbonCapacity },
    cautions: [carbonDust, medication, noAmmonia],
  },
  'zeolite-4mm': {
    id: 'zeolite-4mm',
    name: 'zeolite',
    stage: 'chemical',
    form: 'grains',
    resistance: {
      law: 'grains',
      sizeM: fromMemory(...between(0.0025, 0.0065)),
      voidage: fromMemory(0.47, plusMinus(0.04)),
    },
    areaPerM: computed(790, times(2), spheresText),
    bulkDensityKgPerM3: fromMemory(...between(800, 950)),
    depositFactor,
    care: 'rinse',
    bacteriaKept: keptWhenRinsed,
    lifeS: commonPractice(4 * WEEK_S, times(2), '4 weeks, or as its capacity and the load say'),
    pricePerM3: poundsPerLitre(1.5, 5),
    removes: {
      substance: 'ammonium',
      capacityRatio: secondary(
        0.0016,
        times(1.6),
        'kg of nitrogen per kg of clinoptilolite, 1.5–1.74 g/kg; the upper end from Wang et al. 2006 on leachate, seen quoted',
      ),
    },
    cautions: [
      'Useless in salted water, where it gives back the ammonium that it holds: take it out before any salt goes in.',
      'Ahead of the bacteria it takes their food: put it last, and wean the tank off it.',
    ],
  },
  'ferric-oxide-1mm': {
    id: 'ferric-oxide-1mm',
    name: 'ferric oxide granules',
    stage: 'chemical',
    form: 'grains',
    resistance: {
      law: 'grains',
      sizeM: fromMemory(...between(0.0006, 0.0017)),
      voidage: fromMemory(0.45, plusMinus(0.05)),
    },
    areaPerM: fromMemory(2500, times(2), closelyPacked),
    bulkDensityKgPerM3: fromMemory(...between(600, 1200)),
    depositFactor,
    care: 'rinse',
    bacteriaKept: keptWhenRinsed,
    lifeS: lifeInWeeks(4, 9),
    pricePerM3: poundsPerLitre(15, 40),
    removes: {
      substance: 'phosphate',
      capacityRatio: fromMemory(0.012, times(2.5), `${kgPhosphorus}, 23 g/kg in ${genz}`),
    },
    cautions: [
      'It can lower phosphate too fast for corals and plants: begin with a quarter of the dose.',
      'Rinse it outdoors and do not breathe the dust; it stains, and fines cement together where water stands.',
      'It can take alkalinity with it: test after each change.',
    ],
  },
  'activated-alumina-3mm': {
    id: 'activated-alumina-3mm',
    name: 'activated alumina',
    stage: 'chemical',
    form: 'grains',
    resistance: {
      law: 'grains',
      sizeM: fromMemory(...between(0.002, 0.0045)),
      voidage: fromMemory(0.4, plusMinus(0.04)),
    },
    areaPerM: computed(1200, times(2), spheresText),
    bulkDensityKgPerM3: fromMemory(...between(650, 850)),
    depositFactor,
    care: 'rinse',
    bacteriaKept: keptWhenRinsed,
    lifeS: lifeInWeeks(4, 9),
    pricePerM3: poundsPerLitre(8, 25),
    removes: {
      substance: 'phosphate',
      capacityRatio: fromMemory(0.007, times(2.5), `${kgPhosphorus}, 14 g/kg in ${genz}`),
    },
    cautions: [
      'It gives off dust and, in acid water, some aluminium: rinse it well and keep it out of soft, acid tanks.',
    ],
  },
  'peat-granules-5mm': {
    id: 'peat-granules-5mm',
    name: 'peat granules',
    stage: 'chemical',
    form: 'grains',
    resistance: {
      law: 'grains',
      sizeM: fromMemory(...between(0.003, 0.008)),
      voidage: fromMemory(0.42, plusMinus(0.06)),
    },
    areaPerM: fromMemory(600, times(2), `${spheresText}, is 710`),
    bulkDensityKgPerM3: fromMemory(...between(200, 350)),
    depositFactor,
    care: 'rinse',
    bacteriaKept: keptWhenRinsed,
    lifeS: lifeInWeeks(4, 6.25),
    pricePerM3: poundsPerLitre(2, 6),
    removes: {
      substance: 'hardness',
      capacityRatio: fromMemory(
        0.05,
        times(2.5),
        'kg as CaCO3 per kg, from an exchange capacity near 1 mol/kg',
      ),
    },
    cautions: [
      'It lowers pH and hardness only where the water is soft already; hard water hardly moves.',
      'Take plain peat without fertiliser, and boil it first.',
    ],
  },
} as const satisfies Readonly<Record<string, Medium>>;
