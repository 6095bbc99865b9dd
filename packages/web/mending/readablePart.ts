import { readPath } from '@fettle/job/fieldPath.ts';
import type { Problem } from '@fettle/job/problems.ts';

/** The states of a filter that follow the one as found, by their fields in a job. */
export type LaterField = 'planned' | 'asLeft';

const laterFields: readonly LaterField[] = ['planned', 'asLeft'];

const isIn = (field: string, { path }: Pick<Problem, 'path'>): boolean => readPath(path)[0] === field;

/** The problems of one field of a job and of all that is in it. */
export const problemsIn = <Told extends Pick<Problem, 'path'>>(
  field: string,
  problems: readonly Told[],
): readonly Told[] => problems.filter((problem) => isIn(field, problem));

/**
 * The later states that have to be left out of a document so that the rest of it reads.
 *
 * @returns none where nothing is wrong, or something beside those states is
 */
export const statesToLeaveOut = (problems: readonly Pick<Problem, 'path'>[]): readonly LaterField[] => {
  const isLater = problems.every((problem) => laterFields.some((field) => isIn(field, problem)));
  return isLater ? laterFields.filter((field) => problemsIn(field, problems).length > 0) : [];
};

/** A document without some of its states. */
export const withoutStates = (
  document: Readonly<Record<string, unknown>>,
  fields: readonly string[],
): Readonly<Record<string, unknown>> =>
  Object.fromEntries(Object.entries(document).filter(([name]) => !fields.includes(name)));
