import { ICE_POINT_K } from '../constants.ts';
import type { ValidRange } from '../range.ts';
import type { Water } from './density.ts';

export const unionizedAmmoniaFractionEmerson1975Range = {
  temperatureK: { least: 273.15, most: 323.15 },
  pH: { least: 6, most: 10 },
} as const satisfies ValidRange;

export const unionizedAmmoniaFractionKhoo1977Range = {
  temperatureK: { least: 278.15, most: 313.15 },
  pH: { least: 6, most: 10 },
  salinity: { least: 0, most: 40 },
} as const satisfies ValidRange;

export const unionizedAmmoniaFractionBell2007Range = {
  temperatureK: { least: 278.15, most: 308.15 },
  pH: { least: 6, most: 10 },
  salinity: { least: 20, most: 40 },
} as const satisfies ValidRange;

export const unionizedAmmoniaFractionRange = {
  temperatureK: { least: 278.15, most: 313.15 },
  pH: { least: 6, most: 10 },
  salinity: { least: 0, most: 40 },
} as const satisfies ValidRange;

const acidConstantOfFreshWater = (temperatureK: number): number => 0.09018 + 2729.92 / temperatureK;

/** Molal ionic strength of sea water, mol/kg. */
const ionicStrength = (salinity: number): number => (19.9273 * salinity) / (1000 - 1.005109 * salinity);

const fractionOf = (pKa: number, pH: number): number => 1 / (1 + 10 ** (pKa - pH));

/**
 * Share of total ammonia that is un-ionized in fresh water.
 *
 * f = 1/(1 + 10^(pKa − pH)), pKa = 0.09018 + 2729.92/T.
 *
 * @param water.temperatureK temperature, K; 273.15 to 323.15
 * @param water.pH pH, 1; 6 to 10
 * @returns share, 1; the same for nitrogen as for ammonia
 * Accuracy: 1 % at zero ionic strength; hard water lowers it by up to a tenth; 0.1 of pH is a quarter of it.
 * @source Emerson, Russo, Lund & Thurston 1975, J. Fish. Res. Board Can. 32, 2379–2383
 * @example unionizedAmmoniaFractionEmerson1975({ temperatureK: 298.15, pH: 8 }) // 0.05366
 */
export const unionizedAmmoniaFractionEmerson1975 = (water: {
  readonly temperatureK: number;
  readonly pH: number;
}): number => fractionOf(acidConstantOfFreshWater(water.temperatureK), water.pH);

/**
 * Share of total ammonia that is un-ionized in brackish and sea water; in fresh water it is Emerson's.
 *
 * f = 1/(1 + 10^(pKa − pH)), pKa = 0.09018 + 2729.92/T + (0.1552 − 0.0003142 t) I, t in °C,
 * I = 19.9273 S/(1000 − 1.005109 S).
 *
 * @param water.temperatureK temperature, K; 278 to 313
 * @param water.pH pH on the scale of free hydrogen ions, 1; 6 to 10. Read with buffers for fresh water it is about
 * 0.1 more in sea water, and the share then comes out a quarter too large
 * @param water.salinity practical salinity, 1; 0 to 40
 * @returns share, 1
 * Accuracy: 3 % fresh to 10 % in sea water. Copies that put kelvin for t are wrong by up to five times (Bell et al.
 * 2007, Environ. Chem. 4, 183).
 * @source Khoo, Culberson & Bates 1977, J. Solution Chem. 6, 281–290, from memory
 * @example unionizedAmmoniaFractionKhoo1977({ temperatureK: 298.15, pH: 8, salinity: 34 }) // 0.0428
 */
export const unionizedAmmoniaFractionKhoo1977 = (water: Water & { readonly pH: number }): number => {
  const t = water.temperatureK - ICE_POINT_K;
  const bySalt = (0.1552 - 0.0003142 * t) * ionicStrength(water.salinity);
  return fractionOf(acidConstantOfFreshWater(water.temperatureK) + bySalt, water.pH);
};

/**
 * Share of total ammonia that is un-ionized in sea water: a newer fit to the data of Khoo et al.
 *
 * f = 1/(1 + 10^(pKa − pH)), pKa = 10.0423 − 0.0315536 t + 0.003071 S, t in °C.
 *
 * @param water.temperatureK temperature, K; 278 to 308
 * @param water.pH pH on the scale of free hydrogen ions, 1; 6 to 10
 * @param water.salinity practical salinity, 1; 20 to 40
 * @returns share, 1
 * Accuracy: 5 %.
 * @source Bell, Johnson, Jickells & Liss 2007, Environ. Chem. 4, 183–186, from memory
 * @example unionizedAmmoniaFractionBell2007({ temperatureK: 298.15, pH: 8, salinity: 34 }) // 0.0420
 */
export const unionizedAmmoniaFractionBell2007 = (water: Water & { readonly pH: number }): number => {
  const t = water.temperatureK - ICE_POINT_K;
  return fractionOf(10.0423 - 0.0315536 * t + 0.003071 * water.salinity, water.pH);
};

/**
 * Share of total ammonia that is un-ionized, fresh to sea water without a step: Emerson et al. for the water, Khoo
 * et al. for the salt.
 *
 * f = 1/(1 + 10^(pKa − pH)).
 *
 * @param water.temperatureK temperature, K; 278 to 313
 * @param water.pH pH, 1; 6 to 10; in sea water on the scale of free hydrogen ions
 * @param water.salinity practical salinity, 1; 0 to 40
 * @returns share, 1
 * Accuracy: 1 % fresh, 10 % in sea water.
 * @source Emerson et al. 1975, J. Fish. Res. Board Can. 32, 2379–2383; Khoo et al. 1977, J. Solution Chem. 6, 281–290
 * @example unionizedAmmoniaFraction({ temperatureK: 298.15, pH: 8, salinity: 0 }) // 0.05366
 */
export const unionizedAmmoniaFraction = (water: Water & { readonly pH: number }): number =>
  unionizedAmmoniaFractionKhoo1977(water);
