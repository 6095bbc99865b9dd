import type { ValidRange } from '../range.ts';
import { lifeFigures } from './constants.ts';

/** Ammonia nitrogen that fish excrete per protein fed, kg/kg; 0.07–0.115. Source: Timmons & Ebeling, seen quoted. */
export const TAN_PER_PROTEIN_RATIO = lifeFigures.tanPerProteinRatio.value;
/** Oxygen that nitrification to nitrate uses per nitrogen, kg/kg; 4.18–4.57. Source: stoichiometry. */
export const OXYGEN_PER_NITROGEN_RATIO = lifeFigures.oxygenPerNitrogenRatio.value;
/** Alkalinity as CaCO3 that nitrification uses per nitrogen, kg/kg; 7.05–7.14. Source: stoichiometry. */
export const ALKALINITY_PER_NITROGEN_RATIO = lifeFigures.alkalinityPerNitrogenRatio.value;

/** Nitrogen in protein, kg/kg, by the usual convention of 6.25. */
const NITROGEN_PER_PROTEIN_RATIO = 0.16;

export const ammoniaFromFeedRange = {
  proteinFraction: { least: 0.2, most: 0.6 },
} as const satisfies ValidRange;

export const ammoniaFromNitrogenBalanceRange = {
  proteinFraction: { least: 0.2, most: 0.6 },
  excretedFraction: { least: 0.3, most: 0.9 },
} as const satisfies ValidRange;

/**
 * Ammonia nitrogen that feeding makes.
 *
 * P_TAN = F·PC·0.092.
 *
 * @param tank.feedKgPerS dry feed given, kg/s; 0 or more
 * @param tank.proteinFraction protein in the feed, 1; 0.2 to 0.6
 * @returns total ammonia nitrogen, kg N/s, as the mean of a day
 * Accuracy: ×/÷ 1.25. Fish alone; dirt that rots gives back more.
 * @source Timmons & Ebeling, Recirculating Aquaculture, seen quoted
 * @example ammoniaFromFeed({ feedKgPerS: 1 / 86400, proteinFraction: 0.35 }) // 3.73e-7
 */
export const ammoniaFromFeed = (tank: {
  readonly feedKgPerS: number;
  readonly proteinFraction: number;
}): number => tank.feedKgPerS * tank.proteinFraction * TAN_PER_PROTEIN_RATIO;

/**
 * Ammonia nitrogen that feeding makes, by the share of the feed's nitrogen that comes back as ammonia.
 *
 * P_TAN = F·PC·0.16·e.
 *
 * @param tank.feedKgPerS dry feed given, kg/s; 0 or more
 * @param tank.proteinFraction protein in the feed, 1; 0.2 to 0.6
 * @param tank.excretedFraction share of the nitrogen excreted as ammonia, 1; 0.3 to 0.9
 * @returns total ammonia nitrogen, kg N/s
 * Accuracy: that of the share.
 * @source FAO Fisheries and Aquaculture Technical Paper 589, appendix 4, seen quoted
 * @example ammoniaFromNitrogenBalance({ feedKgPerS: 2.31e-6, proteinFraction: 0.32, excretedFraction: 0.61 }) // 7.2e-8
 */
export const ammoniaFromNitrogenBalance = (tank: {
  readonly feedKgPerS: number;
  readonly proteinFraction: number;
  readonly excretedFraction: number;
}): number => tank.feedKgPerS * tank.proteinFraction * NITROGEN_PER_PROTEIN_RATIO * tank.excretedFraction;

/**
 * Oxygen that the oxidation of ammonia to nitrate uses.
 *
 * @param load.nitrogenKgPerS ammonia nitrogen oxidised, kg N/s; 0 or more
 * @returns oxygen, kg/s; 4.57 kg per kg
 * Accuracy: an upper bound; bacteria that grow use 5–9 % less.
 * @source NH4+ + 2 O2 → NO3− + 2 H+ + H2O, IUPAC masses of 2021
 */
export const oxygenForNitrification = (load: { readonly nitrogenKgPerS: number }): number =>
  load.nitrogenKgPerS * OXYGEN_PER_NITROGEN_RATIO;

/**
 * Alkalinity that the oxidation of ammonia to nitrate uses.
 *
 * @param load.nitrogenKgPerS ammonia nitrogen oxidised, kg N/s; 0 or more
 * @returns alkalinity as CaCO3, kg/s; 7.14 kg per kg
 * Accuracy: 1.5 %.
 * @source NH4+ + 2 O2 → NO3− + 2 H+ + H2O, IUPAC masses of 2021
 */
export const alkalinityForNitrification = (load: { readonly nitrogenKgPerS: number }): number =>
  load.nitrogenKgPerS * ALKALINITY_PER_NITROGEN_RATIO;
