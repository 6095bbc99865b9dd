import * as z from 'zod';
import { day, list, oneOf, quantity, text, wholeNumber } from './fields.ts';

const sum = (says: string, example: string) =>
  quantity({ dimension: 'money', says, example, least: '0 GBP', most: '1000000 GBP' });

/** Work that is offered. */
export const labourLineSchema = z.strictObject({
  work: text({ says: 'what is done', example: 'Re-pack and close the gaps' }),
  time: quantity({
    dimension: 'time',
    says: 'how long it takes',
    example: '1.5 h',
    above: '0 h',
    most: '1000 h',
  }).optional(),
  price: sum('price of it; where absent, its time at the rate of money.labour', '45 GBP').optional(),
});

/** Parts and media that are offered. */
export const partLineSchema = z.strictObject({
  part: text({ says: 'what it is; a short name of money.parts takes its price', example: 'seal-strip' }),
  count: wholeNumber({
    says: 'how many of it; one where absent',
    example: '2',
    least: 1,
    most: 10_000,
  }).optional(),
  price: sum('price of one; where absent, that of money.parts', '2.50 GBP').optional(),
  from: oneOf(['plan'], {
    says: 'where the line comes from: taken over from the planned re-pack, which replaces it when it is taken over again; absent where it was written by hand',
  }).optional(),
});

/** What the work is offered for. */
export const quoteSchema = z.strictObject({
  day: day({ says: 'day of the quote', example: '2026-11-05' }).optional(),
  validUntil: day({ says: 'last day on which it holds', example: '2026-12-05' }).optional(),
  labour: list(labourLineSchema, { says: 'work that is offered' }).optional(),
  parts: list(partLineSchema, { says: 'parts and media that are offered' }).optional(),
  warranty: text({
    says: 'what is warranted, and how long',
    example: '6 months on seals',
    most: 2000,
  }).optional(),
  notes: text({ says: 'anything else', most: 2000 }).optional(),
});

/** That the owner has agreed. */
export const approvalSchema = z.strictObject({
  day: day({ says: 'day on which it was approved', example: '2026-11-06' }),
  by: text({ says: 'who approved it', example: 'the owner' }).optional(),
  how: text({ says: 'how it was said', example: 'by telephone' }).optional(),
  amount: sum('what was agreed to in all', '61.50 GBP').optional(),
  notes: text({ says: 'anything else', most: 2000 }).optional(),
});
