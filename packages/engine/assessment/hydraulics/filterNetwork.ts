import { fittings } from '../../catalogue/fittings.ts';
import type { Chamber, Layout } from '../../families/layout.ts';
import { inWaterOrder } from '../../families/waterOrder.ts';
import { GRAVITY } from '../../laws/constants.ts';
import { ORIFICE_DISCHARGE_COEFFICIENT, perforatedPlateK } from '../../laws/hydraulics/orifice.ts';
import { SLOT_ENTRANCE_K } from '../../laws/hydraulics/slot.ts';
import { weirCoefficient } from '../../laws/hydraulics/weir.ts';
import { bestShutoffTest } from '../../model/benchTests.ts';
import type { Bed, HoseRun, Model } from '../../model/model.ts';
import type { Link, LinkLaw, NetworkSpec } from '../../network/links.ts';
import type { HeadShare } from '../assessment.ts';
import { bedResistance } from './bed.ts';
import type { WaterState } from './water.ts';

/** What a link is, for the head budget. */
export interface LinkRole {
  readonly link: string;
  readonly part: HeadShare['part'];
  readonly place: string;
}

export const TANK = 'tank';
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

/** Fittings of a run with the entrance or exit that every run has, as linear and quadratic loss. */
const fittingsLaw = (run: HoseRun, side: 'intake' | 'outlet', water: WaterState): LinkLaw => {
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
const barbsLaw = (run: HoseRun): LinkLaw => {
  const areaRatio = Math.min(1, (run.barbBoreM / run.boreM) ** 2);
  const contractionAndExpansion = 0.5 * (1 - areaRatio) + (1 - areaRatio) ** 2;
  return conduit({
    boreM: run.barbBoreM,
    lengthM: 2 * BARB_LENGTH,
    roughnessM: run.roughnessM,
    minorK: 2 * contractionAndExpansion,
  });
};

/** The pump by its curve; a measured shut-off head takes the place of one that was stated or assumed. */
const pumpLaw = (model: Model): LinkLaw => {
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

/** A network in the making, with what it is made from. */
interface Draft {
  readonly model: Model;
  readonly layout: Layout;
  readonly water: WaterState;
  readonly links: Link[];
  readonly roles: LinkRole[];
  readonly fixedHeadsM: Record<string, number>;
}

const add = (draft: Draft, link: Link, role?: { part: HeadShare['part']; place: string }): void => {
  draft.links.push(link);
  if (role) draft.roles.push({ link: link.id, ...role });
};

const addRun = (
  draft: Draft,
  side: 'intake' | 'outlet',
  ends: { run: HoseRun; from: string; to: string },
): void => {
  const { run } = ends;
  const inner = [ends.from, `${side}:1`, `${side}:2`, ends.to];
  const hose = conduit({ boreM: run.boreM, lengthM: run.lengthM, roughnessM: run.roughnessM, minorK: 0 });
  add(
    draft,
    { id: `${side}:hose`, from: inner[0]!, to: inner[1]!, law: hose },
    { part: `${side}-hose`, place: side },
  );
  const fitted = fittingsLaw(run, side, draft.water);
  add(
    draft,
    { id: `${side}:fittings`, from: inner[1]!, to: inner[2]!, law: fitted },
    { part: 'fittings', place: side },
  );
  add(
    draft,
    { id: `${side}:barbs`, from: inner[2]!, to: inner[3]!, law: barbsLaw(run) },
    { part: 'barbs', place: side },
  );
};

const slot = (shape: { thicknessM: number; widthM: number; lengthM: number }): LinkLaw => ({
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
const openingLaw = (areaM2: number, water: WaterState): LinkLaw => {
  const radius = Math.sqrt(areaM2 / Math.PI);
  return {
    kind: 'resistance',
    linear: (3 * water.viscosityPaS) / (radius ** 3 * water.densityKgPerM3 * GRAVITY),
    quadratic: 1 / (2 * GRAVITY * (ORIFICE_DISCHARGE_COEFFICIENT * areaM2) ** 2),
  };
};

/** Four times a chamber's area over its perimeter, m. */
const hydraulicWidth = ({ areaM2, widthM }: Chamber): number => (2 * areaM2) / (widthM + areaM2 / widthM);

const bedLaw = ({ model, water }: Draft, bed: Bed, chamber: Chamber): LinkLaw => {
  const perDepth = bedResistance(model.media[bed.medium]!, { water, vesselM: hydraulicWidth(chamber) });
  const perHead = bed.depthM / (water.densityKgPerM3 * GRAVITY);
  return {
    kind: 'resistance',
    linear: (perDepth.linearPaSPerM2 * perHead) / chamber.areaM2,
    quadratic: (perDepth.quadraticPaS2PerM3 * perHead) / chamber.areaM2 ** 2,
  };
};

/** The beds of a chamber in the order in which the water meets them. */
export const bedsInWaterOrder = (chamber: Chamber, model: Model): readonly Bed[] => {
  return inWaterOrder(chamber, model.packing[chamber.id] ?? []);
};

const addChamber = (draft: Draft, chamber: Chamber): void => {
  const { model } = draft;
  const beds = bedsInWaterOrder(chamber, model);
  const plate = perforatedPlateK({ openFraction: chamber.floorOpenFraction });
  const nodes = [chamber.from, ...beds.map((bed) => `before:${bed.id}`), chamber.to];
  const floor: LinkLaw = {
    kind: 'resistance',
    linear: 0,
    quadratic: plate / (2 * GRAVITY * chamber.areaM2 ** 2),
  };
  add(
    draft,
    { id: `floor:${chamber.id}`, from: nodes[0]!, to: nodes[1]!, law: floor },
    { part: 'openings', place: chamber.id },
  );
  beds.forEach((bed, i) => {
    const link = {
      id: `bed:${bed.id}`,
      from: nodes[i + 1]!,
      to: nodes[i + 2]!,
      law: bedLaw(draft, bed, chamber),
    };
    add(draft, link, { part: 'beds', place: bed.id });
  });
  const thicknessM = model.filter.chamberGapM[chamber.id] ?? chamber.gap.thicknessM;
  if (thicknessM > 0) {
    const gap = slot({ ...chamber.gap, thicknessM });
    add(draft, { id: `gap:${chamber.id}`, from: chamber.from, to: chamber.to, law: gap });
  }
};

const addOutlet = (draft: Draft): void => {
  const { layout } = draft;
  const { filter } = draft.model;
  let at = layout.outletSpace;
  if (layout.pumpPlace === 'last') {
    add(draft, { id: 'pump', from: at, to: 'pump:out', law: pumpLaw(draft.model) });
    at = 'pump:out';
  }
  const lifted = filter.outletLiftM > 0;
  const mouth = lifted ? 'outlet:mouth' : TANK;
  if (filter.outlet) addRun(draft, 'outlet', { run: filter.outlet, from: at, to: mouth });
  else if (layout.pumpPlace === 'last')
    add(draft, {
      id: 'outlet:nozzle',
      from: at,
      to: mouth,
      law: { kind: 'resistance', linear: 0, quadratic: 0 },
    });
  if (lifted) {
    draft.fixedHeadsM['outlet:lift'] = filter.outletLiftM;
    add(draft, {
      id: 'outlet:fall',
      from: mouth,
      to: 'outlet:lift',
      law: { kind: 'one-way', linear: 1e-6, quadratic: 0 },
    });
  }
};

const addWeirs = (draft: Draft): void => {
  for (const weir of draft.layout.weirs) {
    const crest = `crest:${weir.id}`;
    draft.fixedHeadsM[crest] = weir.crestHeightM;
    const coefficient = weirCoefficient({ crestWidthM: weir.crestWidthM });
    add(draft, { id: weir.id, from: weir.from, to: crest, law: { kind: 'weir', coefficient } });
  }
};

const addInlet = (draft: Draft): void => {
  const { model, layout } = draft;
  const { intake } = model.filter;
  const pumpFirst = layout.pumpPlace === 'first';
  const end = pumpFirst ? 'pump:in' : layout.inletSpace;
  if (intake) addRun(draft, 'intake', { run: intake, from: TANK, to: end });
  else
    add(draft, {
      id: 'intake:mouth',
      from: TANK,
      to: end,
      law: { kind: 'resistance', linear: 0, quadratic: 0 },
    });
  if (pumpFirst) add(draft, { id: 'pump', from: 'pump:in', to: layout.inletSpace, law: pumpLaw(model) });
};

/** The flow network of a filter with its packing: tank, hoses, chambers, ways past them, pump, outlet. */
export const filterNetwork = (
  model: Model,
  layout: Layout,
  water: WaterState,
): { readonly spec: NetworkSpec; readonly roles: readonly LinkRole[] } => {
  const draft: Draft = { model, layout, water, links: [], roles: [], fixedHeadsM: { [TANK]: 0 } };
  addInlet(draft);
  for (const chamber of layout.chambers) addChamber(draft, chamber);
  for (const opening of layout.openings) {
    const role = { part: 'openings', place: opening.id } as const;
    const link = {
      id: opening.id,
      from: opening.from,
      to: opening.to,
      law: openingLaw(opening.areaM2, water),
    };
    add(draft, link, opening.bypass ? undefined : role);
  }
  for (const leak of layout.leaks) {
    if (leak.thicknessM > 0) add(draft, { id: leak.id, from: leak.from, to: leak.to, law: slot(leak) });
  }
  if (layout.weirs.length > 0) addWeirs(draft);
  else addOutlet(draft);
  return {
    spec: {
      fixedHeadsM: draft.fixedHeadsM,
      links: draft.links,
      kinematicViscosityM2PerS: water.kinematicViscosityM2PerS,
      gravityMPerS2: GRAVITY,
      usualFlowM3PerS: 0.5 * model.filter.pump.ratedFlowM3PerS,
    },
    roles: draft.roles,
  };
};
