import { media } from '../../catalogue/media.ts';
import type { Bed, Filter, HoseRun, Measurements, Model, Packing, Pump, Tank } from '../../model/model.ts';

const DAY_S = 86_400;
const M3_PER_S_IN_L_PER_H = 3.6e6;

/** Litres per hour as m³/s. */
export const litresPerHour = (flow: number): number => flow / M3_PER_S_IN_L_PER_H;

/** Days as seconds. */
export const days = (time: number): number => time * DAY_S;

/** Grams a day as kg/s. */
export const gramsPerDay = (mass: number): number => mass / 1000 / DAY_S;

/** A bed as tests write it: medium and depth in millimetres. */
export type Layer = readonly [medium: string, depthMm: number];

/** Layers by chamber as beds with names of their own. */
export const packed = (layers: Readonly<Record<string, readonly Layer[]>>): Packing =>
  Object.fromEntries(
    Object.entries(layers).map(([chamber, listed]) => [
      chamber,
      listed.map(
        ([medium, depthMm], place): Bed => ({
          id: `${chamber}/${place + 1}`,
          medium,
          depthM: depthMm / 1000,
        }),
      ),
    ]),
  );

/** A tropical tank of 180 L that is fed normally. */
export const tank: Tank = {
  volumeM3: 0.18,
  temperatureK: 298.15,
  salinity: 0,
  pH: 7.4,
  alkalinityKgPerM3: 0.09,
  feedKgPerS: gramsPerDay(1.5),
  feedProteinFraction: 0.45,
  waterChangePerS: 0.25 / days(7),
  planted: false,
  oxygenFraction: 0.95,
  pressurePa: 101_325,
};

export const hose = (change: Partial<HoseRun> = {}): HoseRun => ({
  lengthM: 1.5,
  boreM: 0.016,
  roughnessM: 1.5e-6,
  barbBoreM: 0.0128,
  fittings: [],
  extraK: 0,
  ...change,
});

export const pump = (shutoffHeadM: number, freeFlowLPerH: number, powerW: number): Pump => ({
  curve: { kind: 'two-point', shutoffHeadM, freeFlowM3PerS: litresPerHour(freeFlowLPerH) },
  ratedFlowM3PerS: litresPerHour(freeFlowLPerH),
  powerW,
  speedRatio: 1,
});

/** A filter of a family with its measurements. */
export const filterOf = (
  family: string,
  measurements: Measurements,
  rest: Pick<Filter, 'pump'> & Partial<Filter>,
): Filter => ({
  name: family,
  family,
  measurements,
  outletLiftM: 0,
  chamberGapM: {},
  lifeYears: 8,
  ...rest,
});

/** A job about a filter with its packing: no shelf, no alterations, no tests. */
export const job = (filter: Filter, packing: Packing, over: Partial<Tank> = {}): Model => ({
  tank: { ...tank, ...over },
  filter,
  packing,
  media,
  otherFilters: [],
  tests: [],
  alterations: [],
  shelf: [],
  money: {
    currency: 'GBP',
    tariffPerJ: 0.27 / 3.6e6,
    labourPerS: 30 / 3600,
    mediumPricePerM3: {},
    partPrice: {},
  },
  claims: [],
  givens: [],
});

/** Layers by chamber. */
export type Layers = Readonly<Record<string, readonly Layer[]>>;
