import type { Exponents } from './dimensions.ts';

/** One unit that is not made of others in writing. `si = (number + offset) × factor`. */
export interface UnitEntry {
  /** The spelling that we print. */
  readonly spelled: string;
  readonly factor: number;
  /** Added to the number before the factor; temperatures only. */
  readonly offset?: number;
  readonly exponents: Exponents;
  readonly aliases: readonly string[];
}

const length: Exponents = [1, 0, 0, 0, 0];
const area: Exponents = [2, 0, 0, 0, 0];
const volume: Exponents = [3, 0, 0, 0, 0];
const mass: Exponents = [0, 1, 0, 0, 0];
const time: Exponents = [0, 0, 1, 0, 0];
const temperature: Exponents = [0, 0, 0, 1, 0];
const pressure: Exponents = [-1, 1, -2, 0, 0];
const power: Exponents = [2, 1, -3, 0, 0];
const energy: Exponents = [2, 1, -2, 0, 0];
const concentration: Exponents = [-3, 1, 0, 0, 0];
const viscosity: Exponents = [-1, 1, -1, 0, 0];

// Exact by definition: NIST Special Publication 811 (2008), appendix B: inch 25.4 mm, pound 0.453 592 37 kg,
// US gallon 231 cubic inches, imperial gallon 4.546 09 L, standard gravity 9.806 65 m/s2.
const inch = 0.0254;
const foot = 0.3048;
const pound = 0.45359237;
const usGallon = 3.785411784e-3;
const imperialGallon = 4.54609e-3;
const gravity = 9.80665;
const day = 86400;
// UCUM: the year `a` is the Julian year, the month `mo` its twelfth.
const year = 365.25 * day;

