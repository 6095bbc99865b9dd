import type { ValidRange } from '../range.ts';
import { waterDensityIapwsSr6 } from './density.ts';

const plummerBusenbergRange = {
  temperatureK: { least: 273.15, most: 363.15 },
} as const satisfies ValidRange;

export const carbonicAcidConstantPlummerBusenberg1982Range = plummerBusenbergRange;
export const bicarbonateConstantPlummerBusenberg1982Range = plummerBusenbergRange;

export const activityCoefficientDaviesRange = {
  temperatureK: { least: 273.15, most: 323.15 },
  ionicStrengthMolPerM3: { least: 0, most: 500 },
} as const satisfies ValidRange;

export const carbonDioxideRange = {
  temperatureK: { least: 273.15, most: 323.15 },
  pH: { least: 5.5, most: 9.5 },
  alkalinityKgPerM3: { least: 0.005, most: 0.5 },
} as const satisfies ValidRange;

/** Calcium carbonate per equivalent of alkalinity, kg/mol. */
const CARBONATE_PER_EQUIVALENT = 100.0869e-3 / 2;
/** Carbon dioxide, kg/mol. */
const CARBON_DIOXIDE_MOLAR_MASS = 44.0095e-3;
/** Ionic strength per equivalent of alkalinity where all of it is calcium bicarbonate, 1. */
const IONIC_STRENGTH_OF_BICARBONATE = 1.5;

const logarithmicForm = (T: number, c: readonly [number, number, number, number, number]): number =>
  c[0] + c[1] * T + c[2] / T + c[3] * Math.log10(T) + c[4] / T ** 2;

/**
 * First acid constant of carbonic acid, dissolved carbon dioxide counted with it, as −log₁₀ K₁.
 *
 * log K₁ = −356.3094 − 0.06091964 T + 21834.37/T + 126.8339 log T − 1684915/T².
 *
 * @param water.temperatureK temperature, K; 273.15 to 363.15
 * @returns pK₁ at zero ionic strength, 1 (molal); 6.58 to 6.29
 * Accuracy: 0.01.
 * @source Plummer & Busenberg 1982, Geochim. Cosmochim. Acta 46, 1011–1040
 * @example carbonicAcidConstantPlummerBusenberg1982({ temperatureK: 298.15 }) // 6.352
 */
export const carbonicAcidConstantPlummerBusenberg1982 = (water: { readonly temperatureK: number }): number =>
  -logarithmicForm(water.temperatureK, [-356.3094, -0.06091964, 21834.37, 126.8339, -1_684_915]);

/**
 * Acid constant of bicarbonate as −log₁₀ K₂.
 *
 * log K₂ = −107.8871 − 0.03252849 T + 5151.79/T + 38.92561 log T − 563713.9/T².
 *
 * @param water.temperatureK temperature, K; 273.15 to 363.15
 * @returns pK₂ at zero ionic strength, 1 (molal); 10.63 to 10.12
 * Accuracy: 0.01.
 * @source Plummer & Busenberg 1982, Geochim. Cosmochim. Acta 46, 1011–1040
 * @example bicarbonateConstantPlummerBusenberg1982({ temperatureK: 298.15 }) // 10.329
 */
export const bicarbonateConstantPlummerBusenberg1982 = (water: { readonly temperatureK: number }): number =>
  -logarithmicForm(water.temperatureK, [-107.8871, -0.03252849, 5151.79, 38.92561, -563_713.9]);

/** −log₁₀ of the ion product of water: the same source, table 1. */
const waterConstant = (temperatureK: number): number =>
  -logarithmicForm(temperatureK, [-283.971, -0.05069842, 13_323, 102.24447, -1_119_669]);

/** Relative permittivity of water: Malmberg & Maryott 1956, J. Res. NBS 56, 1–8. */
const permittivity = (temperatureK: number): number => {
  const t = temperatureK - 273.15;
  return 87.74 - 0.40008 * t + 9.398e-4 * t ** 2 - 1.41e-6 * t ** 3;
};

/**
 * Activity coefficient of an ion.
 *
 * log γ = −A z²(√I/(1 + √I) − 0.3 I), A = 1.8248e6 √ρ/(εT)^1.5, I in mol/L, ρ in kg/L.
 *
 * @param ion.temperatureK temperature, K; 273.15 to 323.15
 * @param ion.charge charge of the ion, 1; 1 to 3, of either sign
 * @param ion.ionicStrengthMolPerM3 ionic strength, mol/m³; 0 to 500
 * @returns activity coefficient, 1; 1 at no ionic strength
 * Accuracy: 3 % at 100 mol/m³, 10 % at 500.
 * @source Davies 1962, Ion Association; A as in Truesdell & Jones 1974, J. Res. USGS 2, 233–248
 * @example activityCoefficientDavies({ temperatureK: 298.15, charge: 1, ionicStrengthMolPerM3: 100 }) // 0.78
 */
