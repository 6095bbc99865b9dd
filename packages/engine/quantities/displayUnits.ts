import type { Dimension } from './dimensions.ts';

/** The system of units in which figures are shown. */
export type System = 'metric' | 'us';

/** A unit, and the SI size from which it is the one to show; the last of a list has none. */
export interface DisplayUnit {
  readonly unit: string;
  readonly from?: number;
}

type Both = Readonly<Record<System, readonly DisplayUnit[]>>;

const same = (...units: readonly DisplayUnit[]): Both => ({ metric: units, us: units });

const usGallon = 3.785411784e-3;
const foot = 0.3048;
const pound = 0.45359237;
const hour = 3600;
const day = 24 * hour;

/** Units in which each dimension is shown, largest first. Those with money are put behind the currency. */
export const displayUnits: Readonly<Record<Dimension, Both>> = {
  length: {
    metric: [{ unit: 'm', from: 1 }, { unit: 'cm', from: 0.1 }, { unit: 'mm' }],
    us: [{ unit: 'ft', from: 3 * foot }, { unit: 'in' }],
  },
  area: {
    metric: [{ unit: 'm2', from: 0.1 }, { unit: 'cm2' }],
    us: [{ unit: 'ft2', from: foot * foot }, { unit: 'in2' }],
  },
  volume: {
    metric: [{ unit: 'm3', from: 10 }, { unit: 'L', from: 1e-3 }, { unit: 'mL' }],
    us: [{ unit: 'US gal', from: usGallon / 4 }, { unit: 'US fl oz' }],
  },
  flow: {
    metric: [{ unit: 'm3/h', from: 100 / hour }, { unit: 'L/h' }],
    us: [{ unit: 'US gal/h' }],
  },
  velocity: {
    metric: [{ unit: 'm/s', from: 1 }, { unit: 'cm/s', from: 0.01 }, { unit: 'mm/s' }],
    us: [{ unit: 'ft/s', from: foot }, { unit: 'in/s' }],
  },
  mass: {
    metric: [{ unit: 'kg', from: 1 }, { unit: 'g', from: 1e-3 }, { unit: 'mg' }],
    us: [{ unit: 'lb', from: pound }, { unit: 'oz' }],
  },
  time: same(
    { unit: 'a', from: 731 * day },
    { unit: 'd', from: 2 * day },
    { unit: 'h', from: 2 * hour },
    { unit: 'min', from: 120 },
    { unit: 's' },
  ),
  temperature: { metric: [{ unit: '°C' }], us: [{ unit: '°F' }] },
  'temperature-difference': { metric: [{ unit: '°C' }], us: [{ unit: '°F' }] },
  pressure: { metric: [{ unit: 'kPa', from: 1000 }, { unit: 'Pa' }], us: [{ unit: 'psi' }] },
  power: same({ unit: 'kW', from: 1000 }, { unit: 'W' }),
  energy: same({ unit: 'kWh', from: 3.6e5 }, { unit: 'Wh', from: 3600 }, { unit: 'J' }),
  concentration: same({ unit: 'g/L', from: 1 }, { unit: 'mg/L' }),
  alkalinity: { metric: [{ unit: 'dKH' }], us: [{ unit: 'ppm CaCO3' }] },
  fraction: same({ unit: '%' }),
  // Fish food is weighed in grams everywhere, and what feeds a small tank stands beside what feeds a large one.
  'mass-rate': same({ unit: 'g/d', from: 1e-5 / day }, { unit: 'mg/d' }),
  'specific-area': { metric: [{ unit: 'm2/m3' }], us: [{ unit: 'ft2/ft3' }] },
  'area-per-mass': { metric: [{ unit: 'm2/g' }], us: [{ unit: 'ft2/lb' }] },
  density: { metric: [{ unit: 'kg/m3' }], us: [{ unit: 'lb/ft3' }] },
  viscosity: same({ unit: 'mPa.s' }),
  rate: same({ unit: '1/h', from: 0.1 / hour }, { unit: '1/d' }),
  'flow-resistance': same({ unit: 's2/m5' }),
  money: same({ unit: '' }),
  'price-per-volume': { metric: [{ unit: '/L' }], us: [{ unit: '/US gal' }] },
  'price-per-energy': same({ unit: '/kWh' }),
  'price-per-time': same({ unit: '/h' }),
  'price-per-mass': { metric: [{ unit: '/kg' }], us: [{ unit: '/lb' }] },
  count: same({ unit: '' }),
  'mass-ratio': same({ unit: 'mg/g' }),
};
