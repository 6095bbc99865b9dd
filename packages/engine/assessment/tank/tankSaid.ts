import { quantity } from '../../wording/facts.ts';
import { type Fact, type Said, said } from '../../wording/said.ts';
import { fedSaid } from '../fedSaid.ts';
import type { TankForecast } from './tankForecast.ts';
import type { Held } from './tankRecord.ts';

const DAY_S = 86_400;
/** Alkalinity under which it is told how low it falls, kg/m³ as CaCO3: about one degree of hardness. */
const LOW_ALKALINITY = 0.02;
/** Oxygen under which it is told that fish gasp, kg/m³ (common practice, no source). */
const LOW_OXYGEN = 5e-3;
/** Less than this of the ammonia on glass and ground is not told. */
const LEAST_WALL_SHARE = 0.01;

const level = (value: number): Fact => ({ ...quantity(value, 'concentration'), digits: 2 });
const dayOf = (timeS: number): number => Math.round(timeS / DAY_S);

const startSaid = ({ scenario: { start } }: TankForecast): Said =>
  start.kind === 'seeded'
    ? said('tank.start.seeded', { share: { share: start.share } })
    : said(`tank.start.${start.kind}`);

const peakSaid = ({ ammonia, nitrite }: TankForecast): Said =>
  said('tank.peaks', {
    ammonia: level(ammonia.peak.value),
    ammoniaDay: dayOf(ammonia.peak.timeS),
    nitrite: level(nitrite.peak.value),
    nitriteDay: dayOf(nitrite.peak.timeS),
  });

const backSaid = ({ ammonia, nitrite, scenario: { days } }: TankForecast): Said => {
  const above = (held: Held): boolean => held.stillAbove;
  if (above(ammonia) && above(nitrite)) return said('tank.back.neither', { days });
  if (above(ammonia)) return said('tank.back.no-ammonia', { days });
  if (above(nitrite)) return said('tank.back.no-nitrite', { days });
  const backS = Math.max(ammonia.backS ?? 0, nitrite.backS ?? 0);
  return backS > 0 ? said('tank.back', { after: { spanS: backS } }) : said('tank.under');
};

const toxicSaid = ({ unionized }: TankForecast): Said => {
  const facts = { peak: level(unionized.peak.value), limit: level(unionized.limit) };
  return unionized.aboveS > 0
    ? said('tank.toxic', { ...facts, above: { spanS: unionized.aboveS } })
    : said('tank.not-toxic', facts);
};

const waterSaid = ({ leastOxygen, leastAlkalinity }: TankForecast): readonly Said[] => [
  said(leastOxygen.value < LOW_OXYGEN ? 'tank.oxygen.low' : 'tank.oxygen', {
    least: level(leastOxygen.value),
    day: dayOf(leastOxygen.timeS),
  }),
  ...(leastAlkalinity.value < LOW_ALKALINITY
    ? [said('tank.alkalinity', { least: level(leastAlkalinity.value), day: dayOf(leastAlkalinity.timeS) })]
    : []),
];

/** How long a stopped filter lasts, and what must not be done after. */
const stoppedSaid = ({ stopped }: TankForecast): Said => {
  const { lastsS, waterM3, restartWithinS } = stopped;
  if (!Number.isFinite(lastsS.value)) return said('tank.stopped.clean');
  return said('tank.stopped', {
    water: { ...quantity(waterM3, 'volume'), digits: 2 },
    low: { durationS: lastsS.low },
    high: { durationS: lastsS.high },
    within: { durationS: restartWithinS },
  });
};

/** What matters of a tank's forecast, one sentence each. */
export const tankSaid = (forecast: TankForecast): readonly Said[] => [
  startSaid(forecast),
  peakSaid(forecast),
  backSaid(forecast),
  toxicSaid(forecast),
  ...waterSaid(forecast),
  ...(forecast.wallShare > LEAST_WALL_SHARE
    ? [said('tank.walls', { share: { share: forecast.wallShare } })]
    : []),
  stoppedSaid(forecast),
  said('forecast.feed', { fed: fedSaid(forecast.model) }),
  said('tank.doubt'),
];