export const activityCoefficientDavies = (ion: {
  readonly temperatureK: number;
  readonly charge: number;
  readonly ionicStrengthMolPerM3: number;
}): number => {
  const { temperatureK: T } = ion;
  const I = ion.ionicStrengthMolPerM3 * 1e-3;
  const rho = waterDensityIapwsSr6(ion) * 1e-3;
  const A = (1.8248e6 * Math.sqrt(rho)) / (permittivity(T) * T) ** 1.5;
  return 10 ** (-A * ion.charge ** 2 * (Math.sqrt(I) / (1 + Math.sqrt(I)) - 0.3 * I));
};

/**
 * Dissolved carbon dioxide from pH and alkalinity.
 *
 * [CO2] = (Alk + [H] − [OH])/(1 + 2K₂/(γ₂/γ₁·10^−pH))·γ₁·10^−pH/K₁, activities after Davies.
 *
 * @param water.temperatureK temperature, K; 273.15 to 323.15
 * @param water.pH pH, 1; 5.5 to 9.5
 * @param water.alkalinityKgPerM3 alkalinity as CaCO3, kg/m³; 0.005 to 0.5, all of it carbonate
 * @param water.ionicStrengthMolPerM3 ionic strength, mol/m³; 0 to 500; when left out that of calcium bicarbonate alone, 1.5
 * times the alkalinity in mol/m³
 * @returns carbon dioxide, kg CO2/m³; 0 where the alkalinity is used up by hydroxide
 * Accuracy: 3 % of the constants; 0.1 of pH is a quarter of it; other bases (humic matter, phosphate) make it too high.
 * Fresh water only.
 * @source Plummer & Busenberg 1982, Geochim. Cosmochim. Acta 46, 1011–1040; Davies 1962
 * @example carbonDioxideKgPerM3({ temperatureK: 298.15, pH: 7, alkalinityKgPerM3: 0.0714 }) // 0.0134
 */
export const carbonDioxideKgPerM3 = (water: {
  readonly temperatureK: number;
  readonly pH: number;
  readonly alkalinityKgPerM3: number;
  readonly ionicStrengthMolPerM3?: number;
}): number => {
  const { temperatureK, pH } = water;
  const Alk = water.alkalinityKgPerM3 / CARBONATE_PER_EQUIVALENT;
  const ionicStrengthMolPerM3 = water.ionicStrengthMolPerM3 ?? IONIC_STRENGTH_OF_BICARBONATE * Alk;
  const gamma = (charge: number): number =>
    activityCoefficientDavies({ temperatureK, charge, ionicStrengthMolPerM3 });
  const aH = 10 ** -pH;
  const hydroxide = 10 ** (pH - waterConstant(temperatureK)) / gamma(1);
  const carbonateShare = (10 ** -bicarbonateConstantPlummerBusenberg1982(water) * gamma(1)) / (gamma(2) * aH);
  const bicarbonate = Math.max(0, Alk * 1e-3 + aH / gamma(1) - hydroxide) / (1 + 2 * carbonateShare);
  const carbonDioxide =
    (bicarbonate * gamma(1) * aH) / 10 ** -carbonicAcidConstantPlummerBusenberg1982(water);
  return carbonDioxide * 1e3 * CARBON_DIOXIDE_MOLAR_MASS;
};

/**
 * pH of water whose alkalinity changes while air holds its carbon dioxide where it is.
 *
 * pH = pH₀ + log₁₀(Alk/Alk₀).
 *
 * @param water.pH pH₀ before, 1; 6 to 8.5
 * @param water.beforeKgPerM3 Alk₀, alkalinity before as CaCO3, kg/m³; above 0
 * @param water.alkalinityKgPerM3 Alk, alkalinity now as CaCO3, kg/m³; above 0
 * @returns pH, 1; below 4.5 it has no meaning
 * Accuracy: 0.1 where bicarbonate is all of the alkalinity and carbon dioxide follows air within hours.
 * @source first step of the dissociation of carbonic acid, Henderson 1908
 * @example pHByAlkalinityHenderson1908({ pH: 7.4, beforeKgPerM3: 0.08, alkalinityKgPerM3: 0.04 }) // 7.10
 */
export const pHByAlkalinityHenderson1908 = (water: {
  readonly pH: number;
  readonly beforeKgPerM3: number;
  readonly alkalinityKgPerM3: number;
}): number => water.pH + Math.log10(water.alkalinityKgPerM3 / water.beforeKgPerM3);
