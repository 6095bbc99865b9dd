import type { ValidRange } from '../range.ts';
import type { Foam } from './foam.ts';

/** A pad or a piece that is pressed into less room than it has of itself. */
interface Pressed {
  /** Volume before over volume as it lies, 1; above 1 pressed, below 1 pulled loose. */
  readonly pressedRatio: number;
}

export const pressedFoamRange = {
  pressedRatio: { least: 1, most: 4 },
} as const satisfies ValidRange;

/**
 * Foam as it is when it is pressed: what is solid stays, and so does the surface of its struts.
 *
 * 1 − ε = r(1 − ε₀), d_c = d_c₀/√r: by 10.33 √(1−ε)/d_c the surface per volume is then r times as great.
 *
 * @param foam.cellM cells before, m; above 0
 * @param foam.voidage ε₀ before, 1; above 0, below 1
 * @param foam.pressedRatio r, 1; 1 to 4
 * @returns cells, m, and voidage, 1, as it lies
 * Accuracy: ±25 % in the resistance: real foam folds up layer by layer, so that pressed lightly it is uneven.
 * @source conservation of solid and of strut surface; Dietrich 2012, Chem. Eng. Sci. 74, 192–199 for the surface
 */
export const pressedFoam = (foam: Foam & Pressed): Foam => ({
  cellM: foam.cellM / Math.sqrt(foam.pressedRatio),
  voidage: 1 - foam.pressedRatio * (1 - foam.voidage),
});

/**
 * Share of fibre in a pad of so much mass in so much room.
 *
 * c = m/(ρV), ρ the density of the fibre's own stuff.
 *
 * @param pad.massKg dry mass, kg; above 0
 * @param pad.roomM3 room that it lies in, m³; above 0
 * @param pad.fibreDensityKgPerM3 density of the stuff, kg/m³; above 0, 1380 for polyester
 * @returns share of fibre, 1
 * Accuracy: exact; binder and finish count as fibre.
 * @source mass balance
 */
export const solidFractionOfMass = (pad: {
  readonly massKg: number;
  readonly roomM3: number;
  readonly fibreDensityKgPerM3: number;
}): number => pad.massKg / (pad.fibreDensityKgPerM3 * pad.roomM3);
