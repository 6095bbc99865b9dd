import { fittings } from '../../catalogue/fittings.ts';
import type { BedShape } from '../../families/bedShape.ts';
import type { Chamber } from '../../families/layout.ts';
import { GRAVITY } from '../../laws/constants.ts';
import { suddenContractionKCrane1988, suddenExpansionKBorda1766 } from '../../laws/hydraulics/fittings.ts';
import { ORIFICE_DISCHARGE_COEFFICIENT, perforatedPlateK } from '../../laws/hydraulics/orifice.ts';
import { radialInertiaEngelund1953, radialPathThiem1906 } from '../../laws/hydraulics/radialFlow.ts';
import { SLOT_ENTRANCE_K } from '../../laws/hydraulics/slot.ts';
import { bestShutoffTest } from '../../model/benchTests.ts';
import type { Medium } from '../../model/medium.ts';
import type { HoseRun, Model } from '../../model/model.ts';
import type { LinkLaw } from '../../network/links.ts';
import { bedResistance } from './bed.ts';
import type { WaterState } from './water.ts';

/*
 * The published laws in the form that the network takes them in, as linear and quadratic terms of the flow; a
 * test holds each against the law that it stands for.
 */

/** A barb is about this long, m (common practice, no source). */
const BARB_LENGTH = 0.03;

const circleArea = (boreM: number): number => (Math.PI * boreM ** 2) / 4;

/** Loss of `k` velocity heads in a bore as a quadratic law, s²/m⁵. */
const minorLoss = (k: number, boreM: number): number => k / (2 * GRAVITY * circleArea(boreM) ** 2);

const conduit = (shape: { boreM: number; lengthM: number; roughnessM: number; minorK: number }): LinkLaw => ({
  kind: 'conduit',
  areaM2: circleArea(shape.boreM),
  hydraulicDiameterM: shape.boreM,
  lengthM: shape.lengthM,
  relativeRoughness: shape.roughnessM / shape.boreM,
  minorK: shape.minorK,
  linear: 0,
  laminarConstant: 64,
  friction: 'churchill',
});

/** A hose by its friction alone: entrance, exit and fittings are a link of their own. */
export const hoseLaw = ({ boreM, lengthM, roughnessM }: HoseRun): LinkLaw =>
  conduit({ boreM, lengthM, roughnessM, minorK: 0 });

/** Fittings of a run with the entrance or exit that every run has, as linear and quadratic loss. */
export const fittingsLaw = (run: HoseRun, side: 'intake' | 'outlet', water: WaterState): LinkLaw => {
  const ends = side === 'intake' ? ['entrance-sharp'] : ['exit'];
  const listed = run.fittings.some((id) => fittings[id]?.replacesEnd === side)
    ? run.fittings
    : [...run.fittings, ...ends];
  let linear = 0;
  let quadratic = minorLoss(run.extraK, run.boreM);
  for (const id of listed) {
    const fitting = fittings[id]!;
    // Hooper: K = K1/Re + K∞(1 + 1 in/bore); K1/Re turns into a loss that grows with the flow itself.
    const k1 = fitting.k1.value;
    linear += (k1 * water.kinematicViscosityM2PerS) / (2 * GRAVITY * circleArea(run.boreM) * run.boreM);
    const sizeFactor = fitting.scalesWithBore ? 1 + 0.0254 / run.boreM : 1;
    quadratic += minorLoss(fitting.kInfinity.value * sizeFactor, run.boreM);
  }
  return { kind: 'resistance', linear, quadratic };
};

/** Two barbs, each a short narrow bore between two wider ones. */
export const barbsLaw = (run: HoseRun): LinkLaw => {
  const step = { smallBoreM: Math.min(run.barbBoreM, run.boreM), largeBoreM: run.boreM };
  return conduit({
    boreM: run.barbBoreM,
    lengthM: 2 * BARB_LENGTH,
    roughnessM: run.roughnessM,
    minorK: 2 * (suddenContractionKCrane1988(step) + suddenExpansionKBorda1766(step)),
  });
};

