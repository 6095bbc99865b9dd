import type { Medium } from '@fettle/engine/model/medium.ts';
import type { OtherFilter, ShelfItem } from '@fettle/engine/model/model.ts';
import { type Note, note } from '../notes.ts';
import { acceptedQuantity } from '../schema/fields.ts';
import type { JobDocument } from '../schema/job.ts';
import { otherFiltersSchema, shelfItemSchema } from '../schema/money.ts';

/** What most who re-pack filters have at hand, of each form one or two; common practice, no source. */
export const commonShelf: readonly string[] = [
  'foam-10ppi',
  'foam-20ppi',
  'foam-30ppi',
  'floss-loose',
  'ceramic-rings-15mm',
  'sintered-glass-cylinders-8mm',
  'expanded-clay-10mm',
];

/** The media that plans may use: the shelf, else a common one with any amount of each. */
export function shelfOf(shelf: JobDocument['shelf']): {
  readonly shelf: readonly ShelfItem[];
  readonly notes: readonly Note[];
} {
  if (shelf === undefined) {
    const facts = { media: commonShelf.join(', ') };
    return {
      shelf: commonShelf.map((medium) => ({ medium })),
      notes: [note('shelf-not-stated', ['shelf'], facts)],
    };
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
