import type { PackedState } from '@fettle/engine/model/model.ts';
import type { JobDocument } from './schema/job.ts';

export type { PackedState };

/** States of a filter that a job may describe, in the order of the work. */
export const packedStates = ['as-found', 'planned', 'as-left'] as const satisfies readonly PackedState[];

/** Fields of the document that hold the states after the one as found, whose packing is the document's own. */
export const packedStateFields = ['planned', 'asLeft'] as const;

const fieldOf = { planned: 'planned', 'as-left': 'asLeft' } as const;

/** The field that holds a state. */
export const stateField = (state: Exclude<PackedState, 'as-found'>): (typeof packedStateFields)[number] =>
  fieldOf[state];

/** A state in which the filter was, or is; what is planned is not true yet. */
export type TrueState = Exclude<PackedState, 'planned'>;

/** The last state of the filter that a job describes and that is true: as left, else as found. */
export const lastTrueState = ({ asLeft }: Pick<JobDocument, 'asLeft'>): TrueState =>
  asLeft === undefined ? 'as-found' : 'as-left';

/** `as-left` as people say it. */
export const stateInWords = (state: PackedState): string => state.replaceAll('-', ' ');
