import { drawnLayout } from '@fettle/engine/families/families.ts';
import type { Layout } from '@fettle/engine/families/layout.ts';
import type { Model } from '@fettle/engine/model/model.ts';
import { partsOf } from '@fettle/engine/planning/alterations.ts';
import { purchasesFor, stillGood, volumesOf } from '@fettle/engine/planning/candidates.ts';
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

/** A part with the price that the plan was reckoned with: a stated one, or else a placeholder of the catalogue. */
export interface ReckonedPart {
  readonly part: string;
  readonly price: string;
}

interface PlanPart {
  readonly line: QuotedPart;
  readonly reckoned: string;
}

const layoutOf = ({ filter }: Model): Layout => drawnLayout(filter);

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

/** Media that the plan needs beyond what was found in the filter, and fresh ones for those that are used up. */
const mediaLines = ({ found, planned, document }: States, print: Print): readonly PlanPart[] => {
  const held = volumesOf(layoutOf(found).chambers, found.packing);
  const wanted = volumesOf(layoutOf(planned).chambers, planned.packing);
  return purchasesFor(planned, wanted, stillGood(found, held)).map(({ medium, volumeM3, price }) => ({
    line: {
      part: `${print(volumeM3, 'volume')} of ${planned.media[medium]?.name ?? medium}`,
      ...(isStated(document, medium) ? { price: written(price, planned) } : {}),
    },
    reckoned: written(price, planned),
  }));
};

/** The part of which an alteration needs metres; a line of a quote counts whole pieces. */
const byMetre = 'hose-per-metre';

/** Parts of the alterations that go with the plan; what is sold by length is one line with its length. */
const hardwareLines = ({ found, document }: States, print: Print): readonly PlanPart[] => {
  const made = listed(document.planned?.made ?? [], ['planned', 'made']).map(permit);
  return partsOf(found, layoutOf(found), made)
    .filter(({ count }) => count > 0)
    .map(({ part, count, price: reckoned }) => {
      const one = found.money.partPrice[part];
      const isByMetre = part === byMetre;
      const ofLine = (price: number): string => written(isByMetre ? price * count : price, found);
      return {
        line: {
          part: isByMetre ? `hose, ${print(count, 'length')}` : inWords(part),
          ...(isByMetre || count === 1 ? {} : { count }),
          ...(one === undefined ? {} : { price: ofLine(one) }),
        },
        reckoned: ofLine(reckoned),
      };
    });
};

const neededFor = (document: JobDocument, books: OwnBooks, print: Print): readonly PlanPart[] => {
  const { document: filled } = fillFromBooks(document, books);
  const [found, planned] = [stateModel(filled, 'as-found')?.model, stateModel(filled, 'planned')?.model];
  if (found === undefined || planned === undefined) return [];
  const states = { found, planned, document: filled };
  return [...mediaLines(states, print), ...hardwareLines(states, print)];
};

/**
 * What the planned re-pack needs to be bought, as lines of a quote. A price stands only where the job, or the
 * workshop's shelf in the job's currency, states one: a quote is a promise, and placeholders are none.
 *
 * @param document one that reads without a problem
 * @param print SI values to text, in the units of the workshop
 * @returns nothing where no re-pack is planned
 */
export const partsOfPlan = (document: JobDocument, books: OwnBooks, print: Print): readonly QuotedPart[] =>
  neededFor(document, books, print).map(({ line }) => line);

/** Lines that the quote has from the plan and that are without a price, each with what the plan was reckoned with. */
export function openPartsOfPlan(
  document: JobDocument,
  books: OwnBooks,
  print: Print,
): readonly ReckonedPart[] {
  const open = (document.quote?.parts ?? []).filter(
    ({ from, price, part }) =>
      from === 'plan' && price === undefined && document.money?.parts?.[part] === undefined,
  );
  if (open.length === 0) return [];
  const needed = neededFor(document, books, print);
  return open.flatMap(({ part }) =>
    needed.filter(({ line }) => line.part === part).map(({ reckoned }) => ({ part, price: reckoned })),
  );
}
