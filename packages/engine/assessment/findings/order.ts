import { stages } from '../../model/medium.ts';
import type { Model } from '../../model/model.ts';
import { arrange, type Portion, portionsInWaterOrder } from '../../packing/arrange.ts';
import {
  chemicalLast,
  coarseFirst,
  fineBeforeCoarse,
  followsTrade,
  mechanicalFirst,
  stageBefore,
} from '../../packing/order.ts';
import { type Fact, type Said, said } from '../../wording/said.ts';
import { type FindingContext, type FindingRule, type Sighting, saysAndCure } from './rule.ts';

const portionsOf = ({ model, assessment }: FindingContext): Portion[] =>
  portionsInWaterOrder(assessment.layout.chambers, model.packing);

/** The job with its portions put back in another order; absent where they do not fit so. */
const reordered = (context: FindingContext, order: readonly Portion[]): { readonly cured?: Model } => {
  const packing = arrange(context.assessment.layout.chambers, order);
  return packing ? { cured: { ...context.model, packing } } : {};
};

const nameOf = (context: FindingContext, portion: Portion) => ({
  name: context.model.media[portion.medium]!.name,
});

/** A fault with the share of all the dirt in the filter that lies in its bed on the day on which packings are compared. */
const withDirt = (fault: Said, { assessment }: FindingContext, portion: Portion): Said => {
  const all = assessment.beds.reduce((sum, bed) => sum + bed.dirtKg, 0);
  const bed = assessment.beds.find(({ id }) => id === portion.id);
  return bed && all > 0 ? said('fault.dirt-in-it', { fault, share: { share: bed.dirtKg / all } }) : fault;
};

/** Water meets a biological bed before a mechanical one. */
export const biologicalBeforeMechanical: FindingRule = {
  id: 'biological-before-mechanical',
  look(context): readonly Sighting[] {
    const portions = portionsOf(context);
    const { media } = context.model;
    const found = stageBefore(portions, media, { early: 'biological', late: 'mechanical' });
    if (!found) return [];
    const evidence = { early: nameOf(context, found.early), late: nameOf(context, found.late) };
    const { says, cure } = saysAndCure('biological-before-mechanical', evidence);
    const cured = reordered(context, mechanicalFirst(portions, media));
    return [{ place: found.early.id, says: withDirt(says, context, found.early), cure, ...cured }];
  },
};

/** Water meets a fine mechanical bed before a coarser one. */
export const finerBeforeCoarser: FindingRule = {
  id: 'fine-before-coarse',
  look(context): readonly Sighting[] {
    const portions = portionsOf(context);
    const { media } = context.model;
    const found = fineBeforeCoarse(portions, media);
    if (!found) return [];
    const evidence = { fine: nameOf(context, found.fine), coarse: nameOf(context, found.coarse) };
    const { says, cure } = saysAndCure('fine-before-coarse', evidence);
    const cured = reordered(context, coarseFirst(portions, media));
    return [{ place: found.fine.id, says: withDirt(says, context, found.fine), cure, ...cured }];
  },
};

/** Water meets a chemical bed before a biological one. */
export const chemicalBeforeBiological: FindingRule = {
  id: 'chemical-before-biological',
  look(context): readonly Sighting[] {
    const portions = portionsOf(context);
    const { media } = context.model;
    const found = stageBefore(portions, media, { early: 'chemical', late: 'biological' });
    if (!found) return [];
    const removes = media[found.early.medium]!.removes?.substance;
    const taken = context.assessment.chemical.find(({ bed }) => bed === found.early.id)?.takenFraction ?? 0;
    const evidence = { early: nameOf(context, found.early), late: nameOf(context, found.late) };
    const says =
      removes === 'ammonium'
        ? said('fault.ammonium-before-biological', { ...evidence, share: { share: taken } })
        : said('fault.chemical-before-biological', evidence);
    const cure = said('cure.chemical-before-biological');
    return [{ place: found.early.id, says, cure, ...reordered(context, chemicalLast(portions, media)) }];
  },
};

/** The order of the media is the trade's own. */
export const orderFollowsTheWater: FindingRule = {
  id: 'order-follows-the-water',
  look(context): readonly Sighting[] {
    const portions = portionsOf(context);
    const { media } = context.model;
    const stagesHeld = new Set(portions.map((portion) => media[portion.medium]!.stage));
    if (stagesHeld.size < 2) return [];
    if (!followsTrade(portions, media)) return [];
    const order = stages
      .filter((stage) => stagesHeld.has(stage))
      .map((name): Fact => ({ name }))
      .reduceRight((next, first) => said('stages.then', { first, next }));
    const place = portions[0]!.id;
    return [{ place, ...saysAndCure('order-follows-the-water', { order }), severity: 'strength' }];
  },
};
