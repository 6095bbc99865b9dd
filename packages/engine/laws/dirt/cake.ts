/** Solids lying on a face that water passes through. */
export interface Cake {
  /** Resistance per dry mass, m/kg; 1e9 to 1e12 for biological solids. */
  readonly resistanceMPerKg: number;
  /** Viscosity of the water, Pa·s; above 0. */
  readonly viscosityPaS: number;
}

/**
 * Pressure lost in a mat of caught solids.
 *
 * Δp = µ α w U.
 *
 * @param cake.cakeKgPerM2 w, dry solids on the face, kg/m²; 0 or more
 * @param cake.velocityMPerS U, superficial, m/s; any sign
 * @returns pressure lost, Pa
 * Accuracy: that of α, ×/÷ 10; soft mats are pressed and resist more as they load.
 * @source Ruth 1935, Ind. Eng. Chem. 27, 708–723
 */
export const cakePressureRuth1935 = (
  cake: Cake & { readonly cakeKgPerM2: number; readonly velocityMPerS: number },
): number => cake.viscosityPaS * cake.resistanceMPerKg * cake.cakeKgPerM2 * cake.velocityMPerS;

/**
 * Time to pass a volume through a growing mat at constant pressure.
 *
 * t = µα C v²/(2Δp) + µ R v/Δp, v the volume per area.
 *
 * @param run.filtrateM v, m³/m² = m; 0 or more
 * @param run.solidsKgPerM3 C, dry solids laid down per volume passed, kg/m³; 0 or more
 * @param run.mediumResistancePerM R, resistance of what lies below, 1/m; 0 or more
 * @param run.pressurePa Δp, Pa; above 0
 * @returns time, s
 * Accuracy: that of α.
 * @source Hermia 1982, Trans. Inst. Chem. Eng. 60, 183–187
 */
export const filtrationTimeHermia1982 = (
  run: Cake & {
    readonly filtrateM: number;
    readonly solidsKgPerM3: number;
    readonly mediumResistancePerM: number;
    readonly pressurePa: number;
  },
): number => {
  const perVolume = (run.viscosityPaS * run.resistanceMPerKg * run.solidsKgPerM3) / (2 * run.pressurePa);
  const below = (run.viscosityPaS * run.mediumResistancePerM) / run.pressurePa;
  return perVolume * run.filtrateM ** 2 + below * run.filtrateM;
};
