import type { Laying, Model } from '../../model/model.ts';
import { sealedGap } from '../../packing/seal.ts';
import { quantity } from '../../wording/facts.ts';
import { placeSaid } from '../placeName.ts';
import { type FindingContext, type FindingRule, type Sighting, saysAndCure } from './rule.ts';

/** Share of the water past a bed from which it is worth a finding (our own choice). */
const WORTH_TELLING = 0.05;

/** Foam is cut this much larger than its room, m in all (common practice, no source: 2 to 3 mm). */
const CUT_LARGER_M = 0.0025;

/** Fibre pressed into less than this part of its loose room is tight (our own choice). */
const TIGHT = 1.5;

const shareOf = ({ assessment }: FindingContext, way: string): number => {
  const { wayFlowM3PerS, dutyPoint } = assessment;
  return dutyPoint.flowM3PerS > 0 ? (wayFlowM3PerS[way] ?? 0) / dutyPoint.flowM3PerS : 0;
};

/** The beds that do not lie loose from wall to wall, with their chambers. */
const laidBeds = ({ model, assessment }: FindingContext) =>
  assessment.layout.chambers.flatMap((chamber) =>
    (model.packing[chamber.id] ?? []).flatMap((bed) =>
      bed.laying === undefined ? [] : [{ bed, laying: bed.laying, chamber }],
    ),
  );

const withLaying = (model: Model, id: string, laying: Laying): Model => ({
  ...model,
  packing: Object.fromEntries(
    Object.entries(model.packing).map(([chamber, beds]) => [
      chamber,
      beds.map((bed) => (bed.id === id ? { ...bed, laying } : bed)),
    ]),
  ),
});

/** Foam was cut smaller than its room, and water runs round it. */
export const cutTooSmall: FindingRule = {
  id: 'cut-too-small',
  look(context): readonly Sighting[] {
    return laidBeds(context).flatMap(({ bed, laying, chamber }) => {
      const share = shareOf(context, `cut:${bed.id}`);
      if (laying.cutGapM === undefined || share < WORTH_TELLING) return [];
      const { cutGapM, ...rest } = laying;
      const isSoft = ['foam', 'fibre'].includes(context.model.media[bed.medium]!.resistance.law);
      const width = chamber.widthM;
      const depth = chamber.areaM2 / width;
      const pressedRatio = ((width + CUT_LARGER_M) * (depth + CUT_LARGER_M)) / (width * depth);
      const evidence = {
        share: { share },
        gap: quantity(cutGapM, 'length'),
        bed: placeSaid(context.model, context.assessment, bed.id),
      };
      const cured = withLaying(context.model, bed.id, isSoft ? { ...rest, pressedRatio } : rest);
      return [{ place: bed.id, ...saysAndCure('cut-too-small', evidence), cured }];
    });
  },
};

/** Floss is pressed together. */
export const packedTight: FindingRule = {
  id: 'packed-tight',
  look(context): readonly Sighting[] {
    return laidBeds(context).flatMap(({ bed, laying }) => {
      const ratio = laying.pressedRatio ?? 1;
      if (context.model.media[bed.medium]!.resistance.law !== 'fibre' || ratio < TIGHT) return [];
      const { pressedRatio: _, ...rest } = laying;
      const evidence = {
        bed: placeSaid(context.model, context.assessment, bed.id),
        times: Number(ratio.toPrecision(2)),
      };
      return [
        {
          place: bed.id,
          ...saysAndCure('packed-tight', evidence),
          cured: withLaying(context.model, bed.id, rest),
        },
      ];
    });
  },
};

/** Water runs past a bag in the corners of its chamber. */
export const pastBag: FindingRule = {
  id: 'past-bag',
  look(context): readonly Sighting[] {
    return laidBeds(context).flatMap(({ bed, laying }) => {
      const share = shareOf(context, `corners:${bed.id}`);
      if (laying.bag === undefined || share < WORTH_TELLING) return [];
      const evidence = { share: { share }, bed: placeSaid(context.model, context.assessment, bed.id) };
      const bag = { ...laying.bag, cornerRadiusM: 0 };
      const cured = withLaying(context.model, bed.id, { ...laying, bag });
      return [{ place: bed.id, ...saysAndCure('past-bag', evidence), cured }];
    });
  },
};

/** Water runs past media at a lip, an end cap or the edge of a partition. */
export const slotPastMedia: FindingRule = {
  id: 'slot-past-media',
  look(context): readonly Sighting[] {
    const { model, assessment } = context;
    const slots = model.filter.otherSlots ?? [];
    return slots.flatMap((slot) => {
      const share = shareOf(context, `slot:${slot.id}`);
      const filled = assessment.beds.some((bed) => bed.chamber === slot.chamber);
      if (!filled || share < WORTH_TELLING) return [];
      const otherSlots = slots.map((one) =>
        one.id === slot.id ? { ...one, thicknessM: sealedGap(one.thicknessM) } : one,
      );
      const evidence = {
        share: { share },
        gap: quantity(slot.thicknessM, 'length'),
        way: placeSaid(model, assessment, `slot:${slot.id}`),
      };
      const cured = { ...model, filter: { ...model.filter, otherSlots } };
      return [{ place: slot.chamber, ...saysAndCure('slot-past-media', evidence), cured }];
    });
  },
};
