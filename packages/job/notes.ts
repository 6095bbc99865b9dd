import { type FieldPath, writtenPath } from './fieldPath.ts';

/** Something to know about a document that reads well. */
export interface Note {
  readonly code: NoteCode;
  readonly path: string;
  readonly says: string;
}

/** What a note is told. */
interface NoteFacts {
  'kept-not-used': { readonly what: string };
  'alterations-not-stated': { readonly known: string };
  'alterations-need-settings': { readonly left: string };
  'shelf-not-stated': { readonly media: string };
  'placeholder-prices': { readonly currency: string };
  'repeat-assumed': object;
  'template-values': { readonly fields: string };
  'odd-run': {
    readonly found: string;
    readonly others: string;
    readonly ratio: string;
    readonly critical: string;
  };
  'beds-alike': { readonly medium: string };
  'feed-not-stated': { readonly from: string };
  'name-respelt': { readonly found: string; readonly taken: string };
  'barbs-wider-than-hose': { readonly barbs: string; readonly hose: string };
  'overflow-below-outlet': { readonly overflow: string; readonly outlet: string };
}

/** Stable code of a note. */
export type NoteCode = keyof NoteFacts;

/** The wording of every note, by code. */
export const noteWordings: { readonly [C in NoteCode]: (path: string, facts: NoteFacts[C]) => string } = {
  'kept-not-used': (path, { what }) =>
    `${path} (${what}) is kept in the document but not yet used in any figure.`,
  'alterations-not-stated': (_path, { known }) =>
    `alterations is absent, so plans change only the packing; this family allows ${known}.`,
  'alterations-need-settings': (_path, { left }) =>
    `alterations forbids some and so permits the others, but ${left} must be permitted with a setting of its own.`,
  'shelf-not-stated': (_path, { media }) =>
    `shelf is absent, so a common shelf is assumed, in any amount: ${media}.`,
  'placeholder-prices': (_path, { currency }) =>
    `Prices that money does not state are placeholders in pounds sterling, taken as the same number of ${currency}.`,
  'beds-alike': (path, { medium }) =>
    `${path} lies on a bed of the same medium (${medium}); the two work as one bed.`,
  'repeat-assumed': (path) =>
    `${path} has only one timing; its scatter is assumed to be that of careful repeats.`,
  'template-values': (_path, { fields }) =>
    `These fields still say what fettle new wrote, figures of an invented filter: ${fields}. Put your own in their place.`,
  'odd-run': (path, { found, others, ratio, critical }) =>
    `${path} (${found}) lies outside what the other runs allow (${others}; Dixon's ratio ${ratio}, more than ${critical}); it is counted all the same, so time more runs, and leave it out only where you know what went wrong.`,
  'feed-not-stated': (path, { from }) => `${path} is absent, so the feed is estimated from ${from}.`,
  'name-respelt': (path, { found, taken }) => `${path} says ${found}, which is taken as ${taken}.`,
  'barbs-wider-than-hose': (path, { barbs, hose }) =>
    `${path} says that the barbs are wider inside (${barbs}) than their hose (${hose}); barbs that fit into a hose are narrower, so check both.`,
  'overflow-below-outlet': (path, { overflow, outlet }) =>
    `${path} (${overflow}) is not above the outlet edge (${outlet}), so water spills over the overflow lip even while the media are clean; check both.`,
};

/** Makes a note from its code, its place and what its wording has to be told. */
export function note<C extends NoteCode>(code: C, path: FieldPath, facts: NoteFacts[C]): Note {
  const where = writtenPath(path);
  return { code, path: where, says: noteWordings[code](where, facts) };
}
