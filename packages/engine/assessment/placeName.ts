import type { Model } from '../model/model.ts';
import { engineEnglish } from '../wording/english/english.ts';
import { type Fact, said } from '../wording/said.ts';
import { wordFact } from '../wording/word.ts';
import type { Assessment, BedState } from './assessment.ts';

/** What a place is told by: the filter's layout, and its beds. */
export interface Placed {
  readonly layout: Assessment['layout'];
  readonly beds: readonly Pick<BedState, 'id' | 'chamber' | 'medium'>[];
}

/** A place by its id, before it is put into a language: a bed by its chamber and medium, a chamber or way by its label. */
export const placeSaid = (model: Model, { layout, beds }: Placed, id: string): Fact => {
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
  const isNamed = chambers.find((chamber) => chamber.id === bed.chamber)?.isNamedByMedia;
  return said(isNamed ? 'bed-of-its-own' : 'bed-in-chamber', {
    medium: { name: model.media[bed.medium]!.name },
    chamber: { name: labelOf(bed.chamber) ?? bed.chamber },
  });
};

/** A place by its id, in English. */
export const placeName = (model: Model, placed: Placed, id: string): string =>
  wordFact(placeSaid(model, placed, id), { language: engineEnglish, units: 'metric' });
