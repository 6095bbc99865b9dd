import { readPath } from '@fettle/job/fieldPath.ts';
import type { Problem } from '@fettle/job/problems.ts';

/** The states of a filter that follow the one as found, by their fields in a job. */
export type LaterField = 'planned' | 'asLeft';

/** Fields from which neither the drawing nor the figures of the filter as found follow. */
const fieldsApart: readonly string[] = ['planned', 'asLeft', 'job', 'owner', 'consent', 'quote', 'approval'];

const isIn = (field: string, { path }: Pick<Problem, 'path'>): boolean => readPath(path)[0] === field;

/** The problems of one field of a job and of all that is in it. */
export const problemsIn = <Told extends Pick<Problem, 'path'>>(
  field: string,
  problems: readonly Told[],
): readonly Told[] => problems.filter((problem) => isIn(field, problem));

/**
 * The fields that have to be left out of a document so that the rest of it reads: later states, and what is written of
 * the job beside the filter, such as a quote with a price still open.
 *
 * @returns none where nothing is wrong, or something beside those fields is
 */
export const fieldsToLeaveOut = (problems: readonly Pick<Problem, 'path'>[]): readonly string[] => {
  const areApart = problems.every((problem) => fieldsApart.some((field) => isIn(field, problem)));
  return areApart ? fieldsApart.filter((field) => problemsIn(field, problems).length > 0) : [];
};

/** A document without some of its fields. */
export const withoutFields = (
  document: Readonly<Record<string, unknown>>,
  fields: readonly string[],
): Readonly<Record<string, unknown>> =>
  Object.fromEntries(Object.entries(document).filter(([name]) => !fields.includes(name)));
