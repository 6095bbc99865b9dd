import type { Model } from '../model/model.ts';
import type { Assessment } from './assessment.ts';

/** A place by its id for people: a bed by its chamber and medium, a chamber or way by its label. */
export const placeName = (
  model: Model,
  { layout, beds }: Pick<Assessment, 'layout' | 'beds'>,
  id: string,
): string => {
  const { chambers, openings, leaks, weirs } = layout;
  const labelOf = (one: string): string | undefined =>
    [...chambers, ...openings, ...leaks, ...weirs].find((place) => place.id === one)?.label;
  const bed = beds.find((one) => one.id === id);
  if (bed) return `${model.media[bed.medium]!.name} in ${labelOf(bed.chamber) ?? bed.chamber}`;
  return labelOf(id.replace(/^gap:/, '')) ?? id;
};
