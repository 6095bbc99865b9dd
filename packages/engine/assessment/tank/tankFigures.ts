import type { Figure } from '../../model/figure.ts';

const DAY_S = 86_400;

/** Figures of the tank about the filter, with doubt and source. */
export const tankFigures = {
  fishOxygenPerFeedRatio: {
    value: 0.4,
    doubt: { kind: 'factor', size: 1.5 },
    source: { kind: 'memory', text: 'oxygen that fed fish use for each kg of dry feed, 0.25–0.5 kg' },
  },
  wallAreaRatio: {
    value: 1,
    doubt: { kind: 'factor', size: 2 },
    source: { kind: 'memory', text: 'area of glass and ground against that of five plain faces' },
  },
  wallSlopeRatio: {
    value: 0.5,
    doubt: { kind: 'factor', size: 2 },
    source: { kind: 'memory', text: 'ours: slow water over glass against a bed at 10.8 m/h' },
  },
  plantUptakeKgNPerM3PerS: {
    value: 1e-4 / DAY_S,
    doubt: { kind: 'factor', size: 3 },
    source: {
      kind: 'memory',
      text: 'nitrogen that a planted tank takes up, 0.03–0.3 mg N/L a day without carbon dioxide added',
    },
  },
  lightPlantingRatio: {
    value: 0.4,
    doubt: { kind: 'factor', size: 2 },
    source: { kind: 'memory', text: 'ours: uptake of a lightly planted tank against a planted one' },
  },
  densePlantingRatio: {
    value: 2.5,
    doubt: { kind: 'factor', size: 2 },
    source: { kind: 'memory', text: 'ours: uptake of a densely planted tank against a planted one' },
  },
  plantHalfKgNPerM3: {
    value: 5e-5,
    doubt: { kind: 'factor', size: 3 },
    source: { kind: 'memory', text: 'level at which plants take up half of that' },
  },
  settlingPerS: {
    value: 0.01 / DAY_S,
    doubt: { kind: 'factor', size: 5 },
    source: {
      kind: 'memory',
      text: 'ours: share of all bacteria that a day sheds and that settle anew over all areas alike',
    },
  },
  inoculumRatio: {
    value: 3e-7,
    doubt: { kind: 'factor', size: 10 },
    source: {
      kind: 'common-practice',
      text: 'bacteria that drift into a new tank, against those of a ripe one: set once so that it is through in 4–6 weeks at 24–27 °C',
    },
  },
  surfaceTransferMPerS: {
    value: 1e-5,
    doubt: { kind: 'factor', size: 2 },
    source: {
      kind: 'memory',
      text: 'film of a surface that an outlet keeps moving, 0.02–0.07 m/h; still water has a third of it',
    },
  },
  tapKeptRatio: {
    value: 0.6,
    doubt: { kind: 'factor', size: 1.6 },
    source: {
      kind: 'common-practice',
      text: 'rinsed hard in tap water against gently in tank water; chlorine or the jet, both are blamed',
    },
  },
} as const satisfies Readonly<Record<string, Figure>>;

/** The value of every figure of the tank, in SI. */
export type TankFigures = Readonly<Record<keyof typeof tankFigures, number>>;

/** The figures as they are taken where nothing is drawn. */
export const usualTankFigures: TankFigures = Object.fromEntries(
  Object.entries(tankFigures).map(([name, { value }]) => [name, value]),
) as Record<keyof typeof tankFigures, number>;
