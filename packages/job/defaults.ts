import { hoses } from '@fettle/engine/catalogue/hoses.ts';
import type { Doubt } from '@fettle/engine/model/figure.ts';
import type { Dimension } from '@fettle/engine/quantities/dimensions.ts';
import { printBoth } from '@fettle/engine/quantities/printQuantity.ts';
import { readQuantity } from '@fettle/engine/quantities/readQuantity.ts';

/** A value taken where the document is silent. */
export interface Default {
  /** SI value. */
  readonly value: number;
  /** 95 % doubt in SI; absent where the value is a convention and not a guess. */
  readonly doubt?: Doubt;
  readonly because: string;
}

function stated(written: string, dimension: Dimension, because: string): Default {
  const reading = readQuantity(written, dimension);
  if (!reading.ok) throw new TypeError(`default ${written}: ${reading.says}`);
  const { value, doubt } = reading;
  return { value, because: `not stated: ${because}`, ...(doubt === undefined ? {} : { doubt }) };
}

/** Defaults that depend on nothing else in the job. */
export const defaults = {
  temperature: stated('25 ± 2 °C', 'temperature', 'most tropical tanks are kept near 25 °C, from memory'),
  pH: stated('7.4 ± 0.6', 'count', 'most tap water ends between 6.8 and 8 in a tank, from memory'),
  alkalinity: stated('5 ×/÷ 2 dKH', 'alkalinity', 'most tap water has 2.5 to 10 dKH, from memory'),
  salinity: stated('0', 'count', 'taken as fresh water'),
  oxygen: stated(
    '95 ± 5 %',
    'fraction',
    'tanks that are moved at the surface hold about 95 % of saturation, from memory',
  ),
  altitude: stated('0 m', 'length', 'taken at sea level'),
  protein: stated('45 ± 8 %', 'fraction', 'dry feeds hold 35 to 55 % protein, from memory'),
  waterChange: {
    value: 0.25 / (7 * 86_400),
    doubt: { kind: 'factor', size: 2 },
    because: 'not stated: 25 % once a week, common practice, no source',
  },
  airFlow: stated(
    '60 ×/÷ 1.8 L/h',
    'flow',
    'one outlet of a small air pump, throttled, gives about 60 L/h against 30 cm of water, from memory',
  ),
  airPower: stated('3 ×/÷ 1.6 W', 'power', 'air pumps of tanks take 2 to 5 W, from memory'),
  speed: stated('100 %', 'fraction', 'taken at full speed'),
  roughness: stated(
    '0.0015 ×/÷ 3 mm',
    'length',
    'drawn plastic tube is about 1.5 µm rough (Moody 1944, from memory); films make it rougher',
  ),
  extraLoss: stated('0', 'count', 'taken without coils and kinks'),
  coil: stated('30 ×/÷ 1.5 cm', 'length', 'hoses that are too long are coiled to about 30 cm, from memory'),
  hump: stated('12 ×/÷ 2 cm', 'length', 'hoses rise about a hand over the edge of the tank, from memory'),
  lidDepth: stated(
    '0.8 ×/÷ 1.4 m',
    'length',
    'a cabinet puts the lid about 80 cm below the water, from memory',
  ),
  intakeDepth: stated('30 ×/÷ 1.5 cm', 'length', 'intakes reach most of the way down, from memory'),
  returnDepth: stated('5 ×/÷ 2 cm', 'length', 'returns end a few centimetres under water, from memory'),
  outletLift: stated('0 m', 'length', 'taken to leave under water'),
  tariff: stated(
    '0.27 ×/÷ 1.3 GBP/kWh',
    'price-per-energy',
    'about what electricity cost in 2024 to 2026, from memory',
  ),
  labour: stated(
    '30 ×/÷ 1.5 GBP/h',
    'price-per-time',
    'a common rate for bench work, common practice, no source',
  ),
  life: stated('8 ×/÷ 1.5 a', 'time', 'filters of this kind are kept 5 to 12 years, from memory'),
} as const satisfies Readonly<Record<string, Default>>;

/** Doubt of a family's default shut-off head: pumps of one family differ that much; from memory. */
export const shutoffHeadDoubt: Doubt = { kind: 'factor', size: 1.5 };

