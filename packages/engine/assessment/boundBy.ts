import { engineEnglish } from '../wording/english/english.ts';
import { type Said, said } from '../wording/said.ts';
import { word } from '../wording/word.ts';
import type { BindingLimit } from './assessment.ts';

/** What binds the feed that is carried, as said after “bound”, with a clause that says what that means. */
export const boundSaid = (limit: BindingLimit): Said =>
  limit === 'none'
    ? said('bound.none')
    : said('bound.with-why', { by: said(`bound.${limit}`), why: said(`bound.${limit}.why`) });

const inEnglish = (what: Said): string => word(what, { language: engineEnglish, units: 'metric' });

/** What binds the feed that is carried, in English, as said after “bound”. */
export const boundBy = (limit: BindingLimit): string => inEnglish(said(`bound.${limit}`));

/** The same with a clause that says what that means. */
export const boundByAndWhy = (limit: BindingLimit): string => inEnglish(boundSaid(limit));
