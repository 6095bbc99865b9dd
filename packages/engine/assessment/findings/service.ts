import { printDay, printSpan } from '../../quantities/printShort.ts';
import { BOUND_BY } from '../assessment.ts';
import { intervalEnd } from '../intervalEnd.ts';
import { type FindingRule, percent, type Sighting } from './rule.ts';

/** Oxygen behind the filter, kg/m³, and days until it clogs, that are worth a word (our own choice). */
const OXYGEN_LOW = 4e-3;
const SOON_S = 21 * 86_400;

/** The tank is fed more than the filter carries. */
export const fedTooMuch: FindingRule = {
  id: 'fed-more-than-carried',
  look(context): readonly Sighting[] {
    const { carries } = context.assessment;
    const { feedKgPerS } = context.model.tank;
    if (feedKgPerS <= carries.day.feedKgPerS) return [];
    const fed = context.print(feedKgPerS, 'mass-rate');
    const carried = context.print(carries.day.feedKgPerS, 'mass-rate');
    const says = `The tank is fed ${fed}; the filter alone carries ${carried} on ${printDay(carries.day.dayS)} after cleaning (bound ${BOUND_BY[carries.day.bindingLimit]}).`;
    const cure =
      'Feed less, re-pack for more, or leave the rest to walls, plants and water changes and test for ammonia and nitrite.';
    const short = carries.day.feedKgPerS / feedKgPerS;
    return [{ place: 'tank', says, cure, severity: short < 0.5 ? 'grave' : 'marked' }];
  },
};

/** Water leaves the filter with little oxygen. */
export const oxygenStarved: FindingRule = {
  id: 'oxygen-starved-outlet',
  look(context): readonly Sighting[] {
    const { day } = context.assessment.carries;
    if (context.assessment.dutyPoint.flowM3PerS <= 0 || day.outletOxygenKgPerM3 > OXYGEN_LOW) return [];
    const says = `Water leaves the filter with ${context.print(day.outletOxygenKgPerM3, 'concentration')} of oxygen on ${printDay(day.dayS)} after cleaning.`;
    return [
      {
        place: 'outlet',
        says,
        cure: 'Clean sooner, raise the flow, or let the outlet break the surface.',
        severity: 'marked',
      },
    ];
  },
};

/** The filter clogs soon. */
export const clogsSoon: FindingRule = {
  id: 'clogs-soon',
  look(context): readonly Sighting[] {
    const { model, assessment } = context;
    const { cleaning } = assessment;
    if (cleaning.beyond || cleaning.timeS > SOON_S) return [];
    const says = `After ${printSpan(cleaning.timeS)} ${intervalEnd(model, assessment)}.`;
    const cure =
      'More area or a coarser medium where the dirt is caught; a pre-filter that is easy to reach.';
    return [{ place: cleaning.place ?? 'packing', says, cure, severity: 'marked' }];
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
      const says = `${percent(flow / dutyPoint.flowM3PerS)} of the water goes over the ${weir.label} even with clean media.`;
      return [
        {
          place: weir.id,
          says,
          cure: 'Use a coarser or thinner medium ahead; never block the overflow.',
          severity: 'marked' as const,
        },
      ];
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
    const perWeek = (rate: number): string => context.print(rate * 7 * 86_400, 'mass');
    const says = `At the present feed, nitrification uses ${perWeek(used)} of alkalinity (as CaCO3) a week and water changes bring at most ${perWeek(brought)}.`;
    const cure = 'Test alkalinity weekly; change more water or buffer it before the pH falls.';
    return [{ place: 'tank', says, cure, severity: 'slight' }];
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
    const says = `At pH ${pH} the bacteria work at half of their rate or less, whatever the media.`;
    const cure =
      'Test alkalinity; raise it slowly if the animals are not of soft, acid water, which has its own slow bacteria.';
    return [{ place: 'tank', says, cure, severity: 'marked' }];
  },
};
