import { familyById } from '@fettle/engine/families/families.ts';
import type { Layout } from '@fettle/engine/families/layout.ts';
import type { Model } from '@fettle/engine/model/model.ts';
import { partsOf } from '@fettle/engine/planning/alterations.ts';
import { purchasesFor, volumesOf } from '@fettle/engine/planning/candidates.ts';
import { listed } from '@fettle/job/alterationList.ts';
import type { OwnBooks } from '@fettle/job/books/fill.ts';
import { fillFromBooks } from '@fettle/job/books/fill.ts';
import { pricesOf } from '@fettle/job/prices.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { permit } from '@fettle/job/toModel/alterations.ts';
import { stateModel } from '@fettle/job/toModel/stateModel.ts';
import type { Print } from '@fettle/workflows/printing.ts';
import { inWords } from '../app/words.ts';

type Quote = NonNullable<JobDocument['quote']>;

/** A part of a quote, as a job document writes it. */
export type QuotedPart = NonNullable<Quote['parts']>[number];

const layoutOf = ({ filter }: Model): Layout => familyById(filter.family)!.layOut(filter.measurements);

/** Whether the job, with what the books filled in, states a price of a medium; those of the catalogue are placeholders. */
const isStated = (document: JobDocument, medium: string): boolean =>
  pricesOf(document).some(({ path }) => {
    if (path[0] === 'shelf') return Object(document.shelf?.[Number(path[1])]).medium === medium;
    return path.includes('media') && path.includes(medium);
  });

const written = (value: number, { money }: Model): string => `${value.toFixed(2)} ${money.currency}`;

interface States {
  readonly found: Model;
  readonly planned: Model;
  /** With what the books filled in. */
  readonly document: JobDocument;
}

/** Media that the plan needs beyond what was found in the filter. */
const mediaLines = ({ found, planned, document }: States, print: Print): readonly QuotedPart[] => {
  const held = volumesOf(layoutOf(found).chambers, found.packing);
  const wanted = volumesOf(layoutOf(planned).chambers, planned.packing);
  return purchasesFor(planned, wanted, held).map(({ medium, volumeM3, price }) => ({
    part: `${print(volumeM3, 'volume')} of ${planned.media[medium]?.name ?? medium}`,
    ...(isStated(document, medium) ? { price: written(price, planned) } : {}),
  }));
};

/** The part of which an alteration needs metres; a line of a quote counts whole pieces. */
const byMetre = 'hose-per-metre';

/** Parts of the alterations that go with the plan; what is sold by length is one line with its length. */
const hardwareLines = ({ found, document }: States, print: Print): readonly QuotedPart[] => {
  const made = listed(document.planned?.made ?? [], ['planned', 'made']).map(permit);
  return partsOf(found, layoutOf(found), made)
    .filter(({ count }) => count > 0)
    .map(({ part, count }) => {
      const one = found.money.partPrice[part];
      const isByMetre = part === byMetre;
      return {
        part: isByMetre ? `hose, ${print(count, 'length')}` : inWords(part),
        ...(isByMetre || count === 1 ? {} : { count }),
        ...(one === undefined ? {} : { price: written(isByMetre ? one * count : one, found) }),
      };
    });
};

/**
 * What the planned re-pack needs to be bought, as lines of a quote. A price stands only where the job, or the
 * workshop's shelf in the job's currency, states one: a quote is a promise, and placeholders are none.
 *
 * @param document one that reads without a problem
 * @param print SI values to text, in the units of the workshop
 * @returns nothing where no re-pack is planned
 */
export function partsOfPlan(document: JobDocument, books: OwnBooks, print: Print): readonly QuotedPart[] {
  const { document: filled } = fillFromBooks(document, books);
  const [found, planned] = [stateModel(filled, 'as-found')?.model, stateModel(filled, 'planned')?.model];
  if (found === undefined || planned === undefined) return [];
  const states = { found, planned, document: filled };
  return [...mediaLines(states, print), ...hardwareLines(states, print)];
}
