import { ICE_POINT_K } from '../constants.ts';
import type { ValidRange } from '../range.ts';
import type { Water } from './density.ts';

export const waterViscosityIapwsSr6Range = {
  temperatureK: { least: 253.15, most: 383.15 },
} as const satisfies ValidRange;

export const seawaterViscositySharqawy2010Range = {
  temperatureK: { least: 273.15, most: 453.15 },
  salinity: { least: 0, most: 149 },
} as const satisfies ValidRange;

export const waterViscosityRange = {
  temperatureK: { least: 273.15, most: 383.15 },
  salinity: { least: 0, most: 149 },
} as const satisfies ValidRange;

/** Mass fraction of salt per practical salinity in sea water of reference composition, kg/kg. */
const SALT_PER_SALINITY = 35.16504e-3 / 35;

/**
 * Viscosity of liquid water without salt at 0.1 MPa.
 *
 * µ = 280.68 T̃^−1.9 + 511.45 T̃^−7.7 + 61.131 T̃^−19.6 + 0.45903 T̃^−40 µPa·s, T̃ = T/300 K.
 *
 * @param water.temperatureK temperature (ITS-90), K; 253.15 to 383.15
 * @returns dynamic viscosity, Pa·s
 * Accuracy: 1 % over the whole range, better than 0.2 % between 273 and 313 K.
 * @source IAPWS SR6-08(2011), Revised Supplementary Release on Properties of Liquid Water at 0.1 MPa, equation 7
 * @example waterViscosityIapwsSr6({ temperatureK: 298.15 }) // 0.00089000
 */
export const waterViscosityIapwsSr6 = (water: { readonly temperatureK: number }): number => {
  const T = water.temperatureK / 300;
  return 1e-6 * (280.68 * T ** -1.9 + 511.45 * T ** -7.7 + 61.131 * T ** -19.6 + 0.45903 * T ** -40);
};

/** Viscosity of salt water over that of water without salt, 1. */
const ratioOfSalt = (water: Water): number => {
  const t = water.temperatureK - ICE_POINT_K;
  const S = SALT_PER_SALINITY * water.salinity;
  const A = 1.541 + 1.998e-2 * t - 9.52e-5 * t ** 2;
  const B = 7.974 - 7.561e-2 * t + 4.724e-4 * t ** 2;
  return 1 + A * S + B * S ** 2;
};

/**
 * Viscosity of sea water.
 *
 * µ = µ_w(1 + A S + B S²), µ_w = 4.2844e-5 + 1/(0.157 (t + 64.993)² − 91.296), S in kg salt per kg, t in °C.
 *
 * @param water.temperatureK temperature (ITS-90), K; 273.15 to 453.15
 * @param water.salinity practical salinity, 1; 0 to 149; 35 is taken as 35.165 g/kg
 * @returns dynamic viscosity, Pa·s
 * Accuracy: 1.5 %.
 * @source Sharqawy, Lienhard & Zubair 2010, Desalination and Water Treatment 16, 354–380, equations 22 and 23
 * @example seawaterViscositySharqawy2010({ temperatureK: 298.15, salinity: 35 }) // 0.000959
 */
export const seawaterViscositySharqawy2010 = (water: Water): number => {
  const t = water.temperatureK - ICE_POINT_K;
  const fresh = 4.2844e-5 + 1 / (0.157 * (t + 64.993) ** 2 - 91.296);
  return fresh * ratioOfSalt(water);
};

/**
 * Viscosity of fresh, brackish or sea water: IAPWS SR6-08 for the water, times what Sharqawy et al. give for the
 * salt; without a step at salinity 0.
 *
 * µ = µ_SR6(T)·(1 + A S + B S²).
 *
 * @param water.temperatureK temperature, K; 273.15 to 383.15
 * @param water.salinity practical salinity, 1; 0 to 149
 * @returns dynamic viscosity, Pa·s
 * Accuracy: 0.2 % fresh, 1.5 % with salt.
 * @source IAPWS SR6-08(2011); Sharqawy, Lienhard & Zubair 2010, Desalination and Water Treatment 16, 354–380
 * @example waterViscosity({ temperatureK: 298.15, salinity: 0 }) // 0.00089000
 */
export const waterViscosity = (water: Water): number => waterViscosityIapwsSr6(water) * ratioOfSalt(water);