/** The pump by its curve; a measured shut-off head takes the place of one that was stated or assumed. */
export const pumpLaw = (model: Model): LinkLaw => {
  const { curve, speedRatio } = model.filter.pump;
  if (curve.kind === 'points') {
    return {
      kind: 'pump-points',
      flowM3PerS: curve.points.map((point) => point.flowM3PerS * speedRatio),
      headM: curve.points.map((point) => point.headM * speedRatio ** 2),
    };
  }
  // By the affinity laws H = r²H₀ − (H₀/Q₀²)Q²: the curve's fall stays, its start goes with the square of the speed.
  const shutoffHeadM = bestShutoffTest(model)?.headM ?? curve.shutoffHeadM * speedRatio ** 2;
  return {
    kind: 'pump',
    shutoffHeadM,
    coefficient: shutoffHeadM / (curve.freeFlowM3PerS * speedRatio) ** 2,
    exponent: 2,
  };
};

/** A plane slot: what a gap past a chamber or a leak is. */
export const slotLaw = (shape: { thicknessM: number; widthM: number; lengthM: number }): LinkLaw => ({
  kind: 'conduit',
  areaM2: shape.thicknessM * shape.widthM,
  hydraulicDiameterM: 2 * shape.thicknessM,
  lengthM: shape.lengthM,
  relativeRoughness: 0,
  minorK: SLOT_ENTRANCE_K,
  linear: 0,
  laminarConstant: 96,
  friction: 'churchill',
});

/** An opening as a sharp-edged orifice with the creeping term 3µQ/r³. */
export const openingLaw = (areaM2: number, water: WaterState): LinkLaw => {
  const radius = Math.sqrt(areaM2 / Math.PI);
  return {
    kind: 'resistance',
    linear: (3 * water.viscosityPaS) / (radius ** 3 * water.densityKgPerM3 * GRAVITY),
    quadratic: 1 / (2 * GRAVITY * (ORIFICE_DISCHARGE_COEFFICIENT * areaM2) ** 2),
  };
};

/** Four times a chamber's area over its perimeter, m. */
const hydraulicWidth = ({ areaM2, widthM }: Chamber): number => (2 * areaM2) / (widthM + areaM2 / widthM);

/** Depth over area and depth over its square, 1/m and 1/m³: about a tube both change along the water's way. */
const pathThrough = ({ volumeM3, faceAreaM2, ring }: BedShape) => {
  if (ring) return { path: radialPathThiem1906(ring), inertia: radialInertiaEngelund1953(ring) };
  const path = volumeM3 / faceAreaM2 ** 2;
  return { path, inertia: path / faceAreaM2 };
};

/** A clean bed by the law of its medium, in a chamber. */
export const bedLaw = (
  bed: { readonly medium: Medium; readonly shape: BedShape },
  chamber: Chamber,
  water: WaterState,
): LinkLaw => {
  const perDepth = bedResistance(bed.medium, { water, vesselM: hydraulicWidth(chamber) });
  const pascalsPerMetre = water.densityKgPerM3 * GRAVITY;
  const { path, inertia } = pathThrough(bed.shape);
  return {
    kind: 'resistance',
    linear: (perDepth.linearPaSPerM2 * path) / pascalsPerMetre,
    quadratic: (perDepth.quadraticPaS2PerM3 * inertia) / pascalsPerMetre,
  };
};

/** The grid under a chamber's media, or the tube in their middle, as a thin plate with holes. */
export const floorLaw = ({ floorOpenFraction, areaM2, ring }: Chamber): LinkLaw => {
  const plateM2 = ring ? 2 * Math.PI * ring.innerRadiusM * ring.lengthM : areaM2;
  return {
    kind: 'resistance',
    linear: 0,
    quadratic: perforatedPlateK({ openFraction: floorOpenFraction }) / (2 * GRAVITY * plateM2 ** 2),
  };
};
