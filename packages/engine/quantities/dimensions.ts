/** What kind of quantity a number is. */
export type Dimension =
  | 'length'
  | 'area'
  | 'volume'
  | 'flow'
  | 'velocity'
  | 'mass'
  | 'time'
  | 'temperature'
  | 'temperature-difference'
  | 'pressure'
  | 'power'
  | 'energy'
  | 'concentration'
  | 'alkalinity'
  | 'fraction'
  | 'mass-rate'
  | 'specific-area'
  | 'area-per-mass'
  | 'density'
  | 'viscosity'
  | 'rate'
  | 'flow-resistance'
  | 'money'
  | 'price-per-volume'
  | 'price-per-energy'
  | 'price-per-time'
  | 'price-per-mass'
  | 'count'
  | 'mass-ratio';

/** Powers of metre, kilogram, second, kelvin and money that make up a unit. */
export type Exponents = readonly [number, number, number, number, number];

/** One dimension: its make-up, its name with the article, and the units that people usually write. */
export interface DimensionFacts {
  readonly exponents: Exponents;
  readonly noun: string;
  /** The unit of `value` in a reading. */
  readonly si: string;
  /** The first five are named in messages. */
  readonly usual: readonly string[];
}

export const dimensionFacts: Readonly<Record<Dimension, DimensionFacts>> = {
  length: {
    exponents: [1, 0, 0, 0, 0],
    noun: 'a length',
    si: 'm',
    usual: ['mm', 'cm', 'm', 'in', 'ft', 'µm', 'km'],
  },
  area: {
    exponents: [2, 0, 0, 0, 0],
    noun: 'an area',
    si: 'm2',
    usual: ['mm2', 'cm2', 'm2', 'in2', 'ft2'],
  },
  volume: {
    exponents: [3, 0, 0, 0, 0],
    noun: 'a volume',
    si: 'm3',
    usual: [
      'mL',
      'L',
      'm3',
      'US gal',
      'imp gal',
      'US fl oz',
      'imp fl oz',
      'cm3',
      'in3',
      'ft3',
      'US qt',
      'US pt',
      'US cup',
      'imp qt',
      'imp pt',
    ],
  },
  flow: {
    exponents: [3, 0, -1, 0, 0],
    noun: 'a flow',
    si: 'm3/s',
    usual: [
      'L/h',
      'L/min',
      'm3/h',
      'US gal/h',
      'imp gal/h',
      'mL/min',
      'mL/s',
      'L/s',
      'm3/s',
      'US gal/min',
      'imp gal/min',
      'ft3/min',
      'L/d',
    ],
  },
  velocity: {
    exponents: [1, 0, -1, 0, 0],
    noun: 'a velocity',
    si: 'm/s',
    usual: ['mm/s', 'cm/s', 'm/s', 'm/h', 'ft/s', 'cm/min', 'm/d', 'in/s'],
  },
  mass: {
    exponents: [0, 1, 0, 0, 0],
    noun: 'a mass',
    si: 'kg',
    usual: ['mg', 'g', 'kg', 'oz', 'lb', 'µg'],
  },
  time: {
    exponents: [0, 0, 1, 0, 0],
    noun: 'a time',
    si: 's',
    usual: ['s', 'min', 'h', 'd', 'week', 'month', 'a'],
  },
  temperature: {
    exponents: [0, 0, 0, 1, 0],
    noun: 'a temperature',
    si: 'K',
    usual: ['°C', '°F', 'K'],
  },
  'temperature-difference': {
    exponents: [0, 0, 0, 1, 0],
    noun: 'a temperature difference',
    si: 'K',
    usual: ['°C', '°F', 'K'],
  },
  pressure: {
    exponents: [-1, 1, -2, 0, 0],
    noun: 'a pressure',
    si: 'Pa',
    usual: ['Pa', 'kPa', 'mbar', 'psi', 'mmH2O', 'bar', 'hPa', 'cmH2O', 'mH2O', 'inH2O', 'ftH2O', 'atm'],
  },
  power: {
    exponents: [2, 1, -3, 0, 0],
    noun: 'a power',
    si: 'W',
    usual: ['W', 'kW', 'kWh/a', 'mW', 'kWh/d'],
  },
  energy: {
    exponents: [2, 1, -2, 0, 0],
    noun: 'an energy',
    si: 'J',
    usual: ['kWh', 'Wh', 'J', 'kJ', 'MJ'],
  },
  concentration: {
    exponents: [-3, 1, 0, 0, 0],
    noun: 'a concentration',
    si: 'kg/m3',
    usual: ['mg/L', 'ppm', 'g/L', 'µg/L', 'kg/m3', 'mg/mL'],
  },
  alkalinity: {
    exponents: [-3, 1, 0, 0, 0],
    noun: 'an alkalinity',
    si: 'kg/m3 CaCO3',
    usual: ['dKH', '°dH', 'mg/L CaCO3', 'ppm CaCO3', 'meq/L'],
  },
  fraction: {
    exponents: [0, 0, 0, 0, 0],
    noun: 'a fraction',
    si: '1',
    usual: ['%'],
  },
  'mass-rate': {
    exponents: [0, 1, -1, 0, 0],
    noun: 'a mass per time',
    si: 'kg/s',
    usual: ['g/d', 'g/day', 'mg/h', 'g/week', 'kg/a', 'mg/d', 'oz/d', 'lb/a'],
  },
  'specific-area': {
    exponents: [-1, 0, 0, 0, 0],
    noun: 'an area per volume',
    si: 'm2/m3',
    usual: ['m2/m3', 'm2/L', 'ft2/ft3', 'cm2/cm3', 'm2/US gal'],
  },
  'area-per-mass': {
    exponents: [2, -1, 0, 0, 0],
    noun: 'an area per mass',
    si: 'm2/kg',
    usual: ['m2/g', 'm2/kg', 'ft2/lb'],
  },
  density: {
    exponents: [-3, 1, 0, 0, 0],
    noun: 'a density',
    si: 'kg/m3',
    usual: ['g/L', 'kg/m3', 'kg/L', 'lb/ft3', 'g/cm3', 'lb/US gal', 'oz/US gal'],
  },
  viscosity: {
    exponents: [-1, 1, -1, 0, 0],
    noun: 'a viscosity',
    si: 'Pa.s',
    usual: ['mPa.s', 'Pa.s', 'cP'],
  },
  rate: {
    exponents: [0, 0, -1, 0, 0],
    noun: 'a rate per time',
    si: '1/s',
    usual: ['1/h', '1/d', '%/week', '%/d', '1/s', '1/min'],
  },
  'flow-resistance': {
    exponents: [-5, 0, 2, 0, 0],
    noun: 'a flow resistance (head over flow squared)',
    si: 's2/m5',
    usual: ['s2/m5', 'h2/m5'],
  },
  money: { exponents: [0, 0, 0, 0, 1], noun: 'a sum of money', si: '1', usual: ['GBP', 'EUR', 'USD'] },
  'price-per-volume': {
    exponents: [-3, 0, 0, 0, 1],
    noun: 'a price per volume',
    si: '1/m3',
    usual: ['GBP/L', 'EUR/L', 'USD/US gal', 'GBP/m3'],
  },
  'price-per-energy': {
    exponents: [-2, -1, 2, 0, 1],
    noun: 'a price per energy',
    si: '1/J',
    usual: ['GBP/kWh', 'EUR/kWh', 'USD/kWh', 'p/kWh'],
  },
  'price-per-time': {
    exponents: [0, 0, -1, 0, 1],
    noun: 'a price per time',
    si: '1/s',
    usual: ['GBP/h', 'EUR/h', 'USD/h', 'GBP/a'],
  },
  'price-per-mass': {
    exponents: [0, -1, 0, 0, 1],
    noun: 'a price per mass',
    si: '1/kg',
    usual: ['GBP/kg', 'EUR/kg', 'USD/lb', 'GBP/g'],
  },
  count: { exponents: [0, 0, 0, 0, 0], noun: 'a plain number', si: '1', usual: [] },
  'mass-ratio': {
    exponents: [0, 0, 0, 0, 0],
    noun: 'a mass per mass',
    si: 'kg/kg',
    usual: ['mg/g', 'g/kg', '%', 'mg/kg'],
  },
};

/** True where both have the same make-up. */
export function sameExponents(one: Exponents, other: Exponents): boolean {
  return one.every((power, at) => power === other[at]);
}

function isDimension(text: string): text is Dimension {
  return Object.hasOwn(dimensionFacts, text);
}

/** All dimensions, in the order of the table. */
export const dimensions: readonly Dimension[] = Object.keys(dimensionFacts).filter(isDimension);

/** Names, with article, the first dimension of this make-up; `undefined` where it is none of ours. */
export function nounOf(exponents: Exponents): string | undefined {
  const found = dimensions.find((each) => sameExponents(dimensionFacts[each].exponents, exponents));
  return found && dimensionFacts[found].noun;
}

/** Lists the usual units of a dimension for a message: "mm, cm, m, in or ft". */
export function usualUnits(dimension: Dimension): string {
  const named = dimensionFacts[dimension].usual.slice(0, 5);
  if (dimension === 'count') return 'a plain number without unit';
  if (dimension === 'fraction') return '% or a plain number from 0 to 1';
  if (named.length < 2) return named.join('');
  return `${named.slice(0, -1).join(', ')} or ${named.at(-1)}`;
}
