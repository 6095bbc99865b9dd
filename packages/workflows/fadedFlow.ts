import { airLiftOf } from '@fettle/engine/assessment/hydraulics/airLift.ts';
import { type FadedFlow, findCause } from '@fettle/engine/elimination/findCause.ts';
import type { FadedReadings } from '@fettle/engine/elimination/readings.ts';
import { airLiftHeadReinemann1990 } from '@fettle/engine/laws/hydraulics/airLift.ts';
import type { Model } from '@fettle/engine/model/model.ts';
import { statedShutoffHead } from '@fettle/engine/model/pump.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { fadedReadings } from '@fettle/job/toModel/faded.ts';

/** What is known of a faded flow, and what that makes of it. */
export interface FadedCase {
  readonly readings: FadedReadings;
  readonly found: FadedFlow;
}

/** Head at no flow in order, m: the curve's own, of an air-lift by its law. */
const usualShutoffM = (model: Model): number =>
  statedShutoffHead(model.filter.pump) ?? airLiftHeadReinemann1990(0, airLiftOf(model));

/**
 * Likely causes of a job's faded flow, from what its document tells of it and from its bench tests as found.
 *
 * @returns undefined where nobody knows the flow now
 */
export const fadedFlow = (document: JobDocument, model: Model): FadedCase | undefined => {
  const readings = fadedReadings(document, model);
  if (readings === undefined) return undefined;
  return { readings, found: findCause(model, readings, usualShutoffM(model)) };
};
