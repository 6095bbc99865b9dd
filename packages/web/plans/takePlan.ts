import type { Layout } from '@fettle/engine/families/layout.ts';
import { alterationSettings } from '@fettle/job/alterationList.ts';
import type { PlansResult } from '@fettle/workflows/results/plans.ts';
import type { Edit } from '../session/history.ts';

type FoundPlan = PlansResult['plans'][number];

const millimetres = (metres: number): string => `${Number((metres * 1000).toFixed(1))} mm`;

/** The beds of a plan as a document lists them: from the top down, or from the pump's side. */
const listedPacking = ({ packing }: FoundPlan, { chambers }: Layout) =>
  Object.fromEntries(
    packing.map(({ chamber, beds }) => {
      const isTurned = chambers.find(({ id }) => id === chamber)?.listedInWaterOrder === false;
      const written = beds.map(({ medium, depth }) => ({ medium, depth: millimetres(depth.value) }));
      return [chamber, isTurned ? written.toReversed() : written];
    }),
  );

/** Alterations of a plan as a document writes them. */
const writtenAlterations = ({ alterations }: FoundPlan): readonly unknown[] =>
  alterations.map(({ id, settings }) => {
    const written = Object.entries(alterationSettings).flatMap(([name, key]) => {
      const value = settings[key];
      return value === undefined ? [] : [[name, millimetres(value)] as const];
    });
    return written.length === 0 ? id : { change: id, ...Object.fromEntries(written) };
  });

/** The change of a job that makes a plan that was found the one that is planned. */
export const takingPlan = (plan: FoundPlan, layout: Layout): Edit => ({
  says: `take ${plan.id}`,
  recipe: (draft) => {
    const made = writtenAlterations(plan);
    draft.planned = {
      packing: listedPacking(plan, layout),
      ...(made.length === 0 ? {} : { made }),
    };
  },
});