/** Length of a hose run, m: a hose to a cabinet, or the intake tube of a filter that hangs on the tank. */
export const hoseLengths = {
  hose: stated('1.5 ×/÷ 1.5 m', 'length', 'a cabinet takes 1 to 2.2 m of hose on each side, from memory'),
  tube: stated(
    '0.2 ×/÷ 1.5 m',
    'length',
    'intake tubes of boxes that hang on the tank are about 20 cm long, from memory',
  ),
} as const satisfies Readonly<Record<string, Default>>;

/** Share of the hose's bore that its barbs leave. */
export const barbBoreRatio = 0.8;

/** Barbs of one size of hose differ by about a tenth; from memory. */
export const barbBoreDoubt: Doubt = { kind: 'factor', size: 1.1 };

/** Area of the water's surface, m², of a tank by its volume in m³: usual tanks hold 40 cm of water. */
export function surfaceFor(volumeM3: number): Default {
  return {
    value: volumeM3 / 0.4,
    doubt: { kind: 'factor', size: 1.4 },
    because: 'not stated: usual tanks hold about 40 cm of water, from memory',
  };
}

const litrePerHour = 1 / 3_600_000;

/** Bore of the hose, m, for a rated flow in m³/s above 0: the narrowest hose that is used for so much. */
export function boreFor(ratedFlowM3PerS: number): Default {
  const byUse = Object.values(hoses).toSorted(
    (one, other) =>
      one.usualFlow.mostM3PerS - other.usualFlow.mostM3PerS || other.boreM.value - one.boreM.value,
  );
  const fitting = byUse.find(({ usualFlow }) => ratedFlowM3PerS <= usualFlow.mostM3PerS * (1 + 1e-9));
  const widest = Math.max(...byUse.map(({ boreM }) => boreM.value));
  const value = fitting?.boreM.value ?? widest;
  return {
    value,
    doubt: { kind: 'factor', size: 1.25 },
    because: `not stated: ${printBoth({ value, dimension: 'length' })} is usual for pumps of ${printBoth({ value: ratedFlowM3PerS, dimension: 'flow' })}, from memory`,
  };
}

/** Electrical power, W, for a rated flow in m³/s above 0: 17.5 W for each 1000 L/h. */
export function powerFor(ratedFlowM3PerS: number): Default {
  return {
    value: (17.5 * ratedFlowM3PerS) / (1000 * litrePerHour),
    doubt: { kind: 'factor', size: 1.6 },
    because:
      'not stated: pumps with synchronous motors take about 17.5 W for each 1000 L/h of rated flow, from memory',
  };
}

/** Bore of the barbs, m, for a hose's bore in m; a tube has none, and so keeps its bore to the end. */
export function barbBoreFor(boreM: number, run: keyof typeof hoseLengths): Default {
  if (run === 'tube') return { value: boreM, because: 'not stated: an intake tube has no barbs' };
  return {
    value: barbBoreRatio * boreM,
    doubt: barbBoreDoubt,
    because: 'not stated: barbs leave about 0.8 of the bore of their hose, from memory',
  };
}

/** Doubts of bench readings where the document states none; common practice, no source. */
export const readingDoubts = {
  /** Stopwatch by hand, s. */
  timeS: 0.3,
  /** Filling to a line by eye, share of the volume. */
  lineRatio: 0.015,
  /** Scatter of single runs where there was one only, share of the time. */
  repeatRatio: 0.013,
  /** A flow that is told without its filling, share of it; common practice, no source. */
  flowRatio: 0.05,
  /** Plug meters: at least this many watts and this share of the reading. */
  powerW: 0.5,
  powerRatio: 0.02,
  /** Colour by eye, share of the strongest (from memory). */
  dyeRatio: 0.05,
  /** Start of a pulse and the moment of a reading, s. */
  dyeTimeS: 0.5,
  /** Height by tape, m. */
  headM: 0.02,
  /** Weighed water, share of the volume. */
  displacementRatio: 0.01,
} as const;

/** Fittings taken to be on a run where none are listed. */
export const assumedFittings = {
  because: 'not stated: the usual strainer in, and a plain end out, from memory',
  intake: ['strainer'],
  outlet: [],
} as const;