/** Every unit that stands alone in writing, with its exact factor to SI. */
export const unitTable: readonly UnitEntry[] = [
  { spelled: 'µm', factor: 1e-6, exponents: length, aliases: ['μm', 'um', 'micron', 'microns'] },
  {
    spelled: 'mm',
    factor: 1e-3,
    exponents: length,
    aliases: ['millimetre', 'millimetres', 'millimeter', 'millimeters'],
  },
  {
    spelled: 'cm',
    factor: 1e-2,
    exponents: length,
    aliases: ['centimetre', 'centimetres', 'centimeter', 'centimeters'],
  },
  { spelled: 'm', factor: 1, exponents: length, aliases: ['metre', 'metres', 'meter', 'meters'] },
  { spelled: 'km', factor: 1e3, exponents: length, aliases: [] },
  { spelled: 'in', factor: inch, exponents: length, aliases: ['inch', 'inches', '"'] },
  { spelled: 'ft', factor: foot, exponents: length, aliases: ['foot', 'feet', "'"] },
  { spelled: 'm2', factor: 1, exponents: area, aliases: ['sqm', 'sq m'] },
  { spelled: 'cm2', factor: 1e-4, exponents: area, aliases: ['sq cm'] },
  { spelled: 'in2', factor: inch * inch, exponents: area, aliases: ['sq in', 'square inches'] },
  { spelled: 'ft2', factor: foot * foot, exponents: area, aliases: ['sq ft', 'square feet'] },
  {
    spelled: 'L',
    factor: 1e-3,
    exponents: volume,
    aliases: ['l', 'ltr', 'litre', 'litres', 'liter', 'liters', 'dm3'],
  },
  {
    spelled: 'mL',
    factor: 1e-6,
    exponents: volume,
    aliases: ['ml', 'cc', 'millilitre', 'millilitres', 'milliliter', 'milliliters'],
  },
  { spelled: 'cL', factor: 1e-5, exponents: volume, aliases: ['cl'] },
  { spelled: 'm3', factor: 1, exponents: volume, aliases: ['cbm', 'cu m'] },
  { spelled: 'in3', factor: inch ** 3, exponents: volume, aliases: ['cu in', 'cubic inches'] },
  { spelled: 'ft3', factor: foot ** 3, exponents: volume, aliases: ['cu ft', 'cubic feet'] },
  {
    spelled: 'US gal',
    factor: usGallon,
    exponents: volume,
    aliases: ['USgal', 'US gallon', 'US gallons', 'gal US', 'gallon US', 'gallons US', 'US liquid gallon'],
  },
  {
    spelled: 'imp gal',
    factor: imperialGallon,
    exponents: volume,
    aliases: [
      'UK gal',
      'imp gallon',
      'imp gallons',
      'imperial gal',
      'imperial gallon',
      'imperial gallons',
      'UK gallon',
      'UK gallons',
      'gal imp',
      'gal UK',
      'gallons UK',
      'gallons imp',
    ],
  },
  {
    spelled: 'US fl oz',
    factor: usGallon / 128,
    exponents: volume,
    aliases: ['US fluid ounce', 'US fluid ounces', 'fl oz US'],
  },
  {
    spelled: 'imp fl oz',
    factor: imperialGallon / 160,
    exponents: volume,
    aliases: ['UK fl oz', 'imperial fluid ounce', 'imperial fluid ounces', 'fl oz imp', 'fl oz UK'],
  },
  {
    spelled: 'US qt',
    factor: usGallon / 4,
    exponents: volume,
    aliases: ['US quart', 'US quarts'],
  },
  {
    spelled: 'US pt',
    factor: usGallon / 8,
    exponents: volume,
    aliases: ['US pint', 'US pints'],
  },
  { spelled: 'US cup', factor: usGallon / 16, exponents: volume, aliases: ['US cups'] },
  {
    spelled: 'imp qt',
    factor: imperialGallon / 4,
    exponents: volume,
    aliases: ['UK qt', 'imperial quart', 'imperial quarts', 'UK quart', 'UK quarts'],
  },
  {
    spelled: 'imp pt',
    factor: imperialGallon / 8,
    exponents: volume,
    aliases: ['UK pt', 'imperial pint', 'imperial pints', 'UK pint', 'UK pints'],
  },
  { spelled: 'µg', factor: 1e-9, exponents: mass, aliases: ['μg', 'ug', 'mcg'] },
  { spelled: 'mg', factor: 1e-6, exponents: mass, aliases: ['milligram', 'milligrams'] },
  { spelled: 'g', factor: 1e-3, exponents: mass, aliases: ['gram', 'grams', 'gr', 'gm'] },
  { spelled: 'kg', factor: 1, exponents: mass, aliases: ['kilo', 'kilos', 'kilogram', 'kilograms', 'kgs'] },
  { spelled: 'oz', factor: pound / 16, exponents: mass, aliases: ['ounce', 'ounces'] },
  { spelled: 'lb', factor: pound, exponents: mass, aliases: ['lbs', 'pound', 'pounds'] },
  { spelled: 's', factor: 1, exponents: time, aliases: ['sec', 'secs', 'second', 'seconds'] },
  { spelled: 'min', factor: 60, exponents: time, aliases: ['mins', 'minute', 'minutes'] },
  { spelled: 'h', factor: 3600, exponents: time, aliases: ['hr', 'hrs', 'hour', 'hours'] },
  { spelled: 'd', factor: day, exponents: time, aliases: ['day', 'days'] },
  { spelled: 'week', factor: 7 * day, exponents: time, aliases: ['weeks', 'wk', 'wks'] },
  { spelled: 'month', factor: year / 12, exponents: time, aliases: ['months', 'mo'] },
  { spelled: 'a', factor: year, exponents: time, aliases: ['yr', 'yrs', 'year', 'years', 'annum'] },
  {
    spelled: '°C',
    factor: 1,
    offset: 273.15,
    exponents: temperature,
    aliases: ['C', 'degC', 'deg C', '° C', 'celsius', 'degrees C', 'degrees celsius'],
  },
  {
    spelled: '°F',
    factor: 5 / 9,
    offset: 459.67,
    exponents: temperature,
    aliases: ['F', 'degF', 'deg F', '° F', 'fahrenheit', 'degrees F', 'degrees fahrenheit'],
  },
  { spelled: 'K', factor: 1, exponents: temperature, aliases: ['kelvin'] },
  { spelled: 'Pa', factor: 1, exponents: pressure, aliases: ['pascal', 'pascals'] },
  { spelled: 'mPa', factor: 1e-3, exponents: pressure, aliases: [] },
  { spelled: 'hPa', factor: 100, exponents: pressure, aliases: [] },
  { spelled: 'kPa', factor: 1e3, exponents: pressure, aliases: [] },
  { spelled: 'mbar', factor: 100, exponents: pressure, aliases: ['millibar', 'millibars'] },
  { spelled: 'bar', factor: 1e5, exponents: pressure, aliases: ['bars'] },
  { spelled: 'atm', factor: 101325, exponents: pressure, aliases: [] },
  { spelled: 'psi', factor: (pound * gravity) / (inch * inch), exponents: pressure, aliases: ['lbf/in2'] },
  // Conventional water of 1000 kg/m3 at standard gravity.
  { spelled: 'mmH2O', factor: gravity, exponents: pressure, aliases: ['mm H2O', 'mm water', 'mmWC'] },
  { spelled: 'cmH2O', factor: 10 * gravity, exponents: pressure, aliases: ['cm H2O', 'cm water', 'cmWC'] },
  { spelled: 'mH2O', factor: 1e3 * gravity, exponents: pressure, aliases: ['m H2O', 'm water', 'mWC'] },
  {
    spelled: 'inH2O',
    factor: 1e3 * inch * gravity,
    exponents: pressure,
    aliases: ['in H2O', 'in water', 'inWC'],
  },
  {
    spelled: 'ftH2O',
    factor: 1e3 * foot * gravity,
    exponents: pressure,
    aliases: ['ft H2O', 'ft water', 'ftWC'],
  },
  { spelled: 'mW', factor: 1e-3, exponents: power, aliases: [] },
  { spelled: 'W', factor: 1, exponents: power, aliases: ['watt', 'watts'] },
  { spelled: 'kW', factor: 1e3, exponents: power, aliases: [] },
  { spelled: 'J', factor: 1, exponents: energy, aliases: ['joule', 'joules'] },
  { spelled: 'kJ', factor: 1e3, exponents: energy, aliases: [] },
  { spelled: 'MJ', factor: 1e6, exponents: energy, aliases: [] },
  { spelled: 'Wh', factor: 3600, exponents: energy, aliases: [] },
  { spelled: 'kWh', factor: 3.6e6, exponents: energy, aliases: ['unit of electricity'] },
  // Parts per million by mass in water, taken at 1 kg/L as the trade does.
  { spelled: 'ppm', factor: 1e-3, exponents: concentration, aliases: [] },
  { spelled: 'cP', factor: 1e-3, exponents: viscosity, aliases: [] },
];

