import type { Model } from '../model/model.ts';
import { engineEnglish } from '../wording/english/english.ts';
import { type Fact, said } from '../wording/said.ts';
import { wordFact } from '../wording/word.ts';
import type { Assessment } from './assessment.ts';

/** A place by its id, before it is put into a language: a bed by its chamber and medium, a chamber or way by its label. */
export const placeSaid = (
  model: Model,
  { layout, beds }: Pick<Assessment, 'layout' | 'beds'>,
  id: string,
): Fact => {
  const { chambers, openings, leaks, weirs } = layout;
  const labelOf = (one: string): string | undefined =>
    [...chambers, ...openings, ...leaks, ...weirs].find((place) => place.id === one)?.label;
  const bed = beds.find((one) => one.id === id);
  const beside = /^(cut|corners):(.*)$/.exec(id);
  if (beside) {
    const of = placeSaid(model, { layout, beds }, beside[2]!);
    return said(`place.${beside[1]!}`, { bed: of });
  }
  const slot = model.filter.otherSlots?.find((one) => `slot:${one.id}` === id);
  if (slot !== undefined) {
    return said(`place.${slot.at}`, { chamber: { name: labelOf(slot.chamber) ?? slot.chamber } });
  }
  if (bed === undefined) return { name: labelOf(id.replace(/^gap:/, '')) ?? id };
  return said('bed-in-chamber', {
    medium: { name: model.media[bed.medium]!.name },
    chamber: { name: labelOf(bed.chamber) ?? bed.chamber },
  });
};

/** A place by its id, in English. */
export const placeName = (
  model: Model,
  assessment: Pick<Assessment, 'layout' | 'beds'>,
  id: string,
): string => wordFact(placeSaid(model, assessment, id), { language: engineEnglish, units: 'metric' });
