import type { Medium } from '@fettle/engine/model/medium.ts';
import type { OtherFilter, ShelfItem } from '@fettle/engine/model/model.ts';
import { type Note, note } from '../problems.ts';
import { acceptedQuantity } from '../schema/fields.ts';
import type { JobDocument } from '../schema/job.ts';
import { otherFiltersSchema, shelfItemSchema } from '../schema/money.ts';

/** The media that plans may use: the shelf, else every known medium in any amount. */
export function shelfOf(
  shelf: JobDocument['shelf'],
  media: Readonly<Record<string, Medium>>,
): { readonly shelf: readonly ShelfItem[]; readonly notes: readonly Note[] } {
  if (shelf === undefined) {
    const all = Object.keys(media).map((medium) => ({ medium }));
    return { shelf: all, notes: [note('shelf-not-stated', ['shelf'], {})] };
  }
  const items = shelf.map((item): ShelfItem => {
    if (typeof item === 'string') return { medium: item };
    if (item.amount === undefined) return { medium: item.medium };
    return {
      medium: item.medium,
      amountM3: acceptedQuantity(shelfItemSchema.shape.amount, item.amount).value,
    };
  });
  return { shelf: items, notes: [] };
}

/** Other filters on the tank, their media reckoned as area. */
export function otherFiltersOf(
  others: JobDocument['otherFilters'],
  media: Readonly<Record<string, Medium>>,
): readonly OtherFilter[] {
  const fields = otherFiltersSchema.element.shape;
  const volumeField = fields.media.unwrap().element.shape.volume;
  return (others ?? []).map((other) => ({
    name: other.name,
    flowM3PerS: acceptedQuantity(fields.flow, other.flow).value,
    areaM2: (other.media ?? []).reduce((area, { medium, volume }) => {
      const perM = media[medium]?.areaPerM.value ?? 0;
      return area + perM * acceptedQuantity(volumeField, volume).value;
    }, 0),
  }));
}
