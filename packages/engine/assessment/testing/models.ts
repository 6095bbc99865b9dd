import { sizes } from '../../families/testing/sizes.ts';
import type { Filter, Measurements, Model, Tank } from '../../model/model.ts';
import { filterOf, gramsPerDay, hose, job, type Layer, type Layers, packed, pump } from './modelParts.ts';

export { days, gramsPerDay, hose, type Layer, litresPerHour, packed, pump } from './modelParts.ts';

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
    filterOf('central-tube-canister', sizes.tube, {
      pump: pump(1.3, 880, 14),
      intake: hose(),
      outlet: hose(),
    }),
    packed(layers),
  );

const wellPackedCartridge: Layers = { cartridge: [['foam-30ppi', 35]] };

/** A small canister with a cartridge. */
export const cartridgeCanister = (layers: Layers = wellPackedCartridge): Model =>
  job(
    filterOf('cartridge-canister', sizes.cartridge, {
      pump: pump(1.3, 550, 9),
      intake: hose(),
      outlet: hose(),
    }),
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
    filterOf('sump', sizes.sump, {
      pump: pump(2.8, 3000, 42),
      outlet: hose({ lengthM: 1.9, boreM: 0.025, barbBoreM: 0.021 }),
    }),
    packed(layers),
    { volumeM3: 0.4, feedKgPerS: gramsPerDay(3) },
  );

const wellPackedTower: Layers = {
  pad: [['coarse-pad', 20]],
  'layer-1': [['plastic-carrier-10mm', 200]],
  'layer-2': [['plastic-carrier-10mm', 200]],
};

/** A trickle tower over a box under a tank of 300 L. */
export const trickleTower = (layers: Layers = wellPackedTower): Model =>
  job(
    filterOf('trickle-tower', sizes.tower, {
      pump: pump(2.4, 1800, 28),
      outlet: hose({ lengthM: 1.8, boreM: 0.019, barbBoreM: 0.016 }),
    }),
    packed(layers),
    { volumeM3: 0.3, feedKgPerS: gramsPerDay(2.5) },
  );

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

/** The same with its media thrown away and not rinsed, as carbon that is bonded into a pad. */
export const thrownAway = (model: Model): Model => ({
  ...model,
  media: Object.fromEntries(
    Object.entries(model.media).map(([id, medium]) => [id, { ...medium, care: 'replace' as const }]),
  ),
});
