import type { ValidRange } from '../range.ts';

/** Open-cell foam. */
export interface Foam {
  /** Diameter of the cells as counted under a ruler, not of the windows between them, m; above 0. */
  readonly cellM: number;
  /** Share of the foam that is open, 1; above 0, below 1; 0.97 for reticulated foam as sold. */
  readonly voidage: number;
}

export const foamDietrich2012Range = {
  reynolds: { least: 0.1, most: 1e5 },
  voidage: { least: 0.54, most: 0.98 },
  cellM: { least: 2e-4, most: 0.01 },
} as const satisfies ValidRange;

/**
 * Surface of open-cell foam.
 *
 * a = 10.33 √(1−ε)/d_c.
 *
 * @param foam.cellM d_c, m; 0.0002 to 0.01
 * @param foam.voidage ε, 1; 0.54 to 0.98
 * @returns strut surface per volume of foam, m²/m³
 * Accuracy: 15 % of measured foams; constants from memory.
 * @source Inayat et al. 2011 and Dietrich 2012, Chem. Eng. Sci. 74, 192–199
 * @example foamAreaDietrich2012({ cellM: 2.9e-3, voidage: 0.97 }) // 617
 */
export const foamAreaDietrich2012 = (foam: Foam): number =>
  (10.33 * Math.sqrt(1 - foam.voidage)) / foam.cellM;

/**
 * Diameter of the struts that give a foam its surface: round bars of that surface and volume.
 *
 * d_s = 4(1−ε)/a.
 *
 * @returns strut diameter, m
 * Accuracy: as the surface; real struts are three-cornered.
 * @source geometry
 */
export const foamStrut = (foam: Foam): number => (4 * (1 - foam.voidage)) / foamAreaDietrich2012(foam);

/**
 * Cells behind a foam's grade, by pores per inch. 20 and 30 from cells counted on graded foams (2.7–3.2 and
 * 1.6–1.9 mm), 100 from the pressure gradient of a published air test turned into water (7,100–8,400 Pa/m at
 * 20 mm/s, voidage 0.97) through the law above.
 */
const gradeCells = [
  { poresPerInch: 20, cellM: 2.94e-3 },
  { poresPerInch: 30, cellM: 1.74e-3 },
  { poresPerInch: 100, cellM: 2.68e-4 },
] as const;

export const foamCellPriorRange = {
  poresPerInch: { least: 8, most: 100 },
} as const satisfies ValidRange;

/**
 * What a foam's grade says about its cells when nobody has counted them.
 *
 * Straight in the logarithms between 20, 30 and 100 pores per inch, and on from there.
 *
 * @param grade.poresPerInch as sold, 1/in; 8 to 100
 * @returns cell diameter, m, and the factor by which it may be off at 95 %: 1.5, which is about 2 in the resistance
 * Accuracy: the factor returned; makers count windows, cells or neither.
 * @source cells counted on graded foams, seen quoted; between the grades ours
 */
export const foamCellPrior = (grade: {
  readonly poresPerInch: number;
}): { readonly cellM: number; readonly doubtFactor: number } => {
  const [coarse, middle, fine] = gradeCells;
  const [from, to] = grade.poresPerInch <= middle.poresPerInch ? [coarse, middle] : [middle, fine];
  const exponent = Math.log(to.cellM / from.cellM) / Math.log(to.poresPerInch / from.poresPerInch);
  return { cellM: from.cellM * (grade.poresPerInch / from.poresPerInch) ** exponent, doubtFactor: 1.5 };
};
