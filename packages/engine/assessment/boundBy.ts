import { engineEnglish } from '../wording/english/english.ts';
import { said } from '../wording/said.ts';
import { word } from '../wording/word.ts';
import type { BindingLimit } from './assessment.ts';

/** What binds the feed that is carried, in English, as said after “bound”. */
export const boundBy = (limit: BindingLimit): string =>
  word(said(`bound.${limit}`), { language: engineEnglish, units: 'metric' });
