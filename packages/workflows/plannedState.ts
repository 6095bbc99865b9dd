import { drawnLayout } from '@fettle/engine/families/families.ts';
import type { Layout } from '@fettle/engine/families/layout.ts';
import type { Model } from '@fettle/engine/model/model.ts';
import { altered } from '@fettle/engine/planning/alterations.ts';
import { alterationSettings } from '@fettle/job/alterationList.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { PlansResult } from './results/plans.ts';

/** A plan as a search found it. */
export type FoundPlan = PlansResult['plans'][number];

type FoundLaying = NonNullable<FoundPlan['packing'][number]['beds'][number]['laying']>;

const layoutOf = ({ filter }: Model): Layout => drawnLayout(filter);

type Planned = NonNullable<JobDocument['planned']>;

const millimetres = (metres: number): string => `${Number((metres * 1000).toPrecision(6))} mm`;

/** Of a tenth of a millimetre: a depth of whole tenths stays, though its figure may end just below. */
const roundingSlack = 1e-6;

/** To the tenth of a millimetre below: beds that fill a chamber must still have room in it. */
const depthText = (metres: number): string => `${Math.floor(metres * 10_000 + roundingSlack) / 10} mm`;

/** How a bed lies, as a document says it. */
const writtenLaying = ({ cutGap, pressedFrom, mixed, bag }: FoundLaying) => ({
  ...(cutGap === undefined ? {} : { cutGap: `${cutGap.value} mm` }),
  ...(pressedFrom === undefined ? {} : { pressedFrom: `${pressedFrom.value} mm` }),
  ...(mixed === undefined ? {} : { mixed: { medium: mixed.medium, share: `${100 * mixed.share.value} %` } }),
  ...(bag === undefined
    ? {}
    : { bag: { open: `${100 * bag.open.value} %`, corners: `${bag.corners.value} mm` } }),
});

/** The beds of a plan as a document lists them: from the top down, or from the pump's side. */
const listedPacking = ({ packing }: FoundPlan, { chambers }: Layout): Planned['packing'] =>
  Object.fromEntries(
    packing.map(({ chamber, beds }) => {
      const isTurned = chambers.find(({ id }) => id === chamber)?.listedInWaterOrder === false;
      const written = beds.map(({ medium, depth, laying }) => ({
        medium,
        depth: depthText(depth.value),
        ...(laying === undefined ? {} : writtenLaying(laying)),
      }));
      return [chamber, isTurned ? written.toReversed() : written];
    }),
  );

const writtenAlterations = ({ alterations }: FoundPlan): NonNullable<Planned['made']> =>
  alterations.map(({ id, settings }) => {
    const written = Object.entries(alterationSettings).flatMap(([name, key]) => {
      const value = settings[key];
      return value === undefined ? [] : [[name, millimetres(value)] as const];
    });
    return written.length === 0 ? id : { change: id, ...Object.fromEntries(written) };
  });

/**
 * A plan that was found, as a job's planned state: depths to the tenth of a millimetre below.
 *
 * @param model of the job for which the plan was found
 */
export const plannedState = (plan: FoundPlan, model: Model): Planned => {
  const made = writtenAlterations(plan);
  // A turned head turns the way of the water, and with it which bed it meets first.
  const built = altered(model, layoutOf(model), plan.alterations);
  return { packing: listedPacking(plan, layoutOf(built)), ...(made.length === 0 ? {} : { made }) };
};
