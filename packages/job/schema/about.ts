import * as z from 'zod';
import { jobStages } from '../stages.ts';
import { day, fieldFacts, list, oneOf, text, wholeNumber } from './fields.ts';

/** A tag stands on one line and among others with commas between them: 1 to 40 characters. */
export const tagPattern =
  /^(?!\s)[^,\p{Cc}\p{Zl}\p{Zp}\p{Surrogate}\u200b\u200e\u200f\u202a-\u202e\u2066-\u2069\ufeff]{1,40}(?<!\s)$/u;

const tag = z
  .string()
  .regex(tagPattern)
  .register(fieldFacts, { says: 'one tag: up to 40 characters on one line, no comma', example: 'canister' });

/** The record itself: what it is called, where it stands. */
export const aboutSchema = z.strictObject({
  number: wholeNumber({ says: 'number of the job', example: '12', least: 0, most: 999_999_999 }).optional(),
  title: text({ says: 'what the job is called', example: 'Canister of the hall tank' }).optional(),
  received: day({ says: 'day on which the filter came in', example: '2026-11-02' }).optional(),
  promised: day({ says: 'day on which it is promised back', example: '2026-11-20' }).optional(),
  stage: oneOf(jobStages, {
    says: `where the work stands: ${jobStages.join(', ')}`,
  }).optional(),
  tags: list(tag, {
    says: 'words of your own to find it by, each once, whatever its capitals',
    most: 20,
  }).optional(),
  notes: text({ says: 'anything else', most: 10_000 }).optional(),
});
