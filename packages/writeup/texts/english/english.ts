import { engineEnglish } from '@fettle/engine/wording/english/english.ts';
import type { Language } from '@fettle/engine/wording/language.ts';
import { alterationSentences } from './alterations.ts';
import { assumedNames } from './assumed.ts';
import { buildSentences } from './build.ts';
import { cardSentences } from './cards.ts';
import { careSentences } from './care.ts';
import { cautionSentences } from './cautions.ts';
import { figureSentences } from './figures.ts';
import { outlookSentences } from './outlook.ts';
import { quoteSentences } from './quote.ts';
import { rangeSentences } from './ranges.ts';
import { sheetSentences } from './sheet.ts';
import { talkSentences } from './talk.ts';

/** English, in which everything is written first; other languages are held against its codes and holes. */
export const english: Language = {
  ...engineEnglish,
  sentences: {
    ...engineEnglish.sentences,
    ...rangeSentences,
    ...sheetSentences,
    ...figureSentences,
    ...cautionSentences,
    ...buildSentences,
    ...alterationSentences,
    ...quoteSentences,
    ...careSentences,
    ...cardSentences,
    ...talkSentences,
    ...outlookSentences,
  },
  names: assumedNames,
};
