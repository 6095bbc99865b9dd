import { engineEnglish } from '@fettle/engine/wording/english/english.ts';
import type { Said } from '@fettle/engine/wording/said.ts';
import { word } from '@fettle/engine/wording/word.ts';
import { z } from 'zod';

/** Sentences as results carry them: by code, and in English with metric units. */
export const saysSchema = z.array(z.strictObject({ code: z.string(), says: z.string() }));

export const toSays = (sentences: readonly Said[]): z.infer<typeof saysSchema> =>
  sentences.map((one) => ({ code: one.code, says: word(one, { language: engineEnglish, units: 'metric' }) }));
