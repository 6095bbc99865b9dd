import { bracketedRoot } from '../../numerics/roots.ts';
import type { ValidRange } from '../range.ts';
import { frictionFactorChurchillShape } from './friction.ts';

/** A plane slot between two parallel walls: what a gap past a chamber is. */
export interface Slot {
  /** Clear distance between the walls, m; above 0, far below the width. */
  readonly thicknessM: number;
  /** Extent across the flow, m; above 0. */
  readonly widthM: number;
  /** Extent along the flow, m; 0 or more. */
  readonly lengthM: number;
  /** Entrance, exit and build-up of the profile in velocity heads, 1; 0 or more, 1.5 when left out. */
  readonly entranceK?: number;
  /** Density of the water, kg/m³; above 0. */
  readonly densityKgPerM3: number;
  /** Viscosity of the water, Pa·s; above 0. */
  readonly viscosityPaS: number;
}

/** Loss of entrance and exit with the build-up of the profile, velocity heads of the slot, 1; 1.5 within 1.2–2.2. */
export const SLOT_ENTRANCE_K = 1.5;

export const slotPressureRange = {
  thicknessM: { least: 5e-5, most: 0.01 },
  reynolds: { least: 0, most: 1e5 },
} as const satisfies ValidRange;

/**
 * Darcy friction factor of a smooth plane slot on twice its thickness.
 *
 * 96/Re in laminar flow, Churchill's turbulent term above, joined as in Churchill's formula for round bores.
 *
 * @param flow.reynolds Reynolds number on twice the thickness, ρV·2h/µ, 1; above 0
 * @returns friction factor, 1
 * Accuracy: exact in laminar flow; about 10 % in turbulent flow, as for any hydraulic diameter of a plane slot.
 * @source Churchill 1977 with the laminar constant of a plane slot (White, Viscous Fluid Flow, table 3-2)
 */
export const frictionFactorSlotChurchill = (flow: { readonly reynolds: number }): number =>
  frictionFactorChurchillShape({ reynolds: flow.reynolds, relativeRoughness: 0, laminarConstant: 96 });

/**
 * Pressure lost in a plane slot, laminar to turbulent.
 *
 * Δp = f(Re) L/(2h) ρV²/2 + K ρV²/2 with V = Q/(wh), Re = 2hρV/µ; laminar: 12µLV/h² + K ρV²/2.
 *
 * @param gap.flowM3PerS flow, m³/s; any sign, the pressure takes its sign
 * @returns pressure lost, Pa; strictly rising with flow
 * Accuracy: about 15 % for a known thickness; thickness enters with its cube, so that 10 % there is 30 % here.
 * @source plane Poiseuille flow; Churchill 1977; entrance loss after Shah & London 1978
 */
export const slotPressure = (gap: Slot & { readonly flowM3PerS: number }): number => {
  const { thicknessM: h, densityKgPerM3, viscosityPaS } = gap;
  const velocity = Math.abs(gap.flowM3PerS) / (gap.widthM * h);
  if (velocity === 0) return 0;
  const reynolds = (2 * h * densityKgPerM3 * velocity) / viscosityPaS;
  const velocityPressure = (densityKgPerM3 * velocity ** 2) / 2;
  const friction = (frictionFactorSlotChurchill({ reynolds }) * gap.lengthM) / (2 * h);
  return Math.sign(gap.flowM3PerS) * (friction + (gap.entranceK ?? SLOT_ENTRANCE_K)) * velocityPressure;
};

/**
 * Flow through a plane slot at a given pressure difference: the inverse of `slotPressure`.
 *
 * @param gap.pressurePa pressure difference, Pa; any sign, the flow takes its sign
 * @returns flow, m³/s; the laminar law without entrance loss bounds it from above
 * Accuracy: as `slotPressure`; the root is found to 1e-14.
 * @source as `slotPressure`
 * @example
 * slotFlow({ thicknessM: 5e-4, widthM: 0.1, lengthM: 0.005, densityKgPerM3: 998.2, viscosityPaS: 1.0016e-3,
 *   pressurePa: 200 }) // 1.903e-5
 */
export const slotFlow = (gap: Slot & { readonly pressurePa: number }): number => {
  const size = Math.abs(gap.pressurePa);
  if (size === 0) return 0;
  const laminar = (size * gap.thicknessM ** 3 * gap.widthM) / (12 * gap.viscosityPaS * gap.lengthM);
  const residual = (flowM3PerS: number): number => slotPressure({ ...gap, flowM3PerS }) - size;
  return Math.sign(gap.pressurePa) * bracketedRoot(residual, { low: 0, high: laminar * (1 + 1e-12) });
};
