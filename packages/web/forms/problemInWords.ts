import type { Problem } from '@fettle/job/problems.ts';
import { nameOfValue } from './valueNames.ts';

type Told = Pick<Problem, 'path' | 'says' | 'allowed'>;

const withPoint = (sentence: string): string => (/[.!?]$/.test(sentence) ? sentence : `${sentence}.`);

/** Short names of kinds of filter by their names, as the forms show them. */
const inNames = (path: string, allowed: string): string =>
  path.endsWith('family')
    ? allowed
        .split(', ')
        .map((word) => nameOfValue({}, 'family', word) ?? word)
        .join(', ')
    : allowed;

/**
 * What is wrong with a field, for people who see its label and not its path, with what is allowed.
 *
 * @param called what the field is called where people see it
 */
export const problemInWords = ({ path, says, allowed }: Told, called: string): string => {
  const isNamed = path !== '' && says.startsWith(`${path} `);
  const sentence = withPoint(isNamed ? `${called}${says.slice(path.length)}` : says);
  return allowed === undefined || sentence.includes(allowed)
    ? sentence
    : `${sentence} Allowed: ${withPoint(inNames(path, allowed))}`;
};
