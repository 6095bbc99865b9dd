import type { Chamber, Layout } from '@fettle/engine/families/layout.ts';

/** Whether a chamber is a sock that hangs in a ring: it is changed whole, and is not cut. */
export const isSock = ({ id }: Pick<Chamber, 'id'>): boolean => id === 'sock';

/** How hands lay the beds of a chamber: one on the other, round a tube, hung in a ring, or beside each other in a slot. */
export type Laying = 'upright' | 'tube' | 'slot' | 'sock';

export const layingOf = (chamber: Chamber): Laying => {
  if (isSock(chamber)) return 'sock';
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
