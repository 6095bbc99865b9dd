import { jobStages } from '@fettle/job/stages.ts';
import { putting, valueAt } from '../../forms/places.ts';
import type { Edit } from '../../session/history.ts';

const stagesBefore = jobStages.slice(0, jobStages.indexOf('built'));

/**
 * The change that writes down that the filter was built as planned, or left as it was found where nothing was planned,
 * and on which day; the stage follows where the work is not further already.
 *
 * @param today the day on which it is said, ISO
 */
export const builtAsBefore = (says: string, today: string): Edit => ({
  says,
  recipe: (draft) => {
    const { packing = {}, made } = Object(draft.planned ?? { packing: draft.packing });
    draft.asLeft = { packing, ...(made === undefined ? {} : { made }), day: today };
    const stage = valueAt(draft, ['job', 'stage']) ?? stagesBefore[0];
    if (stagesBefore.some((each) => each === stage)) putting(['job', 'stage'], 'built')(draft);
  },
});
