import { readPath } from '@fettle/job/fieldPath.ts';

const partByGroup: Readonly<Record<string, string>> = {
  job: 'take-in',
  owner: 'take-in',
  tank: 'take-in',
  filter: 'map',
  packing: 'map',
  alterations: 'map',
  tests: 'as-found',
  planned: 're-pack',
  quote: 'quote',
  approval: 'quote',
  consent: 'quote',
  money: 'quote',
  asLeft: 'as-left',
};

/**
 * The part of the job's room in which a field stands.
 *
 * @param path the field, as problems write it
 * @returns the last part of the room's address; undefined where no part shows the field
 */
export const partOfField = (path: string): string | undefined => {
  const group = String(readPath(path)[0]);
  return Object.hasOwn(partByGroup, group) ? partByGroup[group] : undefined;
};
