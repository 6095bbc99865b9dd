import type { Model } from '@fettle/engine/model/model.ts';
import { type FoundPlan, plannedState } from '@fettle/workflows/plannedState.ts';
import type { Edit } from '../session/history.ts';

/** The change of a job that makes a plan that was found the one that is planned. */
export const takingPlan = (plan: FoundPlan, model: Model): Edit => ({
  says: `take ${plan.id}`,
  recipe: (draft) => {
    draft.planned = plannedState(plan, model);
  },
});
