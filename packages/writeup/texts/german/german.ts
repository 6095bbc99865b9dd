import type { Language } from '@fettle/engine/wording/language.ts';
import { aboutTubeNames } from './aboutTube.ts';
import { alterationSentences } from './alterations.ts';
import { assumedNames } from './assumed.ts';
import { balanceSentences } from './balance.ts';
import { buildSentences } from './build.ts';
import { cardSentences } from './cards.ts';
import { careSentences } from './care.ts';
import { cautionSentences } from './cautions.ts';
import { doubtSentences } from './doubt.ts';
import { eliminationSentences } from './elimination.ts';
import { claimSentences, drawingSentences, planStepSentences, warningSentences } from './engine.ts';
import { figureSentences } from './figures.ts';
import { filterNames } from './filters.ts';
import { cureSentences, faultSentences } from './findings.ts';
import { forecastSentences } from './forecast.ts';
import { mediaNames } from './media.ts';
import { openBoxNames } from './openBoxes.ts';
import { outlookSentences } from './outlook.ts';
import { quoteSentences } from './quote.ts';
import { rangeSentences } from './ranges.ts';
import { residenceSentences } from './residence.ts';
import { sheetSentences } from './sheet.ts';
import { siteSentences } from './site.ts';
import { talkSentences } from './talk.ts';
import { tankSentences } from './tank.ts';

/** German, without address to anybody: what is done stands in the infinitive. */
export const german: Language = {
  code: 'de',
  itself: 'Deutsch',
  direction: 'ltr',
  sentences: {
    ...faultSentences,
    ...cureSentences,
    ...warningSentences,
    ...claimSentences,
    ...drawingSentences,
    ...eliminationSentences,
    ...planStepSentences,
    ...forecastSentences,
    ...doubtSentences,
    ...tankSentences,
    ...residenceSentences,
    ...siteSentences,
    ...rangeSentences,
    ...balanceSentences,
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
  names: { ...mediaNames, ...filterNames, ...aboutTubeNames, ...openBoxNames, ...assumedNames },
  marks: {
    decimal: ',',
    to: 'bis',
    and: 'und',
    beyond: 'mehr als ein Jahr',
    times: {
      year: ['Jahr', 'Jahre'],
      day: ['Tag', 'Tage'],
      hour: ['Stunde', 'Stunden'],
      minute: ['Minute', 'Minuten'],
      second: ['Sekunde', 'Sekunden'],
    },
  },
};
