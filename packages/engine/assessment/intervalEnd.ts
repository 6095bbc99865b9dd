import type { Model } from '../model/model.ts';
import { printShare } from '../quantities/printShort.ts';
import type { Assessment } from './assessment.ts';
import { placeName } from './placeName.ts';

/** Flow at the tank from which a jug shows no clogged bed: a timed filling is hardly known better (our own choice). */
const HIDDEN_FROM = 0.9;

/** The bed's gap, where water runs through one; other ways past it have no one name. */
const wayPast = ({ beds, wayFlowM3PerS }: Assessment, place: string): string => {
  const chamber = beds.find(({ id }) => id === place)?.chamber;
  return (wayFlowM3PerS[`gap:${chamber}`] ?? 0) > 0 ? 'past it through the gap' : 'past it another way';
};

/**
 * What the end of the cleaning interval looks like, as people say it after “then”: what happens at the place that
 * decides, and whether the flow at the tank lets it be seen. A bed that is full is no contradiction to a flow that is
 * as good as clean, for the water goes past it.
 */
export const intervalEnd = (model: Model, assessment: Assessment): string => {
  const { endedBy, place = '', flowRatio } = assessment.cleaning;
  const name = placeName(model, assessment, place);
  const left = `${printShare(flowRatio)} of the clean flow`;
  if (endedBy === 'none') return 'nothing has happened';
  if (endedBy === 'overflow') return `the ${name} opens, and ${left} is left at the tank`;
  const full = `the ${name} is full`;
  if (flowRatio < HIDDEN_FROM)
    return `${full} and lets a third less water through, and ${left} is left at the tank`;
  return `${full}; from then on a third of its water and more goes ${wayPast(assessment, place)}, so a timed jug will not show it: ${left} still reaches the tank`;
};
