import type { Model } from '../model/model.ts';
import { engineEnglish } from '../wording/english/english.ts';
import { type Said, said } from '../wording/said.ts';
import { word } from '../wording/word.ts';
import type { Assessment } from './assessment.ts';
import { placeSaid } from './placeName.ts';

/** Share of the clean flow from which a jug shows no clogged bed: a timed filling is hardly known better (our own choice). */
export const HIDDEN_FROM = 0.9;

/** Whether water runs through the bed's gap; other ways past it have no one name. */
const hasGap = ({ beds, wayFlowM3PerS }: Assessment, place: string): boolean => {
  const chamber = beds.find(({ id }) => id === place)?.chamber;
  return (wayFlowM3PerS[`gap:${chamber}`] ?? 0) > 0;
};

/**
 * What the end of the cleaning interval looks like, as people say it after “then”: what happens at the place that
 * decides, and whether the flow at the tank lets it be seen. A bed that has clogged is no contradiction to a flow that is
 * as good as clean, for the water goes past it.
 */
export const intervalEndSaid = (model: Model, assessment: Assessment): Said => {
  const { endedBy, place = '', flowRatio } = assessment.cleaning;
  if (endedBy === 'none') return said('end.none');
  const facts = { place: placeSaid(model, assessment, place), share: { share: flowRatio } };
  if (endedBy === 'overflow') return said('end.overflow', facts);
  if (flowRatio < HIDDEN_FROM) return said('end.slows', facts);
  return said(hasGap(assessment, place) ? 'end.past-gap' : 'end.past-otherwise', facts);
};

/** The same in English. */
export const intervalEnd = (model: Model, assessment: Assessment): string =>
  word(intervalEndSaid(model, assessment), { language: engineEnglish, units: 'metric' });
