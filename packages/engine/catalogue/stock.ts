import type { Figure } from '../model/figure.ts';
import { commonPractice, times } from './figureOf.ts';

/** How heavily a tank is stocked, as feed, where nothing better is known. */
export interface StockClass {
  readonly id: string;
  readonly name: string;
  /** Dry feed per volume of tank, kg/(m³ s). */
  readonly feedKgPerM3PerS: Figure;
  /** Protein share of the dry feed, 1. */
  readonly proteinFraction: Figure;
}

const DAY_S = 86_400;
/** 0.8 g per 100 L and day. */
const NORMAL_FEED_KG_PER_M3_PER_S = 0.008 / DAY_S;

const stockClass = (id: string, name: string, timesNormal: number): StockClass => ({
  id,
  name,
  feedKgPerM3PerS: commonPractice(
    NORMAL_FEED_KG_PER_M3_PER_S * timesNormal,
    times(1.4),
    `our own definition, ${0.8 * timesNormal} g of dry feed per 100 L per day`,
  ),
  proteinFraction: commonPractice(0.45, times(1.2), 'our own definition, feed of 45 % protein'),
});

/** Stock classes by id: light is half of normal, heavy twice. */
export const stockClasses = {
  light: stockClass('light', 'lightly stocked', 0.5),
  normal: stockClass('normal', 'normally stocked', 1),
  heavy: stockClass('heavy', 'heavily stocked', 2),
} as const satisfies Readonly<Record<string, StockClass>>;
