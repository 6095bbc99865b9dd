import type { Problem } from '@fettle/job/problems.ts';

type Told = Pick<Problem, 'path' | 'says' | 'allowed'>;

const withPoint = (sentence: string): string => (/[.!?]$/.test(sentence) ? sentence : `${sentence}.`);

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
    : `${sentence} Allowed: ${withPoint(allowed)}`;
};
