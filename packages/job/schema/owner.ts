import * as z from 'zod';
import { day, text, trueOrFalse } from './fields.ts';

/** Whose filter it is. Personal: nothing of it is published without consent. */
export const ownerSchema = z.strictObject({
  name: text({ says: "the owner's name", example: 'A. Keeper' }).optional(),
  contact: text({ says: 'how the owner is reached', example: 'keeper@example.org' }).optional(),
  place: text({ says: 'where the owner lives or the tank stands', example: 'the old harbour' }).optional(),
});

/** What of the job may be published. What is not stated here is not consented to. */
export const consentSchema = z.strictObject({
  day: day({ says: 'day on which consent was given', example: '2026-11-18' }),
  by: text({ says: 'who gave it, and how', example: 'the owner, in writing' }).optional(),
  name: trueOrFalse({ says: "whether the owner's name may be published; not where absent" }).optional(),
  place: trueOrFalse({ says: "whether the owner's place may be published; not where absent" }).optional(),
  photographs: trueOrFalse({ says: 'whether photographs may be published; not where absent' }).optional(),
  withdrawn: day({
    says: 'day on which it was withdrawn; from then on nothing is consented to',
    example: '2026-12-01',
  }).optional(),
});
