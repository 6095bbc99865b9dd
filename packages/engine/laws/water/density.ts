import { ICE_POINT_K } from '../constants.ts';
import type { ValidRange } from '../range.ts';

/** Water as far as its own properties go. */
export interface Water {
  /** Temperature, K; above freezing. */
  readonly temperatureK: number;
  /** Practical salinity, 1; 0 fresh to 42. */
  readonly salinity: number;
}

export const waterDensityIapwsSr6Range = {
  temperatureK: { least: 253.15, most: 383.15 },
} as const satisfies ValidRange;

export const waterDensityKell1975Range = {
  temperatureK: { least: 273.15, most: 423.15 },
} as const satisfies ValidRange;

export const seawaterDensityMilleroPoisson1981Range = {
  temperatureK: { least: 273.15, most: 313.15 },
  salinity: { least: 0.5, most: 43 },
} as const satisfies ValidRange;

export const waterDensityRange = {
  temperatureK: { least: 273.15, most: 313.15 },
  salinity: { least: 0, most: 43 },
} as const satisfies ValidRange;

/** Specific gas constant of water in the release, J/(kg K). */
const GAS_CONSTANT_OF_WATER = 461.51805;
const REFERENCE_PRESSURE_PA = 1e5;
const REFERENCE_TEMPERATURE_K = 10;
const UPPER_POLE_K = 593;
const LOWER_POLE_K = 232;
/** a₅ of the release: the constant term of the volume. */
const VOLUME_CONSTANT = 1.93763157e-2;
/** Coefficient and power of α and of β, by term. */
const VOLUME_TERMS = [
  { a: 6.74458446e3, n: 4, b: 5.78545292e-3, m: 1 },
  { a: -2.22521604e5, n: 5, b: -1.53195665e-2, m: 2 },
  { a: 1.00231247e8, n: 7, b: 3.11337859e-2, m: 3 },
  { a: -1.63552118e9, n: 8, b: -4.23546241e-2, m: 4 },
  { a: 8.32299658e9, n: 9, b: 3.38713507e-2, m: 5 },
  { a: 0, n: 0, b: -1.19946761e-2, m: 6 },
] as const;

/** Kelvin of 1968 per kelvin of 1990, above the ice point, 1. */
const IPTS68_PER_ITS90 = 1.00024;

const celsius68 = (temperatureK: number): number => IPTS68_PER_ITS90 * (temperatureK - ICE_POINT_K);

/** Polynomial with the constant term first. */
const polynomial = (x: number, coefficients: readonly number[]): number =>
  coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);

/**
 * Density of liquid water without salt at 0.1 MPa.
 *
 * v = R·T_r/p₀·(a₅ + Σ aᵢ αⁿ + Σ bᵢ βᵐ), α = T_r/(593 K − T), β = T_r/(T − 232 K), ρ = 1/v.
 *
 * @param water.temperatureK temperature (ITS-90), K; 253.15 to 383.15
 * @returns density, kg/m³; 950 to 1000. At 101 325 Pa it is 0.0006 kg/m³ more
 * Accuracy: 0.001 kg/m³ between 273 and 313 K.
 * @source IAPWS SR6-08(2011), Revised Supplementary Release on Properties of Liquid Water at 0.1 MPa, equation 2
 * @example waterDensityIapwsSr6({ temperatureK: 298.15 }) // 997.047
 */
export const waterDensityIapwsSr6 = (water: { readonly temperatureK: number }): number => {
  const alpha = REFERENCE_TEMPERATURE_K / (UPPER_POLE_K - water.temperatureK);
  const beta = REFERENCE_TEMPERATURE_K / (water.temperatureK - LOWER_POLE_K);
  const volume = VOLUME_TERMS.reduce(
    (sum, { a, n, b, m }) => sum + a * alpha ** n + b * beta ** m,
    VOLUME_CONSTANT,
  );
  return REFERENCE_PRESSURE_PA / (GAS_CONSTANT_OF_WATER * REFERENCE_TEMPERATURE_K * volume);
};

/**
 * Density of water without salt at one atmosphere.
 *
 * ρ = (999.83952 + 16.945176 t − 7.9870401e-3 t² − 46.170461e-6 t³ + 105.56302e-9 t⁴ − 280.54253e-12 t⁵)
 * / (1 + 16.879850e-3 t), t in °C of 1968.
 *
 * @param water.temperatureK temperature (ITS-90), K; 273.15 to 423.15
 * @returns density, kg/m³
 * Accuracy: up to 0.006 kg/m³ from newer work between 273 and 313 K. Often copied with 16.89785e-3 in the
 * denominator, a slip that costs 0.7 kg/m³ at 40 °C.
 * @source Kell 1975, J. Chem. Eng. Data 20(1), 97–105
 * @example waterDensityKell1975({ temperatureK: 293.15 }) // 998.203
 */
export const waterDensityKell1975 = (water: { readonly temperatureK: number }): number => {
  const t = celsius68(water.temperatureK);
  const above = polynomial(
    t,
    [999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12],
  );
  return above / (1 + 16.87985e-3 * t);
};

/** Density that salt adds to water by Millero & Poisson, kg/m³. */
const densityOfSalt = (water: Water): number => {
  const t = celsius68(water.temperatureK);
  const S = water.salinity;
  const A = polynomial(t, [0.824493, -4.0899e-3, 7.6438e-5, -8.2467e-7, 5.3875e-9]);
  const B = polynomial(t, [-5.72466e-3, 1.0227e-4, -1.6546e-6]);
  return A * S + B * S ** 1.5 + 4.8314e-4 * S ** 2;
};

/**
 * Density of sea water at one atmosphere: the international equation of state of 1980.
 *
 * ρ = ρ_w(t) + A(t)·S + B(t)·S^1.5 + 4.8314e-4·S², t in °C of 1968.
 *
 * @param water.temperatureK temperature (ITS-90), K; 273.15 to 313.15
 * @param water.salinity practical salinity, 1; 0.5 to 43
 * @returns density, kg/m³
 * Accuracy: 0.0036 kg/m³ (standard error of the fit).
 * @source Millero & Poisson 1981, Deep-Sea Research 28A, 625–629
 * @example seawaterDensityMilleroPoisson1981({ temperatureK: 298.15, salinity: 35 }) // 1023.34
 */
export const seawaterDensityMilleroPoisson1981 = (water: Water): number => {
  const fresh = polynomial(
    celsius68(water.temperatureK),
    [999.842594, 6.793952e-2, -9.09529e-3, 1.001685e-4, -1.120083e-6, 6.536332e-9],
  );
  return fresh + densityOfSalt(water);
};

/**
 * Density of fresh, brackish or sea water at the surface: IAPWS SR6-08 for the water, with what Millero & Poisson
 * add for the salt; without a step at salinity 0.
 *
 * ρ = ρ_SR6(T) + A(t)·S + B(t)·S^1.5 + 4.8314e-4·S².
 *
 * @param water.temperatureK temperature, K; 273.15 to 313.15
 * @param water.salinity practical salinity, 1; 0 to 43
 * @returns density, kg/m³
 * Accuracy: 0.01 kg/m³.
 * @source IAPWS SR6-08(2011); Millero & Poisson 1981, Deep-Sea Research 28A, 625–629
 * @example waterDensity({ temperatureK: 298.15, salinity: 0 }) // 997.047
 */
export const waterDensity = (water: Water): number => waterDensityIapwsSr6(water) + densityOfSalt(water);
