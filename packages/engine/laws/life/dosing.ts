import { lifeFigures } from './constants.ts';

/** Chloride per nitrite nitrogen that keeps nitrite out of a fish's blood, kg/kg; 6–20. From memory. */
export const CHLORIDE_PER_NITRITE_RATIO = lifeFigures.chloridePerNitriteRatio.value;

/** Molar masses, kg/mol: IUPAC 2021. */
const NITROGEN_MOLAR_MASS = 14.007e-3;
const AMMONIUM_CHLORIDE_MOLAR_MASS = 53.49e-3;
const CHLORINE_MOLAR_MASS = 35.45e-3;
const SODIUM_CHLORIDE_MOLAR_MASS = 58.44e-3;

/**
 * Ammonium chloride that raises total ammonia in a volume of water.
 *
 * m = V·ΔC·M(NH4Cl)/M(N).
 *
 * @param dose.volumeM3 water, m³; 0 or more
 * @param dose.riseKgNPerM3 rise of total ammonia nitrogen, kg N/m³; 0 or more
 * @returns ammonium chloride, dry and pure, kg
 * Accuracy: that of the volume; the salt draws water.
 * @source molar masses of IUPAC 2021
 * @example ammoniumChlorideDose({ volumeM3: 0.1, riseKgNPerM3: 0.002 }) // 7.64e-4
 */
export const ammoniumChlorideDose = (dose: {
  readonly volumeM3: number;
  readonly riseKgNPerM3: number;
}): number => (dose.volumeM3 * dose.riseKgNPerM3 * AMMONIUM_CHLORIDE_MOLAR_MASS) / NITROGEN_MOLAR_MASS;

/**
 * Cooking salt that shields fish from nitrite.
 *
 * m = V·max(0, r·C_N − C_Cl)·M(NaCl)/M(Cl).
 *
 * @param dose.volumeM3 water, m³; 0 or more
 * @param dose.nitriteKgNPerM3 nitrite nitrogen, kg N/m³; 0 or more
 * @param dose.chlorideKgPerM3 chloride that the water has already, kg/m³; 0 or more
 * @param dose.chlorideRatio r, chloride per nitrite nitrogen, kg/kg; 10 when left out, 6 to 20 are advised
 * @returns sodium chloride, kg; 0 where there is enough
 * Accuracy: ×/÷ 2 in r. Plants and some fish take no salt.
 * @source ratio from memory of advice to fish farmers; molar masses of IUPAC 2021
 * @example nitriteChlorideDose({ volumeM3: 0.1, nitriteKgNPerM3: 0.001, chlorideKgPerM3: 0 }) // 1.65e-3
 */
export const nitriteChlorideDose = (dose: {
  readonly volumeM3: number;
  readonly nitriteKgNPerM3: number;
  readonly chlorideKgPerM3: number;
  readonly chlorideRatio?: number;
}): number => {
  const wanted = (dose.chlorideRatio ?? CHLORIDE_PER_NITRITE_RATIO) * dose.nitriteKgNPerM3;
  const lacking = Math.max(0, wanted - dose.chlorideKgPerM3);
  return (dose.volumeM3 * lacking * SODIUM_CHLORIDE_MOLAR_MASS) / CHLORINE_MOLAR_MASS;
};
