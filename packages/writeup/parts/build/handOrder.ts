import type { Chamber, Layout } from '@fettle/engine/families/layout.ts';
import { isSewn } from '@fettle/engine/packing/holding.ts';
import { handlingKind } from '@fettle/engine/planning/handling.ts';
import type { AssessedState } from '../../source.ts';

/** Whether it is a closed vessel on hoses in which the water keeps its media moving. */
export const isColumn = (state: AssessedState): boolean =>
  handlingKind(state) === 'canister' &&
  state.assessment.layout.chambers.every(({ moved }) => moved !== undefined);

/**
 * How hands lay the beds of a chamber: one on the other, round a tube, hung in a ring, beside each other in a slot, poured
 * into water that moves them, or put in as one piece.
 */
export type Laying = 'upright' | 'tube' | 'slot' | 'sock' | 'moved' | 'piece';

/** Families whose one chamber is a single piece of foam. */
const isOnePiece = ({ id }: Pick<Chamber, 'id'>): boolean => id === 'sponge' || id === 'mat';

export const layingOf = (chamber: Chamber): Laying => {
  if (isSewn(chamber)) return 'sock';
  if (chamber.moved !== undefined) return 'moved';
  if (isOnePiece(chamber)) return 'piece';
  if (chamber.ring !== undefined) return 'tube';
  return isUpright(chamber) ? 'upright' : 'slot';
};

/** Whether the beds of a chamber lie on each other; else they stand beside each other. */
export const isUpright = ({ flow }: Chamber): boolean => flow === 'up' || flow === 'down';

/**
 * The chambers in the order in which hands fill them: a stack from its lowest, the left stack first, slots from the
 * pump's side.
 */
export const inHandOrder = ({ chambers }: Layout): readonly Chamber[] =>
  chambers.toSorted((one, other) => one.box.x - other.box.x || one.box.y - other.box.y);
