import type { JobDocument } from '@fettle/job/schema/job.ts';
import { jobStages } from '@fettle/job/stages.ts';
import { putting, valueAt } from '../forms/places.ts';
import type { Edit } from '../session/history.ts';
import type { QuotedPart, ReckonedPart } from './partsOfPlan.ts';

/** The day so many days after another, both ISO. */
export const dayAfter = (day: string, days: number): string =>
  new Date(Date.parse(`${day}T12:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);

/** Where a quote usually holds for so many days if the settings do not say. */
const usualQuoteDays = 30;

/** What a quote is begun from. */
export interface QuoteStart {
  readonly parts: readonly QuotedPart[];
  /** ISO. */
  readonly today: string;
  /** For how many days it holds. */
  readonly days?: number | undefined;
}

/**
 * The lines of the parts with those of the plan behind what was written by hand. Lines of a plan that was taken over
 * before are replaced as a set; a price that stood at one of the same words stays, for it may have been put right.
 */
const withPlanParts = (
  before: readonly QuotedPart[],
  planned: readonly QuotedPart[],
): readonly QuotedPart[] => {
  const own = before.filter(({ from }) => from !== 'plan');
  const known = new Set(own.map(({ part }) => part));
  const added = planned
    .filter(({ part }) => !known.has(part))
    .map((line): QuotedPart => {
      const price = before.find(({ part }) => part === line.part)?.price ?? line.price;
      return { ...line, ...(price === undefined ? {} : { price }), from: 'plan' };
    });
  return [...own, ...added];
};

/**
 * The change that takes what the planned re-pack needs into the quote: its parts go behind those that were written by
 * hand, in the place of those of an earlier plan, and day and validity are written where they are empty.
 */
export const takingPlanIntoQuote = ({ parts, today, days = usualQuoteDays }: QuoteStart): Edit => ({
  says: 'take the plan into the quote',
  recipe: (draft) => {
    const quote = Object(draft.quote) as NonNullable<JobDocument['quote']>;
    const { parts: before, ...others } = quote;
    const lines = withPlanParts(before ?? [], parts);
    const day = quote.day ?? today;
    draft.quote = {
      ...others,
      day,
      validUntil: quote.validUntil ?? dayAfter(day, days),
      labour: quote.labour ?? [{ work: 'Clean and re-pack as planned' }],
      ...(lines.length === 0 ? {} : { parts: [...lines] }),
    };
  },
});

/** The change that gives lines of the plan that are without a price those that the plan was reckoned with. */
export const takingReckonedPrices = (reckoned: readonly ReckonedPart[]): Edit => ({
  says: 'take the prices of the plan',
  recipe: (draft) => {
    const { parts } = Object(draft.quote) as NonNullable<JobDocument['quote']>;
    for (const line of parts ?? []) {
      const found = reckoned.find(({ part }) => part === line.part);
      if (line.from === 'plan' && line.price === undefined && found !== undefined) line.price = found.price;
    }
  },
});

const stagesBefore = jobStages.slice(0, jobStages.indexOf('approved'));

/** The change that writes down that the owner agrees; the stage follows where the work is not further already. */
export const approving = (of: { readonly today: string; readonly amount?: string }): Edit => ({
  says: 'the owner agrees',
  recipe: (draft) => {
    draft.approval = { day: of.today, ...(of.amount === undefined ? {} : { amount: of.amount }) };
    const stage = valueAt(draft, ['job', 'stage']) ?? stagesBefore[0];
    if (stagesBefore.some((each) => each === stage)) putting(['job', 'stage'], 'approved')(draft);
  },
});
