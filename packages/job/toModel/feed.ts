import { stockClasses } from '@fettle/engine/catalogue/stock.ts';
import type { Doubt } from '@fettle/engine/model/figure.ts';
import type { Quantity } from '@fettle/engine/quantities/readQuantity.ts';
import type { JobDocument } from '../schema/job.ts';
import { tankSchema } from '../schema/tank.ts';
import type { Taker } from './givens.ts';

type DocumentTank = JobDocument['tank'];

interface Setting {
  readonly volume: Quantity;
  readonly temperatureK: number;
  readonly taker: Taker;
}

const where = { path: ['tank', 'feed'], modelPath: 'tank.feedKgPerS', unit: 'kg/s' } as const;

/** Dry feed, kg/s: the stated one, else what the fish eat, else what a stock class eats. */
export function feedOf(tank: DocumentTank, { volume, taker }: Setting): number {
  return taker.take(
    { ...where, schema: tankSchema.shape.feed, written: tank.feed },
    feedOfStock(tank, volume.value),
  );
}

function feedOfStock({ stock = 'normal' }: DocumentTank, volumeM3: number) {
  const { feedKgPerM3PerS } = stockClasses[stock];
  return {
    value: feedKgPerM3PerS.value * volumeM3,
    doubt: { kind: 'factor', size: 2 } satisfies Doubt,
    because: `not stated: what a tank with ${stock} stock is fed, common practice, no source`,
  };
}

/** What the feed is reckoned from where it is not stated. */
export function feedSource({ stock = 'normal' }: DocumentTank): string {
  return `${stock} stock`;
}
