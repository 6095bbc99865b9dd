import { GRAVITY } from '../../laws/constants.ts';
import { ORIFICE_DISCHARGE_COEFFICIENT } from '../../laws/hydraulics/orifice.ts';
import { withMeasurement } from '../../model/changes.ts';
import { type FindingContext, type FindingRule, type Sighting, saysAndCure } from './rule.ts';

/** Share of water past trickling media from which it is worth a finding (our own choice). */
const WORTH_TELLING = 0.05;

/** Water runs down the walls of a trickling chamber. */
export const runsDownWalls: FindingRule = {
  id: 'runs-down-walls',
  look({ assessment }): readonly Sighting[] {
    const { layout, wayFlowM3PerS, dutyPoint } = assessment;
    return layout.chambers.flatMap((chamber) => {
      const share = (wayFlowM3PerS[`gap:${chamber.id}`] ?? 0) / dutyPoint.flowM3PerS;
      if (!chamber.trickles || !(share >= WORTH_TELLING)) return [];
      const evidence = { share: { share }, chamber: { name: chamber.label } };
      return [{ place: chamber.id, ...saysAndCure('runs-down-walls', evidence), severity: 'note' }];
    });
  },
};

/** Share of the open holes that may still block before the plate spills, from the water that stands on it. */
const holesToSpare = ({ assessment }: FindingContext, rimM: number, areaM2: number): number => {
  const needed =
    assessment.dutyPoint.flowM3PerS / (ORIFICE_DISCHARGE_COEFFICIENT * Math.sqrt(2 * GRAVITY * rimM));
  return 1 - needed / areaM2;
};

/** Fewer spare holes than this make a plate spill soon (our own choice). */
const FEW_TO_SPARE = 0.5;

/** Holes of a drip plate are blocked, or so few that a few more make it spill. */
export const dripPlateTight: FindingRule = {
  id: 'drip-plate-tight',
  look(context): readonly Sighting[] {
    const { assessment, model } = context;
    const { measurements } = model.filter;
    return assessment.layout.openings.flatMap((opening): Sighting[] => {
      if (opening.fallsAtM === undefined || assessment.dutyPoint.flowM3PerS <= 0) return [];
      const spare = holesToSpare(context, measurements.plateRim ?? 0, opening.areaM2);
      const blocked = measurements.holesBlocked ?? 0;
      if (spare >= FEW_TO_SPARE && blocked <= 0) return [];
      const evidence = { blocked: { share: blocked }, spare: { share: Math.max(0, spare) } };
      const code = blocked > 0 ? 'holes-blocked' : 'drip-plate-tight';
      const cured = blocked > 0 ? { cured: withMeasurement(model, 'holesBlocked', 0) } : {};
      const severity = spare <= 0 ? 'marked' : 'slight';
      return [{ place: opening.id, ...saysAndCure(code, evidence), ...cured, severity }];
    });
  },
};
