import { testDimensions } from '@fettle/engine/assessment/findings/measured.ts';
import { placeName } from '@fettle/engine/assessment/placeName.ts';
import { intervalDoubt, intervalText } from '../amounts.ts';
import type { AssessedJob } from '../assessJob.ts';
import { type Print, share } from '../printing.ts';

/** One sentence for each chemical bed: when it is full, and what decides that. */
export const chemicalLines = ({ assessment, model }: AssessedJob, print: Print): readonly string[] =>
  assessment.chemical.map(({ bed, substance, capacityKg, openFraction, takenFraction, lastsS }) => {
    const lasts = Number.isFinite(lastsS)
      ? `full after about ${intervalText(lastsS, false)}`
      : 'never full here';
    const holds = `holds ${print(capacityKg, 'mass')} of ${substance.replace('-', ' ')}`;
    return `${placeName(model, assessment, bed)}: ${lasts}, ${intervalDoubt} (${holds}, dirt leaves ${share(openFraction)} of it open, takes ${share(takenFraction)} of what comes into the tank).`;
  });

/** What running the filter costs, and of what that is made up. */
export const costSentence = ({ assessment }: AssessedJob): string => {
  const { currency, perYear, energyPerYear, energyJPerYear, mediaPerYear, pricePerYear } = assessment.cost;
  const sum = (value: number): string => `${Math.round(value)} ${currency}`;
  const worn = assessment.cost.media.some((line) => line.because !== 'calendar');
  const doubt = worn
    ? ` Media that are replaced because they clog or are full cost as those times say, ${intervalDoubt}.`
    : '';
  return `Running it costs ${sum(perYear)} a year: electricity ${sum(energyPerYear)} (${Math.round(energyJPerYear / 3.6e6)} kWh), media ${sum(mediaPerYear)}, price spread over its life ${sum(pricePerYear)}.${doubt}`;
};

const VERDICTS = {
  agrees: 'they agree within their doubts',
  differs: 'they differ by more than their doubts',
  'below-clean':
    'a dirty filter gives less than clean, so this is no contradiction: it shows what cleaning is worth',
  'below-dirty':
    'even dirty media leave more than this, so dirt in the media does not explain it: see the findings',
  'not-compared': 'there is nothing computed to hold it against',
} as const;

/** Each bench test beside what was computed. */
export const testLines = (
  { comparisons }: Pick<AssessedJob, 'comparisons'>,
  print: Print,
): readonly string[] =>
  comparisons.map(({ test, measured, doubt, computed, verdict, used }) => {
    const kind = testDimensions[test.kind];
    const whose = used ? 'stated or assumed' : 'computed clean';
    const ours = computed === undefined ? '' : `, ${whose} ${print(computed, kind)}`;
    const taken = used ? '; the measured figure is used' : '';
    return `${test.kind}, ${test.state}: measured ${print(measured, kind)} ± ${print(doubt, kind)}${ours}: ${VERDICTS[verdict]}${taken}.`;
  });

/** Each of the maker's claims with its verdict. */
export const claimLines = ({ claims }: AssessedJob): readonly string[] =>
  claims.map((claim) => `${claim.verdict}: “${claim.says}” ${claim.detail}`);

/** Where a figure lies outside what its law was measured for. */
export const warningLines = ({ assessment, model }: AssessedJob): readonly string[] =>
  assessment.warnings.map((warning) => `${placeName(model, assessment, warning.place)}: ${warning.says}`);
