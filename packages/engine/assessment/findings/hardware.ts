import { velocityHead, velocityInBore } from '../../laws/hydraulics/jet.ts';
import type { HoseRun, Model } from '../../model/model.ts';
import { quantity } from '../../wording/facts.ts';
import { said } from '../../wording/said.ts';
import { type FindingContext, type FindingRule, type Sighting, saysAndCure } from './rule.ts';

/** Limits from which a hose, a kink or a barb is worth a word (our own choice). */
const SHORT_HOSE_M = 1;
const LONG_HOSE_SHARE = 0.25;
const KINK_K = 2;
const BARB_SHARE = 0.2;

const headShare = ({ assessment }: FindingContext, part: string, place?: string): number =>
  assessment.headBudget
    .filter((entry) => entry.part === part && (place === undefined || entry.place === place))
    .reduce((sum, entry) => sum + entry.share, 0);

const withRun = (model: Model, side: 'intake' | 'outlet', change: Partial<HoseRun>): Model => {
  const run = model.filter[side];
  return run ? { ...model, filter: { ...model.filter, [side]: { ...run, ...change } } } : model;
};

const SIDES = ['intake', 'outlet'] as const;

/** A hose takes much of the pump's head by its length. */
export const hoseTooLong: FindingRule = {
  id: 'hose-too-long',
  look(context): readonly Sighting[] {
    return SIDES.flatMap((side) => {
      const run = context.model.filter[side];
      const share = headShare(context, `${side}-hose`);
      if (!run || run.lengthM < 1.5 * SHORT_HOSE_M || share < LONG_HOSE_SHARE) return [];
      const evidence = {
        hose: said(`hose.${side}`),
        length: quantity(run.lengthM, 'length'),
        bore: quantity(run.boreM, 'length'),
        share: { share },
      };
      return [
        {
          place: side,
          ...saysAndCure('hose-too-long', evidence, { length: quantity(SHORT_HOSE_M, 'length') }),
          cured: withRun(context.model, side, { lengthM: SHORT_HOSE_M }),
        },
      ];
    });
  },
};

/** Head that coils and kinks of a hose take at the clean flow, m: so many times the head of the water's speed. */
const headOfKinks = ({ assessment }: FindingContext, { boreM, extraK }: HoseRun): number =>
  extraK * velocityHead(velocityInBore({ flowM3PerS: assessment.dutyPoint.flowM3PerS, boreM }));

/** Kinks or coils take head. */
export const hoseKinked: FindingRule = {
  id: 'hose-kinked',
  look(context): readonly Sighting[] {
    return SIDES.flatMap((side) => {
      const run = context.model.filter[side];
      if (!run || run.extraK < KINK_K) return [];
      const evidence = { hose: said(`hose.${side}`), head: quantity(headOfKinks(context, run), 'length') };
      const cured = withRun(context.model, side, { extraK: 0 });
      return [{ place: side, ...saysAndCure('hose-kinked', evidence), cured }];
    });
  },
};

/** Barbs narrower than the hose take much of the head. */
export const barbsTooNarrow: FindingRule = {
  id: 'barbs-too-narrow',
  look(context): readonly Sighting[] {
    return SIDES.flatMap((side) => {
      const run = context.model.filter[side];
      const share = headShare(context, 'barbs', side);
      if (!run || share < BARB_SHARE || run.barbBoreM > 0.95 * run.boreM) return [];
      const evidence = {
        barbs: said(`barbs.${side}`),
        bore: quantity(run.barbBoreM, 'length'),
        hose: quantity(run.boreM, 'length'),
        share: { share },
      };
      const cured = withRun(context.model, side, { barbBoreM: run.boreM });
      return [{ place: side, ...saysAndCure('barbs-too-narrow', evidence), cured }];
    });
  },
};

/** The outlet stands above the tank's surface. */
export const outletLift: FindingRule = {
  id: 'outlet-lift',
  look(context): readonly Sighting[] {
    const { filter } = context.model;
    if (filter.outletLiftM <= 0 || context.assessment.dutyPoint.flowM3PerS <= 0) return [];
    const evidence = {
      lift: quantity(filter.outletLiftM, 'length'),
      share: { share: headShare(context, 'lift') },
    };
    const cured = { ...context.model, filter: { ...filter, outletLiftM: 0 } };
    return [{ place: 'outlet', ...saysAndCure('outlet-lift', evidence), cured }];
  },
};

/** The pump does not raise water to the outlet at all. */
export const pumpCannotLift: FindingRule = {
  id: 'pump-cannot-lift',
  look(context): readonly Sighting[] {
    const { assessment, model } = context;
    if (assessment.dutyPoint.flowM3PerS > 0) return [];
    const evidence = { head: quantity(assessment.dutyPoint.headM, 'length') };
    const cured = { ...model, filter: { ...model.filter, outletLiftM: 0 } };
    return [{ place: 'pump', ...saysAndCure('pump-cannot-lift', evidence), cured, severity: 'grave' }];
  },
};

/** An opening inside is narrower than the hose that feeds it. */
export const openingNarrow: FindingRule = {
  id: 'opening-narrower-than-hose',
  look(context): readonly Sighting[] {
    const bore = context.model.filter.intake?.boreM ?? context.model.filter.outlet?.boreM;
    if (bore === undefined) return [];
    const hoseArea = (Math.PI * bore ** 2) / 4;
    return context.assessment.layout.openings.flatMap((opening) => {
      if (opening.bypass || opening.fallsAtM !== undefined || opening.areaM2 >= hoseArea) return [];
      const share = headShare(context, 'openings', opening.id);
      const evidence = {
        way: { name: opening.label },
        area: quantity(opening.areaM2, 'area'),
        hose: quantity(hoseArea, 'area'),
        share: { share },
      };
      return [
        {
          place: opening.id,
          ...saysAndCure('opening-narrower-than-hose', evidence),
          severity: share > 0.1 ? 'marked' : 'note',
        },
      ];
    });
  },
};

/** Tank volumes an hour below or above which flow is worth a word (common practice, no source). */
const TURNOVER_LEAST = 1;
const TURNOVER_MOST = 12;

/** The flow does not suit the tank. */
export const flowForTank: FindingRule = {
  id: 'flow-for-tank',
  look(context): readonly Sighting[] {
    const perHour = context.assessment.turnoverPerS * 3600;
    const evidence = { times: Number(perHour.toPrecision(2)) };
    if (perHour <= 0) return [];
    if (perHour < TURNOVER_LEAST)
      return [{ place: 'pump', ...saysAndCure('flow-small', evidence), severity: 'marked' }];
    return perHour > TURNOVER_MOST
      ? [{ place: 'pump', ...saysAndCure('flow-large', evidence), severity: 'note' }]
      : [];
  },
};
