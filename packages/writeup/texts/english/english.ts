import type { Language } from '@fettle/engine/wording/language.ts';
import { buildSentences } from './build.ts';
import { cautionSentences } from './cautions.ts';
import { figureSentences } from './figures.ts';
import { sheetSentences } from './sheet.ts';

/** English, in which everything is written first; other languages are held against its codes and holes. */
export const english: Language = {
  code: 'en',
  itself: 'English',
  direction: 'ltr',
  sentences: { ...sheetSentences, ...figureSentences, ...cautionSentences, ...buildSentences },
  names: {},
  marks: {
    decimal: '.',
    to: 'to',
    and: 'and',
    beyond: 'more than a year',
    times: {
      year: ['year', 'years'],
      day: ['day', 'days'],
      hour: ['hour', 'hours'],
      minute: ['minute', 'minutes'],
      second: ['second', 'seconds'],
    },
  },
};
