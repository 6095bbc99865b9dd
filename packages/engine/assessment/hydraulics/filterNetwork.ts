import { bedShapes } from '../../families/bedShape.ts';
import type { Chamber, Layout } from '../../families/layout.ts';
import { inWaterOrder } from '../../families/waterOrder.ts';
import { GRAVITY } from '../../laws/constants.ts';
import { weirCoefficient } from '../../laws/hydraulics/weir.ts';
import type { Bed, HoseRun, Model } from '../../model/model.ts';
import type { Link, NetworkSpec } from '../../network/links.ts';
import { chamberGap } from '../../packing/seal.ts';
import type { HeadShare } from '../assessment.ts';
import {
  barbsLaw,
  bedLaw,
  fittingsLaw,
  floorLaw,
  hoseLaw,
  openingLaw,
  pumpLaw,
  slotLaw,
} from './linkLaws.ts';
import type { WaterState } from './water.ts';

/** What a link is, for the head budget. */
export interface LinkRole {
  readonly link: string;
  readonly part: HeadShare['part'];
  readonly place: string;
}

export const TANK = 'tank';
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
  add(
    draft,
    { id: `${side}:hose`, from: inner[0]!, to: inner[1]!, law: hoseLaw(run) },
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
