import { bedShapes } from '../../families/bedShape.ts';
import type { Chamber, Layout } from '../../families/layout.ts';
import { inWaterOrder } from '../../families/waterOrder.ts';
import { GRAVITY } from '../../laws/constants.ts';
import { weirCoefficient } from '../../laws/hydraulics/weir.ts';
import type { Bed, Model } from '../../model/model.ts';
import type { NetworkSpec } from '../../network/links.ts';
import { chamberGap } from '../../packing/seal.ts';
import { bedLaw, floorLaw, openingLaw, slotLaw } from './linkLaws.ts';
import { add, type Draft, type LinkRole, TANK } from './networkDraft.ts';
import { addInlet, addOutlet } from './runs.ts';
import type { WaterState } from './water.ts';

/** The beds of a chamber in the order in which the water meets them. */
export const bedsInWaterOrder = (chamber: Chamber, model: Model): readonly Bed[] => {
  return inWaterOrder(chamber, model.packing[chamber.id] ?? []);
};

const addChamber = (draft: Draft, chamber: Chamber): void => {
  const { model } = draft;
  const beds = bedsInWaterOrder(chamber, model);
  const shapes = bedShapes(chamber, beds);
  const nodes = [chamber.from, ...beds.map((bed) => `before:${bed.id}`), chamber.to];
  add(
    draft,
    { id: `floor:${chamber.id}`, from: nodes[0]!, to: nodes[1]!, law: floorLaw(chamber) },
    { part: 'openings', place: chamber.id },
  );
  beds.forEach((bed, i) => {
    const link = {
      id: `bed:${bed.id}`,
      from: nodes[i + 1]!,
      to: nodes[i + 2]!,
      law: bedLaw({ medium: model.media[bed.medium]!, shape: shapes[i]! }, chamber, draft.water),
    };
    add(draft, link, { part: 'beds', place: bed.id });
  });
  const thicknessM = chamberGap(model, chamber);
  if (thicknessM > 0) {
    const gap = slotLaw({ ...chamber.gap, thicknessM });
    add(draft, { id: `gap:${chamber.id}`, from: chamber.from, to: chamber.to, law: gap });
  }
};

const addWeirs = (draft: Draft): void => {
  for (const weir of draft.layout.weirs) {
    const crest = `crest:${weir.id}`;
    draft.fixedHeadsM[crest] = weir.crestHeightM;
    const coefficient = weirCoefficient({ crestWidthM: weir.crestWidthM });
    // A crest below the tank's surface is drowned by the tank's own water.
    const tailwaterM = Math.max(0, -weir.crestHeightM);
    add(draft, { id: weir.id, from: weir.from, to: crest, law: { kind: 'weir', coefficient, tailwaterM } });
  }
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
    if (leak.thicknessM > 0) add(draft, { id: leak.id, from: leak.from, to: leak.to, law: slotLaw(leak) });
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
