import type { Chamber } from '../families/layout.ts';
import { type ComesAs, comesAs, type Medium } from '../model/medium.ts';
import type { Bed, Laying } from '../model/model.ts';

type Media = Readonly<Record<string, Medium>>;

/** A medium and how it lies, as a bed or on its way into one. */
type Laid = Pick<Bed, 'medium'> & { readonly laying?: Laying };

/** What a bed is to the hand that lays it; what is in a bag is a bag, and of a mixture each medium counts. */
export const bedComesAs = ({ medium, laying }: Laid, media: Media): readonly ComesAs[] => {
  if (laying?.bag !== undefined) return ['bagged'];
  const mixed = laying?.mixed === undefined ? [] : [laying.mixed.medium];
  return [medium, ...mixed].map((id) => comesAs(media[id]!));
};

/** Whether a chamber is made to hold a bed. */
export const isMadeFor = ({ holds }: Pick<Chamber, 'holds'>, bed: Laid, media: Media): boolean =>
  bedComesAs(bed, media).every((one) => holds.includes(one));

/** Whether what a chamber holds comes sewn to its size: it is there as it is, or not at all. */
export const isSewn = ({ holds }: Pick<Chamber, 'holds'>): boolean => holds.every((one) => one === 'cloth');

/**
 * The chambers in groups between which media can change places: those of a group are made to hold something alike.
 * A sock and the trays behind it are two groups, the baskets of a canister are one.
 */
export const exchangeGroups = (chambers: readonly Chamber[]): readonly (readonly Chamber[])[] => {
  let groups: (readonly Chamber[])[] = [];
  for (const chamber of chambers) {
    const isAlike = (group: readonly Chamber[]): boolean =>
      group.some(({ holds }) => holds.some((one) => chamber.holds.includes(one)));
    const joined = [...groups.filter(isAlike).flat(), chamber];
    groups = [...groups.filter((group) => !isAlike(group)), joined];
  }
  return groups;
};
