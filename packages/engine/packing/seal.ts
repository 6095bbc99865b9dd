import type { Layout } from '../families/layout.ts';
import type { Model } from '../model/model.ts';

/** What a fitted strip still lets through, as the thickness of a slot, m (from memory, within a factor of 2). */
export const SEALED_GAP_M = 5e-5;

/** A gap with a strip in it: never wider than it was. */
export const sealedGap = (thicknessM: number): number => Math.min(thicknessM, SEALED_GAP_M);

/** Clear thickness of the gap past a chamber: the job's own, else the family's; m. */
export const chamberGap = (model: Model, chamber: Layout['chambers'][number]): number =>
  model.filter.chamberGapM[chamber.id] ?? chamber.gap.thicknessM;

/** The same job with strips in the gaps past some chambers. */
export const withSealedChambers = (model: Model, chambers: Layout['chambers']): Model => ({
  ...model,
  filter: {
    ...model.filter,
    chamberGapM: {
      ...model.filter.chamberGapM,
      ...Object.fromEntries(chambers.map((chamber) => [chamber.id, sealedGap(chamberGap(model, chamber))])),
    },
  },
});
