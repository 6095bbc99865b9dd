import { useAlike } from './useAlike.ts';

/** A document without the states that follow the one as found. */
const asFoundOnly = ({ planned: _, asLeft: __, ...found }: Readonly<Record<string, unknown>>) => found;

/** The document as far as the filter as found follows from it: the same one while only what is planned or left changes. */
export const useAsFound = (document: Readonly<Record<string, unknown>>): unknown =>
  useAlike(asFoundOnly(document));
