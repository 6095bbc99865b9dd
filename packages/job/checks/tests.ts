import type { Context } from '../context.ts';
import type { Draft } from '../draft.ts';
import { type Problem, problem } from '../problems.ts';
import { checkChamber, checkTwice } from './names.ts';

/** Chambers that tests name, and short names of tests, each once. */
export function checkTests(draft: Draft, context: Context): readonly Problem[] {
  const tests = draft.tests ?? [];
  const chambers = tests.flatMap((test, index) =>
    test?.kind === 'displacement' ? checkChamber(test.chamber, ['tests', index, 'chamber'], context) : [],
  );
  const ids = tests.map((test, index) => ({ id: test?.id, path: ['tests', index, 'id'] }));
  const vessels = tests.flatMap((test, index) =>
    test?.kind === 'dye' && test.loop === 'returning' && !('water' in test)
      ? [
          problem('missing-field', ['tests', index, 'water'], {
            facts: {},
            allowed: 'the water in the vessel',
          }),
        ]
      : [],
  );
  return [...chambers, ...vessels, ...checkTwice(ids)];
}
