import { foamAreaDietrich2012, foamCellPrior } from '../laws/hydraulics/foam.ts';
import type { Figure } from '../model/figure.ts';
import type { Medium, Stage } from '../model/medium.ts';
import { between, computed, fromMemory, plusMinus, secondary, times } from './figureOf.ts';
import { ammoniaTests, depositFactor, keptWhenRinsed, poundsPerLitre } from './shared.ts';

const VOIDAGE = 0.97;

const cellOf = (poresPerInch: number): Figure => {
  const { cellM, doubtFactor } = foamCellPrior({ poresPerInch });
  const counted = poresPerInch === 20 || poresPerInch === 30;
  const text = counted
    ? 'cells counted on graded foams, seen quoted: 20 ppi 2.7–3.2 mm, 30 ppi 1.6–1.9 mm'
    : 'straight in the logarithms through counted cells (20 and 30 ppi) and a published air test (100 ppi)';
  return secondary(Number(cellM.toPrecision(3)), times(doubtFactor), text);
};

const strutSurface = (poresPerInch: number): number => {
  const { cellM } = foamCellPrior({ poresPerInch });
  return Number(foamAreaDietrich2012({ cellM, voidage: VOIDAGE }).toPrecision(2));
};

const strutText = 'strut surface by Dietrich 2012, Chem. Eng. Sci. 74, 192–199, from the cells of the grade';

const treated =
  'Use only foam that is free of biocide, flame retardant and perfume: upholstery foam is none of these.';
const unopened =
  'Foam whose cells still have their skins passes two to three times less water than the figures say: hold it to the light.';
const washed =
  'Squeeze it out in tank water and do not wring it, or it tears and the bacteria go with the dirt.';

interface Grade {
  readonly poresPerInch: number;
  readonly areaPerM: Figure;
  readonly stage?: Stage;
  readonly cautions?: readonly string[];
}

const foam = ({ poresPerInch, areaPerM, stage = 'mechanical', cautions = [] }: Grade): Medium => ({
  id: `foam-${poresPerInch}ppi${stage === 'biological' ? '-biological' : ''}`,
  name: stage === 'biological' ? `${poresPerInch} ppi foam block` : `${poresPerInch} ppi foam`,
  stage,
  form: 'foam',
  resistance: {
    law: 'foam',
    cellM: cellOf(poresPerInch),
    voidage: fromMemory(VOIDAGE, plusMinus(0.015), 'reticulated foam, not squeezed'),
  },
  areaPerM,
  bulkDensityKgPerM3: fromMemory(...between(20, 32)),
  depositFactor,
  care: 'rinse',
  bacteriaKept: keptWhenRinsed,
  pricePerM3: poundsPerLitre(2, 5),
  cautions: [treated, unopened, washed, ...cautions],
});

const area20 = secondary(
  720,
  times(1.5),
  `interpolated in ${ammoniaTests}; the strut surface by Dietrich 2012 is 610`,
);
const area30 = secondary(1120, times(1.5), `${ammoniaTests}; the strut surface by Dietrich 2012 is 1000`);

const blinding = 'It blinds within days when it meets dirt first: put coarser foam ahead of it.';

/**
 * Open-cell foam by grade. A sponge, a mat or a block behind the mechanical stage is the same foam with another
 * job: it is bought and rinsed for its bacteria, so the two grades used that way stand here once more as
 * biological media.
 */
export const foams = {
  'foam-10ppi': foam({ poresPerInch: 10, areaPerM: computed(strutSurface(10), times(2), strutText) }),
  'foam-20ppi': foam({ poresPerInch: 20, areaPerM: area20 }),
  'foam-30ppi': foam({ poresPerInch: 30, areaPerM: area30 }),
  'foam-45ppi': foam({
    poresPerInch: 45,
    areaPerM: computed(strutSurface(45), times(1.8), strutText),
    cautions: [blinding],
  }),
  'foam-60ppi': foam({
    poresPerInch: 60,
    areaPerM: fromMemory(
      2600,
      times(2),
      'below the strut surface by Dietrich 2012 (3000), as growth bridges the smallest cells',
    ),
    cautions: [
      blinding,
      'Dirt hardly washes out of foam this fine: expect to replace it after a few rinses.',
    ],
  }),
  'foam-20ppi-biological': foam({ poresPerInch: 20, areaPerM: area20, stage: 'biological' }),
  'foam-30ppi-biological': foam({ poresPerInch: 30, areaPerM: area30, stage: 'biological' }),
} as const satisfies Readonly<Record<string, Medium>>;
