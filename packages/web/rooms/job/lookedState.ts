import { type PackedState, packedStates, stateField } from '@fettle/job/packedStates.ts';
import { inWords } from '../../app/words.ts';

type Described = Readonly<Record<string, unknown>>;

/** The states of the filter that a job describes, in the order of the work. */
export const statesOf = (document: Described): readonly PackedState[] =>
  packedStates.filter((state) => state === 'as-found' || document[stateField(state)] !== undefined);

/**
 * The state that is looked at: the one that was asked for where the job describes it, else the one that the work has
 * got to.
 *
 * @param asked as an address has it; null where it names none
 */
export const lookedState = (document: Described, asked: string | null): PackedState => {
  const states = statesOf(document);
  return states.find((state) => state === asked) ?? states.at(-1) ?? 'as-found';
};

/** A state as people say it: `as left`. */
export const stateInWords = (state: PackedState): string => inWords(state);
