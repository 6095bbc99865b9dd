import { dyesSaid } from '@fettle/engine/assessment/residence/residenceSaid.ts';
import { engineEnglish } from '@fettle/engine/wording/english/english.ts';
import { word } from '@fettle/engine/wording/word.ts';
import type { AssessedJob } from '../assessJob.ts';

/** Each dye test beside what the map says of the same flow, and what to mind about it. */
export const dyeLines = ({ dye = [] }: Pick<AssessedJob, 'dye'>): readonly string[] =>
  dyesSaid(dye).map((sentences) =>
    sentences.map((one) => word(one, { language: engineEnglish, units: 'metric' })).join(' '),
  );
