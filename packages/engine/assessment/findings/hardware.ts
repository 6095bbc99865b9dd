import { velocityHead, velocityInBore } from '../../laws/hydraulics/jet.ts';
import type { HoseRun, Model } from '../../model/model.ts';
import { type FindingContext, type FindingRule, percent, type Sighting } from './rule.ts';

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
      const says = `The ${side} hose, ${context.print(run.lengthM, 'length')} of ${context.print(run.boreM, 'length')} bore, takes ${percent(share)} of the pump's head.`;
      const cure = `Shorten it; shown here for ${context.print(SHORT_HOSE_M, 'length')}.`;
      return [{ place: side, says, cure, cured: withRun(context.model, side, { lengthM: SHORT_HOSE_M }) }];
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
      const head = context.print(headOfKinks(context, run), 'length');
      const says = `Kinks or coils in the ${side} hose cost ${head} of head at the clean flow.`;
      const cured = withRun(context.model, side, { extraK: 0 });
      return [{ place: side, says, cure: 'Lay the hose in wide bends without kinks.', cured }];
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
      const says = `The ${side} barbs, ${context.print(run.barbBoreM, 'length')} bore in a ${context.print(run.boreM, 'length')} hose, take ${percent(share)} of the pump's head.`;
      const cure = 'Fit barbs with a bore as wide as the hose where the ports allow it.';
      return [{ place: side, says, cure, cured: withRun(context.model, side, { barbBoreM: run.boreM }) }];
    });
  },
};

/** The outlet stands above the tank's surface. */
export const outletLift: FindingRule = {
  id: 'outlet-lift',
  look(context): readonly Sighting[] {
    const { filter } = context.model;
    if (filter.outletLiftM <= 0 || context.assessment.dutyPoint.flowM3PerS <= 0) return [];
    const share = headShare(context, 'lift');
    const lift = context.print(filter.outletLiftM, 'length');
    const says = `The outlet stands ${lift} above the surface: water is really lifted there, which takes ${percent(share)} of the pump's head.`;
    const cured = { ...context.model, filter: { ...filter, outletLiftM: 0 } };
    return [
      { place: 'outlet', says, cure: 'Bring the outlet under the surface; keep the siphon break.', cured },
    ];
  },
};

/** The pump does not raise water to the outlet at all. */
export const pumpCannotLift: FindingRule = {
  id: 'pump-cannot-lift',
  look(context): readonly Sighting[] {
    const { assessment, model } = context;
    if (assessment.dutyPoint.flowM3PerS > 0) return [];
    const head = context.print(assessment.dutyPoint.headM, 'length');
    const says = `No water flows: the pump's ${head} of head does not reach the outlet.`;
    const cured = { ...model, filter: { ...model.filter, outletLiftM: 0 } };
    return [
      {
        place: 'pump',
        says,
        cure: 'Lower the outlet or fit a pump with more head.',
        cured,
        severity: 'grave',
      },
    ];
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
      if (opening.bypass || opening.areaM2 >= hoseArea) return [];
      const share = headShare(context, 'openings', opening.id);
      const says = `The ${opening.label} is ${context.print(opening.areaM2, 'area')}, narrower than the hose's ${context.print(hoseArea, 'area')}, and takes ${percent(share)} of the pump's head.`;
      return [
        {
          place: opening.id,
          says,
          cure: 'Clear or widen it where no pressure wall or seal is cut.',
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
    const figure = Number(perHour.toPrecision(2));
    if (perHour <= 0) return [];
    if (perHour < TURNOVER_LEAST) {
      const says = `The tank's water goes through ${figure} times an hour, less than once (common practice, no source).`;
      return [
        {
          place: 'pump',
          says,
          cure: 'A larger pump or a second filter; more media do not help here.',
          severity: 'marked',
        },
      ];
    }
    if (perHour > TURNOVER_MOST) {
      const says = `The tank's water goes through ${figure} times an hour: strong current for still-water fish (common practice, no source).`;
      return [
        {
          place: 'pump',
          says,
          cure: 'Spread the outlet over a spray bar or turn it to the glass; throttle only the outlet.',
          severity: 'note',
        },
      ];
    }
    return [];
  },
};
