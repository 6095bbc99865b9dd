import type { PackedState } from '@fettle/engine/model/model.ts';

export type { PackedState };

/** States of a filter that a job may describe, in the order of the work. */
export const packedStates = ['as-found', 'planned', 'as-left'] as const satisfies readonly PackedState[];

/** Fields of the document that hold the states after the one as found, whose packing is the document's own. */
export const packedStateFields = ['planned', 'asLeft'] as const;

const fieldOf = { planned: 'planned', 'as-left': 'asLeft' } as const;

/** The field that holds a state. */
export const stateField = (state: Exclude<PackedState, 'as-found'>): (typeof packedStateFields)[number] =>
  fieldOf[state];
