import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import type { PackedState } from '@fettle/job/packedStates.ts';
import type { Problem } from '@fettle/job/problems.ts';
import { assessJob, USUAL_DRAWS } from './assessJob.ts';
import type { JobSource } from './openJob.ts';
import { openState } from './openState.ts';
import { type AssessmentResult, toAssessmentResult } from './results/assessment.ts';

/** What was made of a job, or everything that is wrong with its document. */
export type Outcome<Result> =
  | { readonly ok: true; readonly result: Result }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Reads a job and assesses it.
 *
 * @param of `day` is the day of the comparison, days since every bed was cleaned, 1 to 365; the tank's own where left out.
 *   `system` is the system of units of the words, metric where left out; `state` is which packing, as found where left out; `draws` those of the ranges, 0 for none;
 *   `nitrateTargetKgNPerM3` is the nitrate that water changes are to hold, kg N/m³, the usual one where left out
 * @returns in metric units exactly what `fettle assess --json` prints; the figures are the same in every system
 */
export const assessDocument = (
  source: JobSource,
  of: {
    readonly day?: number | undefined;
    readonly system?: System | undefined;
    readonly state?: PackedState | undefined;
    readonly draws?: number | undefined;
    readonly nitrateTargetKgNPerM3?: number | undefined;
  } = {},
): Outcome<AssessmentResult> => {
  const opened = openState(source, of.state);
  if (!opened.ok) return opened;
  const { day, system = 'metric', draws = USUAL_DRAWS, nitrateTargetKgNPerM3 } = of;
  const job = assessJob(opened.model, {
    system,
    tank: { nitrateTargetKgNPerM3 },
    ...(day === undefined ? {} : { day }),
    ...(draws > 0 ? { draws } : {}),
  });
  const notes = opened.notes.map((note) => ({ ...note }));
  return { ok: true, result: toAssessmentResult(job, notes, system) };
};
