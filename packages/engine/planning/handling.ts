import type { Assessment } from '../assessment/assessment.ts';
import type { Model } from '../model/model.ts';

/** How hands reach into a filter: a closed vessel on hoses, an open box under the tank, a box that hangs on the tank, or one that stands in it. */
export const handlingKinds = ['canister', 'sump', 'hanging', 'submerged'] as const;
export type HandlingKind = (typeof handlingKinds)[number];

/** How a filter is reached, by what it is built of. */
export const handlingKind = ({
  model,
  assessment,
}: {
  readonly model: Pick<Model, 'filter'>;
  readonly assessment: Pick<Assessment, 'layout'>;
}): HandlingKind => {
  if (assessment.layout.gravityFed) return 'sump';
  if (model.filter.outlet) return 'canister';
  return assessment.layout.weirs.length > 0 ? 'hanging' : 'submerged';
};
