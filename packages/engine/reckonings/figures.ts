import { checkPair, type PairCheck } from '../quantities/checkPair.ts';
import { convertQuantity } from '../quantities/convertQuantity.ts';
import type { QuantityProblem } from '../quantities/problem.ts';
import { choiceOr, text } from './inputs.ts';
import { type ReckoningProblems, reckoning } from './reckoning.ts';

const refusedOf = ({ code, says, allowed }: QuantityProblem, path: string): ReckoningProblems => {
  const plain = says.replace(`; allowed: ${allowed}.`, '.');
  return {
    ok: false,
    problems: [{ code, path, says: path === '' ? plain : `${path}: ${plain}`, allowed }],
  };
};

export const convert = reckoning({
  name: 'convert',
  says: 'A quantity in another unit.',
  formula: 'exact factors',
  inputs: {
    from: text({ label: 'the quantity', takes: 'a number with its unit', example: '612 L/h' }),
    to: text({ label: 'the unit wanted', takes: 'a unit of the same kind', example: 'US gal/h' }),
    difference: choiceOr(['no', 'yes'], {
      label: 'yes where temperatures are a difference of two',
      otherwise: 'no',
    }),
  },
  results: {
    value: { label: 'value' },
    doubt: { label: 'doubt (95 %), half-width' },
    doubtFactor: { label: 'doubt (95 %), factor', unit: '1', dimension: 'count' },
  },
  source: 'exact factors of the units; ratios of molar masses of CIAAW 2021 between compounds of nitrogen',
  compute: ({ from, to, difference }) => {
    const converted = convertQuantity({ text: from, to, difference: difference === 'yes' });
    if (!converted.ok) {
      // A unit alone is never taken for a quantity, so the target is at fault where it cannot be read either.
      const target = convertQuantity({ text: `1 ${to}`, to });
      return refusedOf(converted, target.ok ? 'from' : 'to');
    }
    const { value, doubt } = converted;
    return {
      answers: {
        value: { value, unit: to },
        doubt: doubt?.kind === 'plus-minus' ? { value: doubt.size, unit: to } : undefined,
        doubtFactor: doubt?.kind === 'factor' ? doubt.size : undefined,
      },
    };
  },
  examples: [
    {
      source: 'US liquid gallon of 231 in3, 3.785411784 L, exact (NIST Handbook 44, appendix C)',
      seen: 'printed',
      inputs: { from: '1 US gal', to: 'L' },
      expected: { value: '3.785411784 L' },
    },
    {
      source: 'imperial gallon of 4.54609 L, exact (Units of Measurement Regulations 1995)',
      seen: 'printed',
      inputs: { from: '100 imp gal', to: 'L' },
      expected: { value: '454.609 L' },
    },
    {
      source: '25 °C is 77 °F, exact',
      seen: 'formula',
      inputs: { from: '25 °C', to: '°F' },
      expected: { value: '77.000 °F' },
    },
    {
      source: 'a difference of 5 °C is one of 9 °F, exact',
      seen: 'formula',
      inputs: { from: '5 °C', to: '°F', difference: 'yes' },
      expected: { value: '9.000 °F' },
    },
  ],
});

/** The seven verdicts that leave. */
type Likely =
  | 'same'
  | 'imperial-gallon'
  | 'us-gallon'
  | 'digit-slip'
  | 'factor-ten'
  | 'swapped-digits'
  | 'unrelated';

/** The verdict for each finding, and what is said of it. */
const verdicts: Readonly<Record<PairCheck['likely'], { readonly likely: Likely; readonly says: string }>> = {
  same: { likely: 'same', says: 'Both are one figure within the rounding of what is written.' },
  'imperial-gallon': { likely: 'imperial-gallon', says: 'The figures fit with imperial gallons.' },
  'us-gallon': { likely: 'us-gallon', says: 'The figures fit with US gallons.' },
  'digit-slip': { likely: 'digit-slip', says: 'One wrong digit explains it.' },
  'factor-ten': { likely: 'factor-ten', says: 'A power of ten, or a digit lost or added, explains it.' },
  'swapped-digits': { likely: 'swapped-digits', says: 'Two digits that changed places explain it.' },
  'rounded-factor': {
    likely: 'same',
    says: 'They are within 0.5 % and no nearer: one figure, converted with a rounded factor.',
  },
  'factor-sixty': {
    likely: 'unrelated',
    says: 'They do not agree; a factor of sixty, minutes taken for hours, explains it.',
  },
  'not-converted': {
    likely: 'unrelated',
    says: 'They do not agree: the same number stands before both units, so it was not converted.',
  },
  unrelated: { likely: 'unrelated', says: 'They do not agree, and no slip that we know explains it.' },
};

export const pairCheck = reckoning({
  name: 'pair-check',
  says: 'Whether two ways of writing one figure agree, and which slip explains it where they do not.',
  formula: 'both sides widened by half a unit of their last digit',
  inputs: {
    a: text({ label: 'one figure', takes: 'a number with its unit', example: '620 L/h' }),
    b: text({ label: 'the same in another unit', takes: 'a number with its unit', example: '164 US gal/h' }),
  },
  results: {
    agrees: { label: 'agrees' },
    ratio: { label: 'first over second', unit: '1', dimension: 'count' },
    likely: { label: 'likely' },
    says: { label: 'that is' },
  },
  source: 'exact factors of the units; slips from common practice, no source',
  compute: ({ a, b }) => {
    const held = checkPair(a, b);
    if (!held.ok) return refusedOf(held, '');
    const { likely, says } = verdicts[held.likely];
    const fits = held.fits === undefined ? '' : ` What is written may mean two things; ${held.fits} fits.`;
    return { answers: { agrees: held.agrees, ratio: held.ratio, likely, says: says + fits } };
  },
  examples: [
    ...(
      [
        ['100 L', '26.4 US gal', 'true', 'same'],
        ['100 L', '22.0 US gal', 'false', 'imperial-gallon'],
        ['100 L', '26.4 imp gal', 'false', 'us-gallon'],
        ['100 L', '24.6 US gal', 'false', 'swapped-digits'],
        ['100 L', '264 US gal', 'false', 'factor-ten'],
        ['100 L', '27.4 US gal', 'false', 'digit-slip'],
        ['100 L', '61 US gal', 'false', 'unrelated'],
      ] as const
    ).map(([a, b, agrees, likely]) => ({
      source: 'exact gallons of 3.785411784 L and 4.54609 L: 100 L are 26.4172 US gal and 21.9969 imp gal',
      seen: 'formula' as const,
      inputs: { a, b },
      expected: { agrees, likely },
    })),
  ],
});
