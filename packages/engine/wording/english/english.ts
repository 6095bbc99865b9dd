import type { Language } from '../language.ts';
import { balanceSentences } from './balance.ts';
import { claimSentences } from './claims.ts';
import { doubtSentences } from './doubt.ts';
import { drawingSentences } from './drawing.ts';
import { eliminationSentences } from './elimination.ts';
import { cureSentences, faultSentences } from './findings.ts';
import { forecastSentences } from './forecast.ts';
import { residenceSentences } from './residence.ts';
import { siteSentences } from './site.ts';
import { planStepSentences } from './steps.ts';
import { tankSentences } from './tank.ts';
import { warningSentences } from './warnings.ts';

/** English as the engine speaks it: what packages above it add their own sentences to. */
export const engineEnglish: Language = {
  code: 'en',
  itself: 'English',
  direction: 'ltr',
  sentences: {
    ...faultSentences,
    ...cureSentences,
    ...warningSentences,
    ...claimSentences,
    ...doubtSentences,
    ...drawingSentences,
    ...eliminationSentences,
    ...planStepSentences,
    ...forecastSentences,
    ...residenceSentences,
    ...siteSentences,
    ...tankSentences,
    ...balanceSentences,
  },
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
