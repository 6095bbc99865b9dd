import { stages } from '../../model/medium.ts';
import type { Model } from '../../model/model.ts';
import { arrange, exchangeablePortions, type Portion } from '../../packing/arrange.ts';
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

/** Portions that can change places: a sock that hangs before the trays is no fault of their order. */
const portionsOf = ({ model, assessment }: FindingContext): readonly Portion[][] =>
  exchangeablePortions(assessment.layout.chambers, model.packing);

/** The first group of portions in which a fault of order is found, and the fault. */
const firstFound = <Fault>(
  context: FindingContext,
  look: (portions: readonly Portion[]) => Fault | undefined,
): { readonly portions: readonly Portion[]; readonly found: Fault } | undefined =>
  portionsOf(context)
    .map((portions) => ({ portions, found: look(portions) }))
    .find((one): one is { portions: Portion[]; found: Fault & {} } => one.found !== undefined);

/** The job with some of its portions put back in another order; absent where they do not fit so. */
const reordered = (context: FindingContext, order: readonly Portion[]): { readonly cured?: Model } => {
  const { model, assessment } = context;
  const ordered = new Set(order.map(({ id }) => id));
  const others = portionsOf(context)
    .flat()
    .filter(({ id }) => !ordered.has(id));
  const packing = arrange(assessment.layout.chambers, [...order, ...others], model.media);
  return packing ? { cured: { ...model, packing } } : {};
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
    const { media } = context.model;
    const seen = firstFound(context, (portions) =>
      stageBefore(portions, media, { early: 'biological', late: 'mechanical' }),
    );
    if (!seen) return [];
    const { portions, found } = seen;
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
    const { media } = context.model;
    const seen = firstFound(context, (portions) => fineBeforeCoarse(portions, media));
    if (!seen) return [];
    const { portions, found } = seen;
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
    const { media } = context.model;
    const seen = firstFound(context, (portions) =>
      stageBefore(portions, media, { early: 'chemical', late: 'biological' }),
    );
    if (!seen) return [];
    const { portions, found } = seen;
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
    const portions = portionsOf(context).flat();
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
