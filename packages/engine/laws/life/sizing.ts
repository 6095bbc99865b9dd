/**
 * Volume of bed that a load of ammonia needs, by area.
 *
 * V = P/(J·a).
 *
 * @param load.loadKgPerS ammonia to oxidise, kg/s, counted as the rate is; 0 or more
 * @param load.areaRateKgPerM2PerS rate per area of bacteria, kg/(m²·s); above 0
 * @param load.areaPerM area per volume of bed, m²/m³; above 0
 * @returns volume of bed, m³
 * Accuracy: that of the rate, ×/÷ 2.
 * @source FAO Fisheries and Aquaculture Technical Paper 589, appendix 4, seen quoted
 * @example mediaVolumeForLoad({ loadKgPerS: 8.7e-8, areaRateKgPerM2PerS: 6.6e-9, areaPerM: 300 }) // 0.0439
 */
export const mediaVolumeForLoad = (load: {
  readonly loadKgPerS: number;
  readonly areaRateKgPerM2PerS: number;
  readonly areaPerM: number;
}): number => load.loadKgPerS / (load.areaRateKgPerM2PerS * load.areaPerM);

/**
 * Volume of bed that a load of ammonia needs, by a rate per volume.
 *
 * V = P/r.
 *
 * @param load.loadKgPerS ammonia nitrogen to oxidise, kg N/s; 0 or more
 * @param load.volumeRateKgPerM3PerS rate per volume of bed, kg N/(m³·s); above 0
 * @returns volume of bed, m³
 * Accuracy: that of the rate, ×/÷ 2.
 * @source Losordo & DeLong 2015, seen quoted
 * @example mediaVolumeForVolumetricRate({ loadKgPerS: 2.66e-5, volumeRateKgPerM3PerS: 4.05e-6 }) // 6.57
 */
export const mediaVolumeForVolumetricRate = (load: {
  readonly loadKgPerS: number;
  readonly volumeRateKgPerM3PerS: number;
}): number => load.loadKgPerS / load.volumeRateKgPerM3PerS;
