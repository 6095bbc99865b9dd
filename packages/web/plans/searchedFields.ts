import { alike } from '@fettle/job/changes/alike.ts';

type Document = Readonly<Record<string, unknown>>;

/** The fields of a job that a search for plans goes by; what is planned, quoted or left does not change it. */
const searched = [
  'tank',
  'filter',
  'packing',
  'alterations',
  'tests',
  'otherFilters',
  'money',
  'shelf',
  'media',
] as const;

/** Whether a search would begin from the same filter, tank and shelf in both documents. */
export const isSearchedAlike = (one: Document, other: Document): boolean =>
  searched.every((field) => alike(one[field], other[field]));
