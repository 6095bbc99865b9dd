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
import { type FindingContext, type FindingRule, percent, type Sighting } from './rule.ts';

const portionsOf = ({ model, assessment }: FindingContext): Portion[] =>
  portionsInWaterOrder(assessment.layout.chambers, model.packing);

/** The job with its portions put back in another order; absent where they do not fit so. */
const reordered = (context: FindingContext, order: readonly Portion[]): { readonly cured?: Model } => {
  const packing = arrange(context.assessment.layout.chambers, order);
  return packing ? { cured: { ...context.model, packing } } : {};
};

const nameOf = (context: FindingContext, portion: Portion): string =>
  context.model.media[portion.medium]!.name;

/** Share of all the dirt in the filter that lies in a bed on the day on which packings are compared, as a sentence. */
const dirtIn = ({ assessment }: FindingContext, portion: Portion): string => {
  const all = assessment.beds.reduce((sum, bed) => sum + bed.dirtKg, 0);
  const bed = assessment.beds.find(({ id }) => id === portion.id);
  return bed && all > 0 ? ` Of the dirt in the filter ${percent(bed.dirtKg / all)} lies in it.` : '';
};

/** Water meets a biological bed before a mechanical one. */
export const biologicalBeforeMechanical: FindingRule = {
  id: 'biological-before-mechanical',
  look(context): readonly Sighting[] {
    const portions = portionsOf(context);
    const { media } = context.model;
    const found = stageBefore(portions, media, { early: 'biological', late: 'mechanical' });
    if (!found) return [];
    const says = `Water meets the ${nameOf(context, found.early)} before the ${nameOf(context, found.late)}, so the biological bed takes dirt that a mechanical one should hold.${dirtIn(context, found.early)}`;
    const cure = 'Put the mechanical media first in the way of the water.';
    return [{ place: found.early.id, says, cure, ...reordered(context, mechanicalFirst(portions, media)) }];
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
    const says = `Water meets the fine ${nameOf(context, found.fine)} before the coarser ${nameOf(context, found.coarse)}.${dirtIn(context, found.fine)}`;
    const cure = 'Let the water go through the coarser medium first.';
    return [{ place: found.fine.id, says, cure, ...reordered(context, coarseFirst(portions, media)) }];
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
    const why =
      removes === 'ammonium'
        ? `while fresh it takes ${percent(taken)} of the ammonium that the bacteria live on, and gives the load back to them when it is full`
        : 'dirt closes it before its capacity is used';
    const says = `Water meets the ${nameOf(context, found.early)} before the ${nameOf(context, found.late)}: ${why}.`;
    const cure = 'Put chemical media behind the biological ones.';
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
    const held = stages.filter((stage) => stagesHeld.has(stage)).join(', then ');
    const says = `The water meets ${held} media, coarse before fine.`;
    return [{ place: portions[0]!.id, says, cure: 'Keep the order.', severity: 'strength' }];
  },
};
