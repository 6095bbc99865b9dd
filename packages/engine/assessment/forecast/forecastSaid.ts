import type { Layout } from '../../families/layout.ts';
import type { Model } from '../../model/model.ts';
import { quantity } from '../../wording/facts.ts';
import { type Fact, type Said, said } from '../../wording/said.ts';
import { fedSaid } from '../fedSaid.ts';
import { placeSaid } from '../placeName.ts';
import type { FlowLoss, Forecast } from './forecast.ts';

/** A forecast, with the filter that it is of. */
export interface ForecastOf {
  readonly model: Model;
  readonly layout: Layout;
  readonly forecast: Forecast;
}

const lastDay = ({ days }: Forecast): number => days.day.length - 1;

/** A bed or an overflow by its id. */
export const forecastPlace = ({ model, layout, forecast }: ForecastOf, id: string): Fact =>
  placeSaid(model, { layout, beds: forecast.days.beds }, id);

const lossWord = (lossShare: number): Said =>
  said(lossShare === 0.5 ? 'loss.half' : lossShare === 0.25 ? 'loss.quarter' : 'loss.third');

const lossTold = (of: ForecastOf, { lossShare, timeS, place }: FlowLoss): readonly Said[] => {
  if (timeS === undefined) return [];
  const facts = { loss: lossWord(lossShare), after: { spanS: timeS } };
  return [
    place === undefined
      ? said('forecast.loss.at', facts)
      : said('forecast.loss.in', { ...facts, place: forecastPlace(of, place) }),
  ];
};

/** When the flow at the tank is down by a quarter, a third, a half, and which bed takes most of the head then. */
export const lossSaid = (of: ForecastOf): Said => {
  const { losses, days } = of.forecast;
  const within = lastDay(of.forecast);
  const told = losses.flatMap((loss) => lossTold(of, loss));
  if (told.length === 0)
    return said('forecast.loss.none', { days: within, share: { share: Math.min(...days.flowRatio) } });
  const losing: Fact = { all: told, by: '; ' };
  const never = losses.filter(({ timeS }) => timeS === undefined);
  if (never.length === 0) return said('forecast.loss.all', { losing });
  return said('forecast.loss.some', {
    losing,
    never: lossWord(Math.min(...never.map(({ lossShare }) => lossShare))),
    days: within,
  });
};

/** What ends the cleaning interval first, and when. */
export const endSaid = (of: ForecastOf): Said => {
  const { firstEnd } = of.forecast;
  if (firstEnd === undefined) return said('forecast.end.none', { days: lastDay(of.forecast) });
  const { endedBy, timeS, place } = firstEnd;
  return said(`forecast.end.${endedBy}`, { after: { spanS: timeS }, place: forecastPlace(of, place) });
};

const overflowSaid = ({ forecast: { overflowOpensS, firstEnd } }: ForecastOf): readonly Said[] =>
  overflowOpensS === undefined || firstEnd?.endedBy === 'overflow'
    ? []
    : [said('forecast.overflow', { after: { spanS: overflowOpensS } })];

const matsSaid = (of: ForecastOf): readonly Said[] =>
  of.forecast.days.beds.flatMap(({ id, matKg }) => {
    const day = matKg.findIndex((mass) => mass > 0);
    return day < 0 ? [] : [said('forecast.mat', { day, place: forecastPlace(of, id) })];
  });

/** Less than this of a share of the solids is not told, kg. */
const LEAST_TOLD_KG = 5e-5;

const massFact = (kg: number): Fact => ({ ...quantity(kg, 'mass'), digits: 2 });

const solidsSaid = ({ forecast: { account, days }, model }: ForecastOf): Said => {
  const floatingKg = (days.suspendedKgPerM3.at(-1) ?? 0) * model.tank.volumeM3;
  const parts = [
    ['held', account.heldKg],
    ['rot', account.decayedKg],
    ['cleaned', account.cleanedKg],
    ['changed', account.changedKg],
    ['elsewhere', account.elsewhereKg],
    ['floating', floatingKg],
  ] as const;
  const told = parts
    .filter(([, kg]) => kg > LEAST_TOLD_KG)
    .map(([where, kg]) => said(`forecast.solids.${where}`, { mass: massFact(kg) }));
  const made = massFact(account.madeKg);
  return told.length === 0
    ? said('forecast.solids.none', { made })
    : said('forecast.solids', { made, parts: { all: told } });
};

/** What a forecast does not know: what plants shed, and the feed where it was assumed. */
export const unknownSaid = (model: Model): readonly Said[] => [
  said('forecast.feed', { fed: fedSaid(model) }),
  ...(model.tank.planted ? [said('forecast.litter')] : []),
];

/** What matters of a forecast, one sentence each. */
export const forecastSaid = (of: ForecastOf): readonly Said[] => {
  const { days } = of.forecast;
  if (days.flowM3PerS[0]! <= 0) return [said('forecast.no-water')];
  if (days.beds.length === 0) return [said('forecast.no-media')];
  return [
    lossSaid(of),
    endSaid(of),
    ...overflowSaid(of),
    ...matsSaid(of),
    solidsSaid(of),
    ...unknownSaid(of.model),
  ];
};
