import { bestPowerTest } from '../model/benchTests.ts';
import type { Model } from '../model/model.ts';
import type { Cost, Replacement } from './assessment.ts';
import type { Compiled } from './compiled.ts';

const YEAR_S = 365 * 86_400;

/** Power drawn, W, by all pumps that run: the first as measured where it was, else as stated or assumed. */
export const powerW = (model: Model): number => {
  const { pump, secondPump } = model.filter;
  const second = secondPump?.running ? secondPump.pump.powerW : 0;
  return (bestPowerTest(model)?.powerW ?? pump.powerW) + second;
};

const mediaCost = (compiled: Compiled, replaced: readonly Replacement[]): Cost['media'] =>
  replaced.map((replacement) => {
    const { medium, volumeM3 } = compiled.beds.find(({ id }) => id === replacement.bed)!;
    const price = compiled.model.money.mediumPricePerM3[medium.id] ?? medium.pricePerM3.value;
    return {
      ...replacement,
      medium: medium.id,
      perYear: (YEAR_S / replacement.everyS) * volumeM3 * price,
    };
  });

/** Running cost over a year: electricity, media that are used up, the price spread over its life. */
export const costOf = (compiled: Compiled, replaced: readonly Replacement[]): Cost => {
  const { model } = compiled;
  const energyJPerYear = powerW(model) * YEAR_S;
  const energyPerYear = energyJPerYear * model.money.tariffPerJ;
  const media = mediaCost(compiled, replaced);
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
