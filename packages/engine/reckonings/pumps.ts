import { pumpHeadTwoPoint } from '../laws/hydraulics/pump.ts';
import { timedFlow } from '../learning/timedFlow.ts';
import type { Quantity } from '../quantities/readQuantity.ts';
import { quantity, quantityOr, reading, readings } from './inputs.ts';
import { reckoning } from './reckoning.ts';

const commonPractice = 'common practice, no source';

export const pumpDuty = reckoning({
  name: 'pump-duty',
  says: 'Where the curve of a pump, known by its two ends, meets a lift and a resistance.',
  formula: 'H₀(1 − (Q/Q₀)²) = h + R·Q²',
  inputs: {
    shutoff: quantity('length', { label: 'head at no flow', example: '1.2 m', above: '0 m' }),
    maxFlow: quantity('flow', { label: 'flow at no head', example: '1000 L/h', above: '0 L/h' }),
    resistance: quantity('flow-resistance', {
      label: 'resistance, head over the square of the flow',
      example: '1.2e7 s2/m5',
      least: '0 s2/m5',
    }),
    lift: quantityOr('length', {
      label: 'lift of the outlet above the water that the pump draws from',
      example: '10 cm',
      least: '0 m',
      otherwise: '0 m',
    }),
  },
  results: {
    flow: { label: 'flow', unit: 'L/h', dimension: 'flow' },
    head: { label: 'head of the pump', unit: 'm', dimension: 'length' },
  },
  source: `${commonPractice}, for the curve; the rest is arithmetic`,
  compute: ({ shutoff, maxFlow, resistance, lift }) => {
    if (lift >= shutoff)
      return {
        answers: { flow: 0, head: shutoff },
        notes: ['The pump cannot lift water so high: nothing flows.'],
      };
    const flow = Math.sqrt((shutoff - lift) / (resistance + shutoff / maxFlow ** 2));
    const head = pumpHeadTwoPoint({ flowM3PerS: flow, shutoffHeadM: shutoff, freeFlowM3PerS: maxFlow });
    // With nothing to overcome the head is 0, and arithmetic may leave a shade less.
    return { answers: { flow, head: Math.max(0, head) } };
  },
  examples: [
    {
      source: 'H₀(1 − (Q/Q₀)²) = R·Q² solved for Q',
      seen: 'formula',
      inputs: { shutoff: '2 m', maxFlow: '1200 L/h', resistance: '8e6 s2/m5' },
      expected: { flow: '998.46 L/h', head: '0.6154 m' },
    },
  ],
});

/** Scatter of single runs where there was one only, 95 %, share of the time: careful runs. */
const SCATTER_OF_ONE_RUN = 0.013;

/** Half-width of a doubt as written, SI; 0 where none is. */
const halfWidth = ({ value, doubt }: Quantity): number => {
  if (doubt === undefined) return 0;
  return doubt.kind === 'plus-minus' ? doubt.size : value * (doubt.size - 1);
};

