import { withMeasurement } from '../../model/changes.ts';
import { chamberGap, sealedGap, withSealedChambers } from '../../packing/seal.ts';
import { type FindingContext, type FindingRule, percent, type Sighting } from './rule.ts';

/** Share of the water past a bed from which it is worth a finding (our own choice). */
const WORTH_TELLING = 0.05;
const shareOf = (context: FindingContext, way: string): number => {
  const { wayFlowM3PerS, dutyPoint } = context.assessment;
  return dutyPoint.flowM3PerS > 0 ? (wayFlowM3PerS[way] ?? 0) / dutyPoint.flowM3PerS : 0;
};

/** Water runs through the gap beside a chamber's media. */
export const bypassPastBed: FindingRule = {
  id: 'bypass-past-bed',
  look(context): readonly Sighting[] {
    const { model, assessment } = context;
    return assessment.layout.chambers.flatMap((chamber) => {
      const share = shareOf(context, `gap:${chamber.id}`);
      const filled = assessment.beds.some((bed) => bed.chamber === chamber.id);
      if (!filled || share < WORTH_TELLING) return [];
      const gap = context.print(chamberGap(model, chamber), 'length');
      const says = `${percent(share)} of the water runs through the ${gap} gap beside ${chamber.label} and misses its media.`;
      const cure = 'Close the gap with a thin removable strip of silicone sheet or closed-cell foam.';
      return [{ place: chamber.id, says, cure, cured: withSealedChambers(model, [chamber]) }];
    });
  },
};

/** Water runs over or past the partition between the halves. */
export const partitionLeaks: FindingRule = {
  id: 'partition-leaks',
  look(context): readonly Sighting[] {
    return context.assessment.layout.leaks.flatMap((leak) => {
      const share = shareOf(context, leak.id);
      if (share < WORTH_TELLING) return [];
      const says = `${percent(share)} of the water takes the ${leak.label} and meets no media at all.`;
      const cure = 'Seal the edge of the partition with a removable strip.';
      return [
        {
          place: leak.id,
          says,
          cure,
          cured: withMeasurement(context.model, leak.measurement, sealedGap(leak.thicknessM)),
        },
      ];
    });
  },
};

/** Openings let water past the media. */
export const openingPastMedia: FindingRule = {
  id: 'opening-past-media',
  look(context): readonly Sighting[] {
    return context.assessment.layout.openings.flatMap((opening) => {
      const share = shareOf(context, opening.id);
      if (!opening.bypass || share < WORTH_TELLING) return [];
      const says = `${percent(share)} of the water enters through the ${opening.label} and meets no media.`;
      const cure =
        'Cover these slots, as long as three times the area of the pump’s own inlet stays open (common practice, no source).';
      const { closedBy } = opening;
      const cured = closedBy === undefined ? {} : { cured: withMeasurement(context.model, closedBy, 0) };
      return [{ place: opening.id, says, cure, ...cured }];
    });
  },
};

/** Hardly any water goes past the media. */
export const littleBypass: FindingRule = {
  id: 'little-bypass',
  look({ assessment }): readonly Sighting[] {
    const held = Object.entries(assessment.bypass).filter(([, share]) => share < 1);
    const worst = held.toSorted((a, b) => b[1] - a[1])[0];
    if (!worst || worst[1] > 0.02 || assessment.dutyPoint.flowM3PerS <= 0) return [];
    const says = `At most ${percent(worst[1])} of the water misses a stage that is packed.`;
    return [
      {
        place: assessment.beds[0]?.id ?? 'packing',
        says,
        cure: 'Keep the seals as they are.',
        severity: 'strength',
      },
    ];
  },
};
