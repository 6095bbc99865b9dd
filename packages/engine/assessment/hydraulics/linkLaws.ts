import { fittings } from '../../catalogue/fittings.ts';
import { filmRoughnessRatio } from '../../catalogue/runs.ts';
import type { BedShape } from '../../families/bedShape.ts';
import type { Chamber } from '../../families/layout.ts';
import { GRAVITY } from '../../laws/constants.ts';
import { suddenContractionKCrane1988, suddenExpansionKBorda1766 } from '../../laws/hydraulics/fittings.ts';
import { ORIFICE_DISCHARGE_COEFFICIENT, perforatedPlateK } from '../../laws/hydraulics/orifice.ts';
import { radialInertiaEngelund1953, radialPathThiem1906 } from '../../laws/hydraulics/radialFlow.ts';
import { narrowingKWeisbach1855, tapKWeisbach1855 } from '../../laws/hydraulics/restrictions.ts';
import { SLOT_ENTRANCE_K } from '../../laws/hydraulics/slot.ts';
import type { Medium } from '../../model/medium.ts';
import type { HoseRun } from '../../model/model.ts';
import type { LinkLaw } from '../../network/links.ts';
import { bedResistance } from './bed.ts';
import { carriedBed, carriedBedLaw, stirredMedium } from './movedBed.ts';
import type { WaterState } from './water.ts';

/*
 * The published laws in the form that the network takes them in, as linear and quadratic terms of the flow; a
 * test holds each against the law that it stands for.
 */

/** A barb is about this long, m (common practice, no source). */
export const BARB_LENGTH_M = 0.03;

const circleArea = (boreM: number): number => (Math.PI * boreM ** 2) / 4;

/** Loss of `k` velocity heads in a bore as a quadratic law, s²/m⁵. */
const minorLoss = (k: number, boreM: number): number => k / (2 * GRAVITY * circleArea(boreM) ** 2);

type Conduit = Extract<LinkLaw, { readonly kind: 'conduit' }>;

const conduit = (shape: { boreM: number; lengthM: number; roughnessM: number; minorK: number }): Conduit => ({
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

/** Least bore that a film leaves, as a share of the hose's own: no hose grows shut. */
const LEAST_OPEN_BORE = 0.2;

/** A run as its water meets it: narrower by twice its film, and as rough as the film is. */
const filmed = (run: HoseRun): HoseRun => {
  const filmM = run.filmM ?? 0;
  if (filmM === 0) return run;
  const left = (boreM: number): number => Math.max(boreM - 2 * filmM, LEAST_OPEN_BORE * boreM);
  return {
    ...run,
    boreM: left(run.boreM),
    barbBoreM: left(run.barbBoreM),
    roughnessM: Math.max(run.roughnessM, filmRoughnessRatio.value * filmM),
  };
};

/** Bore that the water has in a hose, m: what its film leaves. */
export const openBore = (run: HoseRun): number => filmed(run).boreM;

/** Length of a run that lies in a coil, m. */
const coiledLength = ({ lengthM, coil }: HoseRun): number =>
  coil ? Math.min(lengthM, Math.PI * coil.diameterM * coil.turns) : 0;

/** A hose by its friction alone: coil, entrance, exit and fittings are links of their own. */
export const hoseLaw = (run: HoseRun): LinkLaw => {
  const { boreM, roughnessM, lengthM } = filmed(run);
  return conduit({ boreM, lengthM: lengthM - coiledLength(run), roughnessM, minorK: 0 });
};

/** The part of a hose that lies in a coil; absent where none does. */
export const coilLaw = (run: HoseRun): LinkLaw | undefined => {
  const lengthM = coiledLength(run);
  if (!run.coil || lengthM === 0) return undefined;
  const { boreM, roughnessM } = filmed(run);
  return {
    ...conduit({ boreM, lengthM, roughnessM, minorK: 0 }),
    curvature: boreM / run.coil.diameterM,
  };
};

/** A check valve of a run by its cracking head; its loss once open stands among the fittings. */
export const checkValveLaw = (crackingHeadM: number): LinkLaw => ({
  kind: 'one-way',
  linear: 0,
  quadratic: 0,
  crackingHeadM,
});

/** Velocity heads that kinks and a tap that is partly shut take, beside what is stated as such. */
const narrowedK = ({ extraK, kinkOpenFraction = 1, tapOpenFraction = 1 }: HoseRun): number =>
  extraK +
  narrowingKWeisbach1855({ openFraction: kinkOpenFraction }) +
  tapKWeisbach1855({ openFraction: tapOpenFraction });

/** How a run ends: in the tank's water on one side, or in another hose. */
export type RunEnd = 'intake' | 'outlet' | 'joined';

/** Fittings of a run with the entrance or exit that every run has, as linear and quadratic loss. */
export const fittingsLaw = (given: HoseRun, end: RunEnd, water: WaterState): LinkLaw => {
  const run = filmed(given);
  const ends = { intake: ['entrance-sharp'], outlet: ['exit'], joined: [] }[end];
  const listed = run.fittings.some((id) => fittings[id]?.replacesEnd === end)
    ? run.fittings
    : [...run.fittings, ...ends];
  let linear = 0;
  let quadratic = minorLoss(narrowedK(run), run.boreM);
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
export const barbsLaw = (given: HoseRun): LinkLaw => {
  const run = filmed(given);
  const step = { smallBoreM: Math.min(run.barbBoreM, run.boreM), largeBoreM: run.boreM };
  return conduit({
    boreM: run.barbBoreM,
    lengthM: 2 * BARB_LENGTH_M,
    roughnessM: run.roughnessM,
    minorK: 2 * (suddenContractionKCrane1988(step) + suddenExpansionKBorda1766(step)),
  });
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

/** A bed to be laid into a chamber. */
interface BedToLay {
  readonly medium: Medium;
  readonly shape: BedShape;
}

const packedLaw = (
  bed: BedToLay,
  chamber: Chamber,
  water: WaterState,
): Extract<LinkLaw, { kind: 'resistance' }> => {
  const perDepth = bedResistance(bed.medium, { water, vesselM: hydraulicWidth(chamber) });
  const pascalsPerMetre = water.densityKgPerM3 * GRAVITY;
  const { path, inertia } = pathThrough(bed.shape);
  return {
    kind: 'resistance',
    linear: (perDepth.linearPaSPerM2 * path) / pascalsPerMetre,
    quadratic: (perDepth.quadraticPaS2PerM3 * inertia) / pascalsPerMetre,
  };
};

/**
 * A clean bed by the law of its medium, in a chamber; where its chamber moves it about, as water carries it or as it
 * tumbles in all of the chamber, of which it fills a share at rest.
 */
export const bedLaw = (
  bed: BedToLay & { readonly depthM?: number; readonly filled?: number },
  chamber: Chamber,
  water: WaterState,
): LinkLaw => {
  if (chamber.moved === 'stirred') {
    return packedLaw({ ...bed, medium: stirredMedium(bed.medium, bed.filled ?? 1) }, chamber, water);
  }
  const packed = packedLaw(bed, chamber, water);
  if (chamber.moved === undefined) return packed;
  const carried = carriedBed({ medium: bed.medium, depthM: bed.depthM ?? 0 }, water);
  return carried ? carriedBedLaw(packed, carried.buoyantHeadM) : packed;
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