export const timedFilling = reckoning({
  name: 'timed-flow',
  says: 'Flow from the times in which it fills a known volume, with its doubt.',
  formula: 'Q = V/t̄, U = t(ν)·Q·√((u_V/V)² + (s/(√n·t̄))² + (u_t/t̄)²)',
  inputs: {
    volume: reading('volume', { label: 'volume filled', example: '10 ± 0.1 L', above: '0 L' }),
    time: readings('time', {
      label: 'time of a run',
      example: '31.2 s',
      examples: ['31.2 s', '30.8 s', '31.1 s'],
      above: '0 s',
    }),
  },
  results: {
    flow: { label: 'flow', unit: 'L/h', dimension: 'flow' },
    doubt: { label: 'doubt (95 %), half-width', unit: 'L/h', dimension: 'flow', digits: 2 },
  },
  source: 'JCGM 100:2008, Guide to the expression of uncertainty in measurement, 4.2, 5.1.2 and G.4.1',
  compute: ({ volume, time }) => {
    const { flowM3PerS, doubtM3PerS } = timedFlow({
      volumeM3: volume.value,
      volumeDoubtM3: halfWidth(volume),
      timesS: time.map(({ value }) => value),
      readingDoubtS: Math.max(...time.map(halfWidth)),
      assumedScatterRatio: SCATTER_OF_ONE_RUN,
    });
    const oneRun = 'One run does not show how runs scatter: 1.3 % is assumed (common practice, no source).';
    const alike = 'All runs read the same: state how well the watch is read, as in time="31 ± 0.3 s".';
    const bare = time.every((each) => each.doubt === undefined);
    const same = time.length > 1 && bare && time.every(({ value }) => value === time[0]?.value);
    const notes = time.length === 1 ? [oneRun] : same ? [alike] : [];
    return { answers: { flow: flowM3PerS, doubt: doubtM3PerS }, notes };
  },
  examples: [
    {
      source: 'JCGM 100:2008, table G.2: t 4.53 at two degrees of freedom; 0.2 s of scatter over √3 on 31 s',
      seen: 'formula',
      inputs: { volume: '10 L', time: ['31.2 s', '30.8 s', '31.0 s'] },
      expected: { flow: '1161.3 L/h', doubt: '19.6 L/h' },
    },
  ],
});

/** Turnovers after which 99 % of the water has been through: ln 100. */
const TURNOVERS_TO_99_PERCENT = Math.log(100);

export const turnover = reckoning({
  name: 'turnover',
  says: 'How often the volume passes the filter, and when 99 % of the water has been through it.',
  formula: 'n = Q/V, t₉₉ = ln 100·V/Q = 4.605·V/Q',
  inputs: {
    flow: quantity('flow', { label: 'flow', example: '600 L/h', least: '0 L/h' }),
    volume: quantity('volume', { label: 'volume of water', example: '180 L', above: '0 L' }),
  },
  results: {
    turnover: { label: 'turnover', unit: '1/h', dimension: 'rate', digits: 3 },
    mixing99: { label: 'time until 99 % has been through', unit: 'h', dimension: 'time', digits: 3 },
  },
  source: 'dilution of a well-mixed volume, exact',
  compute: ({ flow, volume }) =>
    flow === 0
      ? { answers: { turnover: 0 }, notes: ['No water flows, so it never gets through.'] }
      : { answers: { turnover: flow / volume, mixing99: (TURNOVERS_TO_99_PERCENT * volume) / flow } },
  examples: [
    {
      source: 'dilution of a well-mixed volume: ln 100 = 4.60517',
      seen: 'formula',
      inputs: { flow: '600 L/h', volume: '100 L' },
      expected: { turnover: '6.000 1/h', mixing99: '0.76753 h' },
    },
  ],
});

const HOURS_PER_YEAR = 365 * 24;
const JOULES_PER_KILOWATT_HOUR = 3.6e6;

export const powerCost = reckoning({
  name: 'power-cost',
  says: 'What a machine that runs all the time uses and costs in a year of 365 days.',
  formula: 'E = P·24 h·365, cost = E·tariff',
  inputs: {
    power: quantity('power', { label: 'power at the plug', example: '10 W', least: '0 W' }),
    tariff: reading('price-per-energy', {
      label: 'price of electricity',
      example: '0.27 GBP/kWh',
      least: '0 GBP/kWh',
    }),
  },
  results: {
    energy: { label: 'energy in a year' },
    cost: { label: 'cost in a year' },
  },
  source: 'arithmetic; a year is 365 days here',
  compute: ({ power, tariff }) => {
    const energy = (power * HOURS_PER_YEAR) / 1000;
    const unit = tariff.currency ?? 'GBP';
    return {
      answers: {
        energy: { value: energy, unit: 'kWh/a' },
        cost: { value: energy * JOULES_PER_KILOWATT_HOUR * tariff.value, unit },
      },
    };
  },
  examples: [
    {
      source: 'arithmetic: 10 W · 8760 h',
      seen: 'formula',
      inputs: { power: '10 W', tariff: '0.25 GBP/kWh' },
      expected: { energy: '87.6 kWh/a', cost: '21.90 GBP' },
    },
  ],
});
