import type { Figure, Source } from '../model/figure.ts';
import { fromMemory, plusMinus } from './figureOf.ts';

/** A hose as sold. */
export interface Hose {
  readonly id: string;
  readonly name: string;
  /** Inside diameter, m. */
  readonly boreM: Figure;
  /** Outside diameter that usually goes with it, m. */
  readonly outerM: Figure;
  /** Flows that it is usually used for, m³/s. */
  readonly usualFlow: {
    readonly leastM3PerS: number;
    readonly mostM3PerS: number;
    readonly source: Source;
  };
}

const M3_PER_S_PER_LITRE_PER_HOUR = 1e-3 / 3600;
const usualSource: Source = {
  kind: 'common-practice',
  text: 'common practice, no source: about 1.5 m/s at the most',
};

interface HoseSize {
  readonly name: string;
  readonly boreMm: number;
  readonly outerMm: number;
  readonly litresPerHour: readonly [least: number, most: number];
}

const hose = (id: string, { name, boreMm, outerMm, litresPerHour: [least, most] }: HoseSize): Hose => ({
  id,
  name,
  boreM: fromMemory(boreMm / 1000, plusMinus(0.0003), 'nominal; soft hose varies by 0.3 mm'),
  outerM: fromMemory(outerMm / 1000, plusMinus(0.001)),
  usualFlow: {
    leastM3PerS: least * M3_PER_S_PER_LITRE_PER_HOUR,
    mostM3PerS: most * M3_PER_S_PER_LITRE_PER_HOUR,
    source: usualSource,
  },
});

/**
 * Common hoses by id. A 12 mm hose is not a half-inch hose: 0.7 mm loose on its barb; 16 mm and 5/8 in, and 19 mm
 * and 3/4 in, fit one another.
 */
export const hoses: Readonly<Record<string, Hose>> = {
  'hose-9mm': hose('hose-9mm', { name: '9/12 mm hose', boreMm: 9, outerMm: 12, litresPerHour: [100, 350] }),
  'hose-12mm': hose('hose-12mm', {
    name: '12/16 mm hose',
    boreMm: 12,
    outerMm: 16,
    litresPerHour: [250, 700],
  }),
  'hose-half-inch': hose('hose-half-inch', {
    name: '1/2 in hose',
    boreMm: 12.7,
    outerMm: 15.9,
    litresPerHour: [250, 750],
  }),
  'hose-five-eighths-inch': hose('hose-five-eighths-inch', {
    name: '5/8 in hose',
    boreMm: 15.875,
    outerMm: 22.2,
    litresPerHour: [600, 1300],
  }),
  'hose-16mm': hose('hose-16mm', {
    name: '16/22 mm hose',
    boreMm: 16,
    outerMm: 22,
    litresPerHour: [600, 1300],
  }),
  'hose-19mm': hose('hose-19mm', {
    name: '19/27 mm hose',
    boreMm: 19,
    outerMm: 27,
    litresPerHour: [1000, 2000],
  }),
  'hose-three-quarters-inch': hose('hose-three-quarters-inch', {
    name: '3/4 in hose',
    boreMm: 19.05,
    outerMm: 25.4,
    litresPerHour: [1000, 2000],
  }),
  'hose-25mm': hose('hose-25mm', {
    name: '25/34 mm hose',
    boreMm: 25,
    outerMm: 34,
    litresPerHour: [2000, 4000],
  }),
  'hose-one-inch': hose('hose-one-inch', {
    name: '1 in hose',
    boreMm: 25.4,
    outerMm: 31.8,
    litresPerHour: [2000, 4000],
  }),
};
