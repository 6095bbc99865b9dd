import type { JobDocument } from '@fettle/job/schema/job.ts';
import { jobStages } from '@fettle/job/stages.ts';
import { putting, valueAt } from '../forms/places.ts';
import type { Edit } from '../session/history.ts';
import type { QuotedPart } from './partsOfPlan.ts';

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
 * The change that takes what the planned re-pack needs into the quote: its parts go behind those that are there, and
 * day and validity are written where they are empty.
 */
export const takingPlanIntoQuote = ({ parts, today, days = usualQuoteDays }: QuoteStart): Edit => ({
  says: 'take the plan into the quote',
  recipe: (draft) => {
    const quote = Object(draft.quote) as NonNullable<JobDocument['quote']>;
    const known = new Set((quote.parts ?? []).map(({ part }) => part));
    const added = parts.filter(({ part }) => !known.has(part));
    const day = quote.day ?? today;
    draft.quote = {
      ...quote,
      day,
      validUntil: quote.validUntil ?? dayAfter(day, days),
      labour: quote.labour ?? [{ work: 'Clean and re-pack as planned' }],
      ...(added.length === 0 ? {} : { parts: [...(quote.parts ?? []), ...added] }),
    };
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