/** Spellings that stand for a compound. */
export const compoundAliases: Readonly<Record<string, string>> = {
  lph: 'L/h',
  'ltr/hr': 'L/h',
  lpm: 'L/min',
  gph: 'gal/h',
  gpm: 'gal/min',
  gpd: 'gal/d',
  'US gph': 'US gal/h',
  'US gpm': 'US gal/min',
  'US gpd': 'US gal/d',
  'gph US': 'US gal/h',
  'gpm US': 'US gal/min',
  'gpm UK': 'imp gal/min',
  'gpm imp': 'imp gal/min',
  'imp gph': 'imp gal/h',
  'imp gpm': 'imp gal/min',
  'UK gph': 'imp gal/h',
  'UK gpm': 'imp gal/min',
  'gph UK': 'imp gal/h',
  'gph imp': 'imp gal/h',
  cfm: 'ft3/min',
  'Pa s': 'Pa.s',
  'mPa s': 'mPa.s',
  'N.s/m2': 'Pa.s',
};

/** Spellings that more than one unit answers to: the question is put, never answered. */
export const ambiguousUnits: Readonly<Record<string, readonly string[]>> = {
  gal: ['US gal', 'imp gal'],
  gals: ['US gal', 'imp gal'],
  gallon: ['US gal', 'imp gal'],
  gallons: ['US gal', 'imp gal'],
  'fl oz': ['US fl oz', 'imp fl oz'],
  floz: ['US fl oz', 'imp fl oz'],
  'fluid ounce': ['US fl oz', 'imp fl oz'],
  'fluid ounces': ['US fl oz', 'imp fl oz'],
  pt: ['US pt', 'imp pt'],
  pint: ['US pt', 'imp pt'],
  pints: ['US pt', 'imp pt'],
  qt: ['US qt', 'imp qt'],
  quart: ['US qt', 'imp qt'],
  quarts: ['US qt', 'imp qt'],
  cup: ['US cup', 'mL'],
  cups: ['US cup', 'mL'],
  tbsp: ['mL'],
  tsp: ['mL'],
  '°': ['°C', '°F'],
  deg: ['°C', '°F'],
  degrees: ['°C', '°F'],
  $: ['USD', 'CAD', 'AUD'],
  '¥': ['JPY', 'CNY'],
  kr: ['SEK', 'NOK', 'DKK'],
};

/** Units that fit a dimension in speech only, so that they are asked about there. */
export const ambiguousIn: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  volume: { oz: ['US fl oz', 'imp fl oz'] },
  time: { m: ['min', 'month'] },
  alkalinity: {
    'mg/L': ['mg/L CaCO3', 'dKH'],
    ppm: ['ppm CaCO3', 'dKH'],
  },
};

/** Spellings that look like units of something that they do not measure. */
export const notUnits: Readonly<Record<string, string>> = {
  ppi: 'counts pores per inch of a foam and is not a length or a cell size',
  VA: 'is apparent power, which is more than the watts that the meter counts',
};
