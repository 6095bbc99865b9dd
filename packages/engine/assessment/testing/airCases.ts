import type { Model } from '../../model/model.ts';
import { fluidisedBed, matFilter, movingBed, onAir, spongeFilter } from './airModels.ts';
import { withMeasurements } from './models.ts';

/** For each finding of lift tubes and moved media a job that shows it, and one that must not. */
export const airCases: readonly (readonly [id: string, shown: Model, hidden: Model])[] = [
  ['lift-tube-short', withMeasurements(spongeFilter(), { tubeRise: 0.1 }), spongeFilter()],
  ['space-behind-narrow', withMeasurements(matFilter(), { spaceBehind: 0.012 }), matFilter()],
  ['mat-face-velocity', withMeasurements(matFilter(), { tubeBore: 0.01 }), matFilter()],
  ['mat-face-velocity', onAir(withMeasurements(matFilter(), { matWetHeight: 0.15 }), 900), matFilter()],
  ['bed-not-carried', withMeasurements(fluidisedBed(), { columnBore: 0.4 }), fluidisedBed()],
  ['bed-not-carried', fluidisedBed({ column: [['plastic-balls-35mm', 100]] }), fluidisedBed()],
  ['bed-washed-up', withMeasurements(fluidisedBed(), { columnHeight: 0.25 }), fluidisedBed()],
  ['carriers-overfull', movingBed({ carriers: [['plastic-carrier-10mm-tumbling', 190]] }), movingBed()],
  ['screen-too-wide', withMeasurements(movingBed(), { screenSlot: 0.02 }), movingBed()],
];
