/**
 * Substance on an adsorbent in balance with water, Freundlich's isotherm.
 *
 * q = K_F C^(1/n).
 *
 * @param balance.concentrationKgPerM3 level in the water, kg/m³; 0 or more
 * @param balance.capacityAtUnit K_F, amount per mass of adsorbent at a level of 1 kg/m³, kg/kg; above 0
 * @param balance.intensity 1/n, 1; 0.1 to 1
 * @returns amount per mass of adsorbent, kg/kg; grows without end, so never use it above the levels measured
 * Accuracy: 5–10 % within the levels measured; other substances in the water take room, ×/÷ 3.
 * @source Freundlich 1906, Z. Phys. Chem. 57, 385–470
 * @example adsorbedFreundlich1906({ concentrationKgPerM3: 0.01, capacityAtUnit: 0.4, intensity: 0.25 }) // 0.126
 */
export const adsorbedFreundlich1906 = (balance: {
  readonly concentrationKgPerM3: number;
  readonly capacityAtUnit: number;
  readonly intensity: number;
}): number => balance.capacityAtUnit * balance.concentrationKgPerM3 ** balance.intensity;

/**
 * Substance on an adsorbent in balance with water, Langmuir's isotherm.
 *
 * q = q_max K C/(1 + K C).
 *
 * @param balance.concentrationKgPerM3 level in the water, kg/m³; 0 or more
 * @param balance.capacityRatio q_max, amount per mass of adsorbent that is full, kg/kg; above 0
 * @param balance.affinityM3PerKg K, m³/kg; above 0
 * @returns amount per mass of adsorbent, kg/kg; 0 to q_max
 * Accuracy: 5–10 % within the levels measured; other substances in the water take room, ×/÷ 3.
 * @source Langmuir 1918, J. Am. Chem. Soc. 40, 1361–1403
 * @example adsorbedLangmuir1918({ concentrationKgPerM3: 0.01, capacityRatio: 0.3, affinityM3PerKg: 500 }) // 0.25
 */
export const adsorbedLangmuir1918 = (balance: {
  readonly concentrationKgPerM3: number;
  readonly capacityRatio: number;
  readonly affinityM3PerKg: number;
}): number => {
  const filled = balance.affinityM3PerKg * balance.concentrationKgPerM3;
  return (balance.capacityRatio * filled) / (1 + filled);
};

/**
 * Time after which an adsorbent takes up no more.
 *
 * t = m q u/L.
 *
 * @param adsorbent.massKg dry adsorbent, kg; 0 or more
 * @param adsorbent.capacityRatio amount per mass of adsorbent at the level in the tank, kg/kg; 0 or more
 * @param adsorbent.loadKgPerS substance that comes to it, kg/s; above 0
 * @param adsorbent.usedFraction share of the capacity used before the substance comes through, 1; 1 when left out,
 * 0.3 to 1
 * @returns time, s; endless without load
 * Accuracy: that of capacity and load, seldom better than ×/÷ 3.
 * @source mass balance
 * @example exhaustionTime({ massKg: 0.1, capacityRatio: 0.02, loadKgPerS: 1e-9 }) // 2e6
 */
export const exhaustionTime = (adsorbent: {
  readonly massKg: number;
  readonly capacityRatio: number;
  readonly loadKgPerS: number;
  readonly usedFraction?: number;
}): number =>
  (adsorbent.massKg * adsorbent.capacityRatio * (adsorbent.usedFraction ?? 1)) / adsorbent.loadKgPerS;
