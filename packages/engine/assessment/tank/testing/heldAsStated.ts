import type { StiffSystem } from '../../../numerics/rodas.ts';
import type { TankMarch } from '../beginTank.ts';
import { at } from '../tankState.ts';

/** A tank whose oxygen and alkalinity are held where they begin: where an assessment has them, both are stated. */
export const heldAsStated = ({ system }: Pick<TankMarch, 'system'>): StiffSystem => ({
  size: system.size,
  derivative: (time, y, into) => {
    system.derivative(time, y, into);
    into[at.oxygen] = 0;
    into[at.alkalinity] = 0;
  },
});
