import type { Quick } from '../computing/useQuick.ts';

/** Why there is no drawing yet, one sentence: something has to be filled in first, or it is being computed. */
export const whyNoDrawing = (
  { problems }: Pick<Quick, 'problems'>,
  toFillIn: 'the map is' | 'the measurements are' = 'the map is',
): string => (problems.length === 0 ? 'Drawing it…' : `The drawing comes when ${toFillIn} filled in.`);
