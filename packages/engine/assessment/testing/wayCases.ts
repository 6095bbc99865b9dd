import type { Model } from '../../model/model.ts';
import { splitCanister, sump, trickleTower, withMeasurements } from './models.ts';

const towerOf = (medium: string): Model => trickleTower({ 'layer-1': [[medium, 200]] });

/** Findings about ways past media, open boxes and what lies where: the fault, a job that has it, and one that has it not. */
export const wayCases: readonly (readonly [finding: string, faulty: Model, sound: Model])[] = [
  [
    'partition-leaks',
    withMeasurements(splitCanister(), { partitionGap: 0.002 }),
    withMeasurements(splitCanister(), { partitionGap: 0 }),
  ],
  ['runs-down-walls', towerOf('plastic-balls-35mm'), towerOf('gravel-4mm')],
  ['media-out-of-place', sump({ sock: [['foam-30ppi', 3]] }), sump()],
  ['media-out-of-place', trickleTower({ 'layer-1': [['coarse-pad', 10]] }), trickleTower()],
  ['drip-plate-tight', withMeasurements(trickleTower(), { holesBlocked: 0.5 }), trickleTower()],
];
