import type { Model } from '../../model/model.ts';
import { trickleTower, withMeasurements } from './models.ts';

const towerOf = (medium: string): Model => trickleTower({ 'layer-1': [[medium, 200]] });

/** Findings about open boxes: the fault, a job that has it, and one that has it not. */
export const openBoxCases: readonly (readonly [finding: string, faulty: Model, sound: Model])[] = [
  ['runs-down-walls', towerOf('plastic-balls-35mm'), towerOf('gravel-4mm')],
  ['drip-plate-tight', withMeasurements(trickleTower(), { holesBlocked: 0.5 }), trickleTower()],
];
