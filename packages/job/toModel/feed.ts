import { fish, fishMassKg } from '@fettle/engine/catalogue/fish.ts';
import { stockClasses } from '@fettle/engine/catalogue/stock.ts';
import { fishFeed } from '@fettle/engine/laws/life/stock.ts';
import type { Default } from '../defaults.ts';
import { acceptedQuantity } from '../schema/fields.ts';
import type { JobDocument } from '../schema/job.ts';
import { fishSchema, tankSchema } from '../schema/tank.ts';
import type { Taker } from './givens.ts';

type DocumentTank = JobDocument['tank'];
type DocumentFish = NonNullable<DocumentTank['fish']>[number];

interface Setting {
  readonly volumeM3: number;
  readonly temperatureK: number;
  readonly taker: Taker;
}

const where = { path: ['tank', 'feed'], modelPath: 'tank.feedKgPerS', unit: 'kg/s' } as const;

/** Dry feed, kg/s: the stated one, else what the fish eat, else what a stock class eats. */
export function feedOf(tank: DocumentTank, setting: Setting): number {
  const otherwise = feedOfFish(tank.fish ?? [], setting) ?? feedOfStock(tank, setting);
  return setting.taker.take({ ...where, schema: tankSchema.shape.feed, written: tank.feed }, otherwise);
}

/** What a keeper gives to one fish is known within a factor of 2, and its mass, by its shape, within 2.3. */
const fishFeedDoubt = { kind: 'factor', size: 2.5 } as const;

function feedOfFish(list: readonly DocumentFish[], { temperatureK }: Setting): Default | undefined {
  const kinds = list.flatMap((entry) => {
    const kind = fish[entry.kind];
    return kind === undefined ? [] : [{ kind, entry }];
  });
  if (kinds.length === 0) return undefined;
  const feeds = kinds.map(({ kind, entry }) => {
    const lengthM =
      entry.length === undefined
        ? kind.adultLengthM.value
        : acceptedQuantity(fishSchema.shape.length, entry.length).value;
    const massKg = fishMassKg({ lengthMass: kind.lengthMass, lengthM });
    return entry.count * fishFeed({ massKg, temperatureK });
  });
  return {
    value: feeds.reduce((sum, feed) => sum + feed, 0),
    doubt: fishFeedDoubt,
    because: 'not stated: what the listed fish are fed by their length and the temperature, from memory',
  };
}

function feedOfStock({ stock = 'normal' }: DocumentTank, { volumeM3 }: Setting): Default {
  return {
    value: stockClasses[stock].feedKgPerM3PerS.value * volumeM3,
    doubt: { kind: 'factor', size: 2 },
    because: `not stated: what a tank with ${stock} stock is fed, common practice, no source`,
  };
}

/** What the feed is reckoned from where it is not stated. */
export function feedSource({ fish: list, stock = 'normal' }: DocumentTank): string {
  return list !== undefined && list.length > 0 ? 'the fish listed' : `${stock} stock`;
}
