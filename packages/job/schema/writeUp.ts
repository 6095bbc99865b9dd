import * as z from 'zod';
import { byShortName, list, oneOf, quantity, text } from './fields.ts';

/** Languages in which a job may be written up, by their tags. */
export const writeUpLanguages = ['en', 'de'] as const;

const words = (says: string) => text({ says, most: 5000 });

/** The technician's own words at one paragraph of what is published. */
export const ownWordsSchema = z.strictObject({
  instead: words('own words in place of the paragraph').optional(),
  before: words('own words before it').optional(),
  after: words('own words after it').optional(),
});

/** A chapter of a recorded walk-through. */
export const chapterSchema = z.strictObject({
  at: quantity({
    dimension: 'time',
    says: 'time in the recording at which it begins',
    example: '1 min 45 s',
    least: '0 s',
    most: '1 d',
    clock: true,
  }),
  says: text({ says: 'what it is called', example: 'The water finds the wrong medium first' }),
});

/** How a job is written up. */
export const writeUpSchema = z.strictObject({
  language: oneOf(writeUpLanguages, { says: 'language of what is published' }).optional(),
  by: text({ says: 'who signs it', example: 'the workshop by the bridge' }).optional(),
  words: byShortName(ownWordsSchema, {
    says: 'own words, by the short name of a paragraph; they stay when everything is made anew',
  }).optional(),
  chapters: list(chapterSchema, { says: 'chapters of a recorded walk-through', most: 100 }).optional(),
});
