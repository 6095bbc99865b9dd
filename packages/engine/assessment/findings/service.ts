import { quantity } from '../../wording/facts.ts';
import { boundSaid } from '../boundBy.ts';
import { fedSaid } from '../fedSaid.ts';
import { intervalEndSaid } from '../intervalEnd.ts';
import { type FindingRule, type Sighting, saysAndCure } from './rule.ts';

/** Oxygen behind the filter, kg/m³, and days until it clogs, that are worth a word (our own choice). */
const OXYGEN_LOW = 4e-3;
const DAY_S = 86_400;
const SOON_S = 21 * DAY_S;

/** The day on which packings are compared, counted from the cleaning. */
const dayNumber = (timeS: number): number => Number((timeS / DAY_S).toPrecision(3));

/** The tank is fed more than the filter carries. */
export const fedTooMuch: FindingRule = {
  id: 'fed-more-than-carried',
  look(context): readonly Sighting[] {
    const { carries } = context.assessment;
    const { feedKgPerS } = context.model.tank;
    if (feedKgPerS <= carries.day.feedKgPerS) return [];
    const evidence = {
      fed: fedSaid(context.model),
      carried: { ...quantity(carries.day.feedKgPerS, 'mass-rate'), digits: 2 },
      day: dayNumber(carries.day.dayS),
      bound: boundSaid(carries.day.bindingLimit),
    };
    const severity = carries.day.feedKgPerS / feedKgPerS < 0.5 ? 'grave' : 'marked';
    return [{ place: 'tank', ...saysAndCure('fed-more-than-carried', evidence), severity }];
  },
};

/** Water leaves the filter with little oxygen. */
export const oxygenStarved: FindingRule = {
  id: 'oxygen-starved-outlet',
  look(context): readonly Sighting[] {
    const { day } = context.assessment.carries;
    if (context.assessment.dutyPoint.flowM3PerS <= 0 || day.outletOxygenKgPerM3 > OXYGEN_LOW) return [];
    const evidence = {
      oxygen: quantity(day.outletOxygenKgPerM3, 'concentration'),
      day: dayNumber(day.dayS),
    };
    return [{ place: 'outlet', ...saysAndCure('oxygen-starved-outlet', evidence), severity: 'marked' }];
  },
};

/** The filter clogs soon. */
export const clogsSoon: FindingRule = {
  id: 'clogs-soon',
  look(context): readonly Sighting[] {
    const { model, assessment } = context;
    const { cleaning } = assessment;
    if (cleaning.beyond || cleaning.timeS > SOON_S) return [];
    const evidence = { interval: { spanS: cleaning.timeS }, end: intervalEndSaid(model, assessment) };
    const place = cleaning.place ?? 'packing';
    return [{ place, ...saysAndCure('clogs-soon', evidence), severity: 'marked' }];
  },
};

/** Water goes over the overflow with clean media. */
export const overflowOpen: FindingRule = {
  id: 'overflow-open',
  look(context): readonly Sighting[] {
    const { layout, wayFlowM3PerS, dutyPoint } = context.assessment;
    return layout.weirs.flatMap((weir) => {
      const flow = wayFlowM3PerS[weir.id] ?? 0;
      if (weir.purpose !== 'overflow' || flow <= 0.001 * dutyPoint.flowM3PerS) return [];
      const evidence = { share: { share: flow / dutyPoint.flowM3PerS }, way: { name: weir.label } };
      return [{ place: weir.id, ...saysAndCure('overflow-open', evidence), severity: 'marked' as const }];
    });
  },
};

/** Alkalinity runs down faster than water changes bring it. */
export const alkalinityRunsDown: FindingRule = {
  id: 'alkalinity-runs-down',
  look(context): readonly Sighting[] {
    const { tank } = context.model;
    const used =
      context.assessment.uses.alkalinityKgPerS *
      Math.min(1, tank.feedKgPerS / Math.max(context.assessment.carries.day.feedKgPerS, 1e-30));
    const brought = tank.volumeM3 * tank.waterChangePerS * tank.alkalinityKgPerM3;
    if (used <= brought) return [];
    const perWeek = (rate: number) => quantity(rate * 7 * DAY_S, 'mass');
    const evidence = { used: perWeek(used), brought: perWeek(brought) };
    return [{ place: 'tank', ...saysAndCure('alkalinity-runs-down', evidence), severity: 'slight' }];
  },
};

/** Nitrification has halved at this pH, and stops soon below (Rusten et al. 2006, seen quoted). */
const PH_LOW = 6.7;

/** The water is too acid for the bacteria. */
export const waterTooAcid: FindingRule = {
  id: 'water-too-acid',
  look(context): readonly Sighting[] {
    const { pH } = context.model.tank;
    if (pH > PH_LOW) return [];
    return [{ place: 'tank', ...saysAndCure('water-too-acid', { pH }), severity: 'marked' }];
  },
};
