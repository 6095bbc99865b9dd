/** Where each quantity stands in a tank's state; masses of bacteria follow, of the first step by place, then of the second. */
export const at = {
  /** Ammonia, nitrite and nitrate nitrogen in the water, kg N/m³. */
  ammonia: 0,
  nitrite: 1,
  nitrate: 2,
  /** Oxygen, and alkalinity as CaCO3, kg/m³. */
  oxygen: 3,
  alkalinity: 4,
  /** Nitrogen that came in since the start, went out with water, and into plants, kg N/m³ of tank. */
  fed: 5,
  changed: 6,
  taken: 7,
  /** Nitrogen oxidised to nitrite, and to nitrate, since the start, kg N/m³ of tank. */
  first: 8,
  second: 9,
} as const;

/** Entries before the bacteria. */
export const LEVELS = 10;

/** Nitrogen of the water that the ledger has not accounted for, kg N/m³: rounding, where all is well. */
export const ledgerError = (start: Float64Array, now: Float64Array): number => {
  const water = (y: Float64Array): number => y[at.ammonia]! + y[at.nitrite]! + y[at.nitrate]!;
  const moved = (index: number): number => now[index]! - start[index]!;
  return water(now) - water(start) - (moved(at.fed) - moved(at.changed) - moved(at.taken));
};
