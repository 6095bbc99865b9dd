import { type BedShape, bedShapes } from '../../families/bedShape.ts';
import type { Chamber, GravityFed, Layout } from '../../families/layout.ts';
import { inWaterOrder } from '../../families/waterOrder.ts';
import { GRAVITY } from '../../laws/constants.ts';
import { weirCoefficient } from '../../laws/hydraulics/weir.ts';
import type { Bed, Model } from '../../model/model.ts';
import type { LinkLaw, NetworkSpec } from '../../network/links.ts';
import { mediumInBed } from '../../packing/mediumInBed.ts';
import { chamberGap } from '../../packing/seal.ts';
import type { HeadShare } from '../assessment.ts';
import type { Constants } from '../constants.ts';
import { besideBed, laidShape, meshLaw, slotsPast } from './laying.ts';
import { bedLaw, floorLaw, openingLaw, slotLaw } from './linkLaws.ts';
import { fillFraction } from './movedBed.ts';
import { add, type Draft, type LinkRole, scaledLoss, TANK } from './networkDraft.ts';
import { addInlet, addOutlet } from './runs.ts';
import { wallShare } from './trickling.ts';
import type { WaterState } from './water.ts';

/** The beds of a chamber in the order in which the water meets them. */
export const bedsInWaterOrder = (chamber: Chamber, model: Model): readonly Bed[] => {
  return inWaterOrder(chamber, model.packing[chamber.id] ?? []);
};

/** What counts towards the pump's head: nothing on the way down to a box under the tank. */
const roleOf = ({ layout }: Draft, part: HeadShare['part'], place: string) =>
  layout.gravityFed ? undefined : { part, place };

/** Shapes of a chamber's beds as they lie, in water order. */
export const shapesOfBeds = (chamber: Chamber, beds: readonly Bed[]): readonly BedShape[] =>
  bedShapes(chamber, beds).map((shape, place) => laidShape(chamber, beds[place]!, shape));

/** A bed in its place, behind the mesh of its bag where it has one. */
const addBed = (
  draft: Draft,
  chamber: Chamber,
  laid: {
    readonly bed: Bed;
    readonly shape: BedShape;
    readonly filled: number;
    readonly from: string;
    readonly to: string;
  },
): void => {
  const { bed, shape, filled, to } = laid;
  const mesh = meshLaw(shape, bed);
  const from = mesh === undefined ? laid.from : `inside:${bed.id}`;
  if (mesh !== undefined)
    add(
      draft,
      { id: `mesh:${bed.id}`, from: laid.from, to: from, law: mesh },
      roleOf(draft, 'openings', bed.id),
    );
  const medium = mediumInBed(bed, draft.model.media);
  const law = scaledLoss(
    bedLaw({ medium, shape, depthM: bed.depthM, filled }, chamber, draft.water),
    draft.constants.bedLawRatio,
  );
  add(draft, { id: `bed:${bed.id}`, from, to, law }, roleOf(draft, 'beds', bed.id));
};

/** Water that trickles asks for no head: it parts between media and walls in a fixed share. */
const TRICKLING: LinkLaw = { kind: 'resistance', linear: 1, quadratic: 0 };

const addTrickling = (draft: Draft, chamber: Chamber): void => {
  const { model } = draft;
  const beds = bedsInWaterOrder(chamber, model);
  const nodes = [chamber.from, ...beds.map((bed) => `before:${bed.id}`), chamber.to];
  const ids = [`floor:${chamber.id}`, ...beds.map((bed) => `bed:${bed.id}`)];
  ids.forEach((id, place) => {
    add(draft, { id, from: nodes[place]!, to: nodes[place + 1]!, law: TRICKLING });
  });
  const walls = wallShare(
    chamber,
    beds.map((bed) => mediumInBed(bed, model.media)),
  );
  if (walls <= 0 || walls >= 1) return;
  const linear = (ids.length * (1 - walls)) / walls;
  const law: LinkLaw = { kind: 'resistance', linear, quadratic: 0 };
  add(draft, { id: `gap:${chamber.id}`, from: chamber.from, to: chamber.to, law });
};

