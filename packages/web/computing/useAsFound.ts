import { alike } from '@fettle/job/changes/alike.ts';
import { useState } from 'react';

/** A document without the states that follow the one as found. */
const asFoundOnly = ({ planned: _, asLeft: __, ...found }: Readonly<Record<string, unknown>>) => found;

/** The document as far as the filter as found follows from it: the same one while only what is planned or left changes. */
export function useAsFound(document: Readonly<Record<string, unknown>>): unknown {
  const now = asFoundOnly(document);
  const [kept, keep] = useState(now);
  if (alike(kept, now)) return kept;
  keep(now);
  return now;
}
