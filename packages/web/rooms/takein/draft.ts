import type { Worked } from '../../session/history.ts';

/** A filter that is being taken in, before it has a number. */
export const emptyDraft = (today: string): Worked => ({
  fettle: 1,
  job: { received: today, stage: 'taken-in' },
  tank: {},
  filter: { pump: {} },
  packing: {},
});

const place = 'fettle-take-in';

/** The draft that this browser kept, or an empty one. */
export const keptDraft = (today: string): Worked => {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(place) ?? '');
    if (typeof kept === 'object' && kept !== null && Reflect.get(kept, 'fettle') === 1)
      return { fettle: 1, ...kept };
  } catch {
    // Nothing was kept, or what was kept is none.
  }
  return emptyDraft(today);
};

export const keepDraft = (draft: Worked): void => {
  try {
    localStorage.setItem(place, JSON.stringify(draft));
  } catch {
    // A browser without room keeps nothing; the page itself does.
  }
};

export const forgetDraft = (): void => localStorage.removeItem(place);

/** Problems of what is not filled in yet: nobody is told of them before they are done. */
const lacking = ['missing-field', 'measurement-missing', 'flow-missing', 'empty-field'];

/** The problems of a form that are shown: those of what is there, and of what lacks once it was sent. */
export const shownProblems = <Problem extends { readonly code: string }>(
  problems: readonly Problem[],
  wasSent: boolean,
): readonly Problem[] => (wasSent ? problems : problems.filter(({ code }) => !lacking.includes(code)));
