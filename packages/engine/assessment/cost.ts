import { bestPowerTest } from '../model/benchTests.ts';
import type { Model } from '../model/model.ts';
import type { CleaningInterval, Cost } from './assessment.ts';
import type { Compiled } from './compiled.ts';

const YEAR_S = 365 * 86_400;

/** Power drawn, W: as measured on the bench where it was, else as stated or assumed. */
export const powerW = (model: Model): number => {
  return bestPowerTest(model)?.powerW ?? model.filter.pump.powerW;
};

const mediaCost = (compiled: Compiled, cleaning: CleaningInterval): Cost['media'] => {
  const lines = new Map<string, { medium: string; perYear: number; because: 'clogs' | 'calendar' }>();
  for (const bed of compiled.beds) {
    const { medium } = bed;
    const byClogging =
      medium.care === 'replace' && cleaning.cleanedEachTime.includes(bed.id) ? YEAR_S / cleaning.timeS : 0;
    const byCalendar = medium.lifeS ? YEAR_S / medium.lifeS.value : 0;
    const times = Math.max(byClogging, byCalendar);
    if (times === 0) continue;
    const price = compiled.model.money.mediumPricePerM3[medium.id] ?? medium.pricePerM3.value;
    const perYear = times * bed.volumeM3 * price;
    const because = byClogging > byCalendar ? 'clogs' : 'calendar';
    lines.set(medium.id, {
      medium: medium.id,
      perYear: (lines.get(medium.id)?.perYear ?? 0) + perYear,
      because,
    });
  }
  return [...lines.values()];
};

/** Running cost over a year: electricity, media that are used up, the price spread over its life. */
export const costOf = (compiled: Compiled, cleaning: CleaningInterval): Cost => {
  const { model } = compiled;
  const energyJPerYear = powerW(model) * YEAR_S;
  const energyPerYear = energyJPerYear * model.money.tariffPerJ;
  const media = mediaCost(compiled, cleaning);
  const mediaPerYear = media.reduce((sum, line) => sum + line.perYear, 0);
  const pricePerYear = (model.filter.price ?? 0) / model.filter.lifeYears;
  return {
    currency: model.money.currency,
    energyJPerYear,
    energyPerYear,
    mediaPerYear,
    pricePerYear,
    perYear: energyPerYear + mediaPerYear + pricePerYear,
    media,
  };
};
