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

const filterOf = (
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
const job = (filter: Filter, packing: Packing, over: Partial<Tank> = {}): Model => ({
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

type Layers = Readonly<Record<string, readonly Layer[]>>;

const wellPackedStack: Layers = {
  'basket-3': [['floss-loose', 20]],
  'basket-2': [['ceramic-rings-15mm', 50]],
  'basket-1': [['foam-20ppi', 50]],
};

/** A canister with three baskets; water rises from the lowest. */
export const stackCanister = (layers: Layers = wellPackedStack): Model =>
  job(
    filterOf(
      'basket-stack-canister',
      { baskets: 3, basketWidth: 0.168, basketDepth: 0.168, basketHeight: 0.058 },
      { pump: pump(1.35, 850, 13), intake: hose({ fittings: ['strainer', 'elbow-90'] }), outlet: hose() },
    ),
    packed(layers),
  );

/** A canister with one basket: the simplest filter with hoses. */
export const oneBasket = (layers: readonly Layer[]): Model => {
  const model = stackCanister({ 'basket-1': layers });
  const measurements = { ...model.filter.measurements, baskets: 1, basketHeight: 0.2 };
  return { ...model, filter: { ...model.filter, measurements } };
};

const wellPackedHalves: Layers = {
  'left-1': [['foam-20ppi', 60]],
  'left-2': [['ceramic-rings-15mm', 60]],
  'right-2': [['ceramic-rings-15mm', 60]],
  'right-1': [['foam-30ppi', 60]],
};

/** A canister of two halves with two trays each: down the left, up the right. */
export const splitCanister = (layers: Layers = wellPackedHalves): Model =>
  job(
    filterOf(
      'split-housing-canister',
      { innerWidth: 0.24, innerDepth: 0.16, innerHeight: 0.24, traysPerSide: 2 },
      { pump: pump(1.2, 900, 15), intake: hose(), outlet: hose() },
    ),
    packed(layers),
  );

const wellPackedSlots: Layers = {
  'slot-1': [['coarse-pad', 15]],
  'slot-2': [['ceramic-rings-12mm', 20]],
};

/** A box that hangs on a tank of 60 L. */
export const hangOnBack = (layers: Layers = wellPackedSlots): Model =>
  job(
    filterOf(
      'hang-on-back',
      {
        boxWidth: 0.142,
        waterDepth: 0.118,
        slots: 2,
        slotThickness: 0.022,
        weirWidth: 0.118,
        overflowWidth: 0.09,
        outletCrestHeight: 0.008,
        overflowCrestHeight: 0.038,
        railGap: 0.0005,
      },
      {
        pump: pump(0.28, 460, 6),
        intake: hose({ lengthM: 0.32, boreM: 0.019, barbBoreM: 0.019 }),
      },
    ),
    packed(layers),
    { volumeM3: 0.06, feedKgPerS: gramsPerDay(0.5) },
  );

const wellPackedBox: Layers = {
  'chamber-2': [['foam-30ppi', 60]],
  'chamber-1': [['foam-20ppi', 60]],
};

/** A box inside a tank of 60 L. */
export const internalBox = (layers: Layers = wellPackedBox): Model =>
  job(
    filterOf(
      'internal-box',
      { innerWidth: 0.074, innerDepth: 0.066, innerHeight: 0.19, chambers: 2, slotArea: 4.2e-4 },
      { pump: pump(0.6, 400, 5) },
    ),
    packed(layers),
    { volumeM3: 0.06, feedKgPerS: gramsPerDay(0.3) },
  );

const wellPackedSleeves: Layers = {
  media: [
    ['foam-20ppi', 25],
    ['foam-30ppi', 30],
  ],
};

/** A canister with a tube in its middle: from all sides through two sleeves. */
export const tubeCanister = (layers: Layers = wellPackedSleeves): Model =>
  job(
    filterOf(
      'central-tube-canister',
      { housingBore: 0.188, mediaDiameter: 0.16, mediaLength: 0.21, tubeDiameter: 0.04 },
      { pump: pump(1.3, 880, 14), intake: hose(), outlet: hose() },
    ),
    packed(layers),
  );

const wellPackedCartridge: Layers = { cartridge: [['foam-30ppi', 35]] };

/** A small canister with a cartridge. */
export const cartridgeCanister = (layers: Layers = wellPackedCartridge): Model =>
  job(
    filterOf(
      'cartridge-canister',
      { housingBore: 0.13, mediaDiameter: 0.108, mediaLength: 0.18, tubeDiameter: 0.034 },
      { pump: pump(1.3, 550, 9), intake: hose(), outlet: hose() },
    ),
    packed(layers),
    { volumeM3: 0.1, feedKgPerS: gramsPerDay(0.8) },
  );

const wellPackedSump: Layers = {
  sock: [['sock-felt', 3]],
  'tray-1': [['foam-20ppi', 60]],
  'tray-2': [['plastic-carrier-10mm', 80]],
};

/** A sump under a tank of 400 L: the pump lifts the water by 1.2 m. */
export const sump = (layers: Layers = wellPackedSump): Model =>
  job(
    filterOf(
      'sump',
      {
        boxDepth: 0.3,
        boxHeight: 0.4,
        sockSection: 0.16,
        mediaSection: 0.28,
        returnSection: 0.22,
        firstBaffle: 0.29,
        baffleFoot: 0.03,
        mediaBaffle: 0.275,
        lastBaffle: 0.22,
        returnLevel: 0.19,
        lift: 1.2,
        sockRim: 0.345,
        sockLength: 0.2,
        mediaHeight: 0.18,
      },
      { pump: pump(2.8, 3000, 42), outlet: hose({ lengthM: 1.9, boreM: 0.025, barbBoreM: 0.021 }) },
    ),
    packed(layers),
    { volumeM3: 0.4, feedKgPerS: gramsPerDay(3) },
  );

/** One well-packed filter of each family. */
export const familyModels: readonly (readonly [family: string, model: Model])[] = [
  ['canister with a stack of baskets', stackCanister()],
  ['canister in two halves', splitCanister()],
  ['canister with a tube in the middle', tubeCanister()],
  ['canister with a cartridge', cartridgeCanister()],
  ['hang-on-back', hangOnBack()],
  ['internal box', internalBox()],
  ['sump', sump()],
];

export const withTank = (model: Model, change: Partial<Tank>): Model => ({
  ...model,
  tank: { ...model.tank, ...change },
});

export const withFilter = (model: Model, change: Partial<Filter>): Model => ({
  ...model,
  filter: { ...model.filter, ...change },
});

export const withMeasurements = (model: Model, change: Measurements): Model =>
  withFilter(model, { measurements: { ...model.filter.measurements, ...change } });
