import type { Context } from '../context.ts';
import type { Draft } from '../draft.ts';
import type { Problem } from '../problems.ts';
import { checkAbout, checkAgreement } from './agreement.ts';
import { checkAlterations, checkMade } from './alterations.ts';
import { checkFilter } from './filter.ts';
import { checkMoney } from './money.ts';
import { checkPacking } from './packing.ts';
import { checkOtherFilters, checkShelf } from './tank.ts';
import { checkTests } from './tests.ts';

/** How the parts of a document fit together; each check looks at one topic. */
const checks: readonly ((draft: Draft, context: Context) => readonly Problem[])[] = [
  checkAbout,
  checkFilter,
  checkPacking,
  checkAlterations,
  checkMade,
  checkTests,
  checkOtherFilters,
  checkMoney,
  checkShelf,
  checkAgreement,
];

/** All that does not fit together in a document of the right shape. */
export function checkDraft(draft: Draft, context: Context): readonly Problem[] {
  return [...context.problems, ...checks.flatMap((check) => check(draft, context))];
}
