import type { Assessment } from '../assessment/assessment.ts';
import { familyById } from '../families/families.ts';
import type { Model } from '../model/model.ts';

/**
 * How hands reach into a filter: a closed vessel on hoses, an open box under the tank, a box that hangs on the tank, one
 * that stands in it and is lifted out, the same driven by air, or one that is built into the tank and stays there.
 */
export const handlingKinds = ['canister', 'sump', 'hanging', 'submerged', 'air', 'built-in'] as const;
export type HandlingKind = (typeof handlingKinds)[number];

/** How a filter is reached, by what it is built of. */
export const handlingKind = ({
  model,
  assessment,
}: {
  readonly model: Pick<Model, 'filter'>;
  readonly assessment: Pick<Assessment, 'layout'>;
}): HandlingKind => {
  if (familyById(model.filter.family)?.staysInTank) return 'built-in';
  if (isDrivenByAir(model)) return 'air';
  if (assessment.layout.gravityFed) return 'sump';
  if (model.filter.outlet) return 'canister';
  return assessment.layout.weirs.length > 0 ? 'hanging' : 'submerged';
};

/** Whether bubbles lift its water, and no pump stands in it. */
export const isDrivenByAir = ({ filter }: Pick<Model, 'filter'>): boolean =>
  filter.pump.curve.kind === 'air-lift';

/** Whether it works within the tank's own water: nothing of it leaks onto a floor, and its flow is caught in a bag. */
export const worksInTank = (kind: HandlingKind): boolean =>
  kind === 'submerged' || kind === 'air' || kind === 'built-in';
