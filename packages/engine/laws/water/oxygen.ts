import { ICE_POINT_K, STANDARD_ATMOSPHERE_PA } from '../constants.ts';
import type { ValidRange } from '../range.ts';
import { seawaterDensityMilleroPoisson1981, type Water } from './density.ts';

export const oxygenSaturationBensonKrause1984Range = {
  temperatureK: { least: 273.15, most: 313.15 },
  salinity: { least: 0, most: 40 },
  pressurePa: { least: 0.5 * STANDARD_ATMOSPHERE_PA, most: 1.1 * STANDARD_ATMOSPHERE_PA },
} as const satisfies ValidRange;

export const oxygenSaturationGarciaGordon1992Range = {
  temperatureK: { least: 273.15, most: 313.15 },
  salinity: { least: 0, most: 42 },
} as const satisfies ValidRange;

/** Oxygen, kg/mol. */
const OXYGEN_MOLAR_MASS = 31.9988e-3;

/** Change of the saturation when air pressure is not one atmosphere, 1; vapour and gas imperfection counted. */
const pressureFactor = (water: { readonly temperatureK: number; readonly pressurePa: number }): number => {
  const T = water.temperatureK;
  const t = T - ICE_POINT_K;
  const P = water.pressurePa / STANDARD_ATMOSPHERE_PA;
  const vapour = Math.exp(11.8571 - 3840.7 / T - 216_961 / T ** 2);
  const theta = 0.000975 - 1.426e-5 * t + 6.436e-8 * t ** 2;
  return ((P - vapour) * (1 - theta * P)) / ((1 - vapour) * (1 - theta));
};

/**
 * Oxygen in water in balance with moist air.
 *
 * ln C = −139.34411 + 1.575701e5/T − 6.642308e7/T² + 1.2438e10/T³ − 8.621949e11/T⁴ − S(0.017674 − 10.754/T
 * + 2140.7/T²) in mg/L, times (P − u)(1 − θP)/((1 − u)(1 − θ)); u vapour pressure in atm, θ with t in °C.
 *
 * @param water.temperatureK temperature, K; 273.15 to 313.15
 * @param water.salinity practical salinity, 1; 0 to 40
 * @param water.pressurePa air pressure, absolute, Pa; 50 000 to 111 000
 * @returns oxygen, kg/m³; 0.0045 to 0.0147
 * Accuracy: 0.1 % at one atmosphere fresh, 0.3 % with salt.
 * @source Benson & Krause 1984, Limnol. Oceanogr. 29, 620–632, as in APHA Standard Methods 4500-O and USGS 2011.03
 * @example oxygenSaturationBensonKrause1984({ temperatureK: 293.15, salinity: 0, pressurePa: 101325 }) // 0.009092
 */
export const oxygenSaturationBensonKrause1984 = (water: Water & { readonly pressurePa: number }): number => {
  const T = water.temperatureK;
  const fresh = -139.34411 + 1.575701e5 / T - 6.642308e7 / T ** 2 + 1.2438e10 / T ** 3 - 8.621949e11 / T ** 4;
  const salt = water.salinity * (0.017674 - 10.754 / T + 2140.7 / T ** 2);
  return 1e-3 * Math.exp(fresh - salt) * pressureFactor(water);
};

/**
 * Oxygen in water in balance with moist air at one atmosphere, per mass of water.
 *
 * ln C = Σ Aᵢ Tsⁱ + S Σ Bᵢ Tsⁱ + C₀S² in µmol/kg, Ts = ln((298.15 − t)/(273.15 + t)), t in °C.
 *
 * @param water.temperatureK temperature, K; 273.15 to 313.15
 * @param water.salinity practical salinity, 1; 0 to 42
 * @returns oxygen, mol/kg of water with its salt
 * Accuracy: 0.3 %; the coefficients are those fitted to the data of Benson & Krause.
 * @source Garcia & Gordon 1992, Limnol. Oceanogr. 37, 1307–1312, table 1, first column
 * @example oxygenContentGarciaGordon1992({ temperatureK: 283.15, salinity: 35 }) // 274.6e-6
 */
export const oxygenContentGarciaGordon1992 = (water: Water): number => {
  const t = water.temperatureK - ICE_POINT_K;
  const S = water.salinity;
  const Ts = Math.log((298.15 - t) / (ICE_POINT_K + t));
  const A = 5.80871 + Ts * (3.20291 + Ts * (4.17887 + Ts * (5.10006 + Ts * (-9.86643e-2 + Ts * 3.80369))));
  const B = -7.01577e-3 + Ts * (-7.70028e-3 + Ts * (-1.13864e-2 - Ts * 9.51519e-3));
  return 1e-6 * Math.exp(A + S * B - 2.75915e-7 * S ** 2);
};

/**
 * Oxygen in water in balance with moist air at one atmosphere, per volume: `oxygenContentGarciaGordon1992` times the
 * density of Millero & Poisson.
 *
 * C = M·C_m·ρ.
 *
 * @param water.temperatureK temperature, K; 273.15 to 313.15
 * @param water.salinity practical salinity, 1; 0 to 42
 * @returns oxygen, kg/m³
 * Accuracy: 0.3 %.
 * @source Garcia & Gordon 1992, Limnol. Oceanogr. 37, 1307–1312; Millero & Poisson 1981
 * @example oxygenSaturationGarciaGordon1992({ temperatureK: 298.15, salinity: 35 }) // 0.00677
 */
export const oxygenSaturationGarciaGordon1992 = (water: Water): number =>
  OXYGEN_MOLAR_MASS * oxygenContentGarciaGordon1992(water) * seawaterDensityMilleroPoisson1981(water);
