import { tankSaid } from '@fettle/engine/lineup/tankSaid.ts';
import { engineEnglish } from '@fettle/engine/wording/english/english.ts';
import { word } from '@fettle/engine/wording/word.ts';
import type { AssessedJob } from '../assessJob.ts';
import type { Print } from '../printing.ts';

/** Where the whole tank settles; nothing where it was not asked for. */
export const balanceLines = ({ tank }: AssessedJob, { system }: Print): readonly string[] =>
  tank === undefined
    ? []
    : tankSaid(tank).map((one) => word(one, { language: engineEnglish, units: system }));
