import { withMeasurement } from '../../model/changes.ts';
import { chamberGap, sealedGap, withSealedChambers } from '../../packing/seal.ts';
import { quantity } from '../../wording/facts.ts';
import { said } from '../../wording/said.ts';
import { type FindingContext, type FindingRule, type Sighting, saysAndCure } from './rule.ts';

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
      if (!filled || chamber.trickles || share < WORTH_TELLING) return [];
      const evidence = {
        share: { share },
        gap: quantity(chamberGap(model, chamber), 'length'),
        chamber: { name: chamber.label },
      };
      const cured = withSealedChambers(model, [chamber]);
      const says = said('fault.bypass-past-bed', evidence);
      const cure = said(chamber.ring ? 'cure.bypass-past-bed.end-caps' : 'cure.bypass-past-bed');
      return [{ place: chamber.id, says, cure, cured }];
    });
  },
};

/** Water runs past a partition between the halves, or past a round seat. */
export const partitionLeaks: FindingRule = {
  id: 'partition-leaks',
  look(context): readonly Sighting[] {
    return context.assessment.layout.leaks.flatMap((leak) => {
      const share = shareOf(context, leak.id);
      if (share < WORTH_TELLING) return [];
      return [
        {
          place: leak.id,
          says: said('fault.partition-leaks', { share: { share }, way: { name: leak.label } }),
          cure: said(leak.sealedBy === 'ring' ? 'cure.round-seat-leaks' : 'cure.partition-leaks'),
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
      const evidence = { share: { share }, way: { name: opening.label } };
      const { closedBy } = opening;
      const cured = closedBy === undefined ? {} : { cured: withMeasurement(context.model, closedBy, 0) };
      const code = closedBy === 'bareArea' ? 'plate-lies-bare' : 'opening-past-media';
      return [{ place: opening.id, ...saysAndCure(code, evidence), ...cured }];
    });
  },
};

/** A smaller share than this is printed as less than it, which reads badly behind “at most”. */
const LEAST_PRINTED = 0.001;

/** Hardly any water goes past the media. */
export const littleBypass: FindingRule = {
  id: 'little-bypass',
  look({ assessment }): readonly Sighting[] {
    const held = Object.entries(assessment.bypass).filter(([, share]) => share < 1);
    const worst = held.toSorted((a, b) => b[1] - a[1])[0];
    if (!worst || worst[1] > 0.02 || assessment.dutyPoint.flowM3PerS <= 0) return [];
    const evidence = { share: { share: Math.max(worst[1], LEAST_PRINTED) } };
    const place = assessment.beds[0]?.id ?? 'packing';
    return [{ place, ...saysAndCure('little-bypass', evidence), severity: 'strength' }];
  },
};