const addChamber = (draft: Draft, chamber: Chamber): void => {
  if (chamber.trickles) {
    addTrickling(draft, chamber);
    return;
  }
  const { model } = draft;
  const beds = bedsInWaterOrder(chamber, model);
  const shapes = shapesOfBeds(chamber, beds);
  const filled = fillFraction(chamber, beds);
  const nodes = [chamber.from, ...beds.map((bed) => `before:${bed.id}`), chamber.to];
  add(
    draft,
    { id: `floor:${chamber.id}`, from: nodes[0]!, to: nodes[1]!, law: floorLaw(chamber) },
    roleOf(draft, 'openings', chamber.id),
  );
  beds.forEach((bed, i) => {
    const ends = { from: nodes[i + 1]!, to: nodes[i + 2]! };
    addBed(draft, chamber, { bed, shape: shapes[i]!, filled, ...ends });
    for (const beside of besideBed(chamber, bed)) add(draft, { ...beside, ...ends });
  });
  const thicknessM = chamberGap(model, chamber);
  if (thicknessM > 0) {
    const gap = slotLaw({ ...chamber.gap, thicknessM });
    add(draft, { id: `gap:${chamber.id}`, from: chamber.from, to: chamber.to, law: gap });
  }
  for (const slot of slotsPast(chamber, model.filter.otherSlots))
    add(draft, { id: `slot:${slot.id}`, from: chamber.from, to: chamber.to, law: slotLaw(slot) });
};

const addWeirs = (draft: Draft): void => {
  const normalFirst = draft.layout.weirs.toSorted(
    (one, other) => Number(one.purpose === 'overflow') - Number(other.purpose === 'overflow'),
  );
  for (const weir of normalFirst) {
    const crest = `crest:${weir.id}`;
    draft.fixedHeadsM[crest] = weir.crestHeightM;
    const coefficient = weirCoefficient({ crestWidthM: weir.crestWidthM });
    // A crest below the tank's surface is drowned by the tank's own water; within a box the fall is free.
    const tailwaterM = weir.to === undefined ? Math.max(0, -weir.crestHeightM) : 0;
    if (weir.to !== undefined) draft.falls.push({ links: [weir.id], into: weir.to });
    add(draft, { id: weir.id, from: weir.from, to: crest, law: { kind: 'weir', coefficient, tailwaterM } });
  }
};

/** The pump draws from a level that stands where it was measured; all that it lifts comes down by the overflow. */
const addGravityFeed = (draft: Draft, { floorHeightM, returnLevelM }: GravityFed): void => {
  const { layout } = draft;
  draft.fixedHeadsM[layout.outletSpace] = floorHeightM + returnLevelM;
  const pumps = draft.links.map(({ id }) => id).filter((id) => id === 'pump' || id === 'pump:beside');
  draft.falls.push({ links: pumps, into: layout.inletSpace });
};

/** The flow network of a filter with its packing: tank, hoses, chambers, ways past them, pump, outlet. */
export const filterNetwork = (
  model: Model,
  layout: Layout,
  { water, constants }: { readonly water: WaterState; readonly constants: Constants },
): { readonly spec: NetworkSpec; readonly roles: readonly LinkRole[] } => {
  const draft: Draft = {
    model,
    layout,
    water,
    constants,
    links: [],
    roles: [],
    falls: [],
    fixedHeadsM: { [TANK]: 0 },
  };
  if (!layout.gravityFed) addInlet(draft);
  for (const chamber of layout.chambers) addChamber(draft, chamber);
  for (const opening of layout.openings) {
    const role = roleOf(draft, 'openings', opening.id);
    const { id, from, fallsAtM } = opening;
    const to = fallsAtM === undefined ? opening.to : `foot:${id}`;
    if (fallsAtM !== undefined) {
      draft.fixedHeadsM[to] = fallsAtM;
      draft.falls.push({ links: [id], into: opening.to });
    }
    add(draft, { id, from, to, law: openingLaw(opening.areaM2, water) }, opening.bypass ? undefined : role);
  }
  for (const leak of layout.leaks) {
    if (leak.thicknessM > 0) add(draft, { id: leak.id, from: leak.from, to: leak.to, law: slotLaw(leak) });
  }
  addWeirs(draft);
  if (layout.weirs.every(({ to }) => to !== undefined)) addOutlet(draft);
  if (layout.gravityFed) addGravityFeed(draft, layout.gravityFed);
  return {
    spec: {
      fixedHeadsM: draft.fixedHeadsM,
      links: draft.links,
      falls: draft.falls,
      kinematicViscosityM2PerS: water.kinematicViscosityM2PerS,
      gravityMPerS2: GRAVITY,
      usualFlowM3PerS: 0.5 * model.filter.pump.ratedFlowM3PerS,
    },
    roles: draft.roles,
  };
};
