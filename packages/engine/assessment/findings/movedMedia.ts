import type { Chamber } from '../../families/layout.ts';
import type { Bed, Model } from '../../model/model.ts';
import { quantity } from '../../wording/facts.ts';
import { pieceOf } from '../hydraulics/bed.ts';
import { type CarriedBed, carriedBed, fillFraction } from '../hydraulics/movedBed.ts';
import { waterState } from '../hydraulics/water.ts';
import { type FindingContext, type FindingRule, type Sighting, saysAndCure } from './rule.ts';

const nameOf = (model: Model, bed: Bed) => ({ name: model.media[bed.medium]!.name });

const movedChambers = ({ assessment }: FindingContext, how: Chamber['moved']): readonly Chamber[] =>
  assessment.layout.chambers.filter((chamber) => chamber.moved === how);

interface Rising {
  readonly chamber: Chamber;
  readonly bed: Bed;
  readonly carried: CarriedBed | undefined;
  readonly speedMPerS: number;
}

/** Every bed that water is to carry, with the clean speed of the water that is to do it. */
const risingBeds = (context: FindingContext): readonly Rising[] => {
  const { model, assessment } = context;
  const water = waterState(model.tank);
  return movedChambers(context, 'carried-by-water').flatMap((chamber) =>
    (model.packing[chamber.id] ?? []).map((bed) => ({
      chamber,
      bed,
      carried: carriedBed({ medium: model.media[bed.medium]!, depthM: bed.depthM }, water),
      speedMPerS: assessment.dutyPoint.flowM3PerS / chamber.areaM2,
    })),
  );
};

/** The water rises too slowly to carry a bed that should be fluidised. */
export const bedNotCarried: FindingRule = {
  id: 'bed-not-carried',
  look(context): readonly Sighting[] {
    return risingBeds(context).flatMap(({ bed, carried, speedMPerS }): Sighting[] => {
      const medium = nameOf(context.model, bed);
      if (!carried) return [{ place: bed.id, ...saysAndCure('bed-floats', { medium }), severity: 'marked' }];
      if (speedMPerS >= carried.fluidisingMPerS) return [];
      const evidence = {
        medium,
        speed: quantity(speedMPerS, 'velocity'),
        least: quantity(carried.fluidisingMPerS, 'velocity'),
      };
      return [{ place: bed.id, ...saysAndCure('bed-not-carried', evidence), severity: 'marked' }];
    });
  },
};

/** A carried bed is to stay below this share of its column (common practice, no source). */
const MOST_OF_COLUMN = 0.85;

/** The water carries a bed up to its screen. */
export const bedWashedUp: FindingRule = {
  id: 'bed-washed-up',
  look(context): readonly Sighting[] {
    return risingBeds(context).flatMap(({ chamber, bed, carried, speedMPerS }): Sighting[] => {
      const high = carried?.depthAt(speedMPerS) ?? 0;
      const most = MOST_OF_COLUMN * chamber.depthM;
      if (high <= most) return [];
      const medium = nameOf(context.model, bed);
      const evidence = {
        medium,
        rest: quantity(bed.depthM, 'length'),
        column: quantity(chamber.depthM, 'length'),
      };
      if (!Number.isFinite(high)) {
        return [{ place: bed.id, ...saysAndCure('bed-washed-out', evidence), severity: 'marked' }];
      }
      const share = most / high;
      const facts = { ...evidence, high: quantity(high, 'length') };
      const cure = { depth: quantity(share * bed.depthM, 'length') };
      return [{ place: bed.id, ...saysAndCure('bed-washed-up', facts, cure), severity: 'marked' }];
    });
  },
};

/** Share of a chamber that tumbling carriers may fill, and a good one (common practice, no source). */
const MOST_FILL = 0.7;
const GOOD_FILL = 0.6;

/** Carriers fill so much of their chamber that they cannot tumble. */
export const carriersOverfull: FindingRule = {
  id: 'carriers-overfull',
  look(context): readonly Sighting[] {
    const { model } = context;
    return movedChambers(context, 'stirred').flatMap((chamber): Sighting[] => {
      const beds = model.packing[chamber.id] ?? [];
      const fill = fillFraction(chamber, beds);
      if (fill <= MOST_FILL) return [];
      const evidence = { fill: { share: fill }, most: { share: MOST_FILL } };
      // No effect is computed: what carriers that stand still lose is not in the models, which let all of them tumble.
      const told = saysAndCure('carriers-overfull', evidence, { good: { share: GOOD_FILL } });
      return [{ place: chamber.id, ...told, severity: 'marked' }];
    });
  },
};

/** A screen is wider than the pieces that it should hold. */
export const screenTooWide: FindingRule = {
  id: 'screen-too-wide',
  look(context): readonly Sighting[] {
    const { model, assessment } = context;
    return assessment.layout.chambers.flatMap(({ id, screenSlotM }) =>
      (model.packing[id] ?? []).flatMap((bed): Sighting[] => {
        const piece = pieceOf(model.media[bed.medium]!);
        if (screenSlotM === undefined || screenSlotM < piece) return [];
        const evidence = {
          medium: nameOf(model, bed),
          piece: quantity(piece, 'length'),
          slot: quantity(screenSlotM, 'length'),
        };
        return [{ place: bed.id, ...saysAndCure('screen-too-wide', evidence), severity: 'marked' }];
      }),
    );
  },
};
