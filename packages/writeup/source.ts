import type { Assessment, Finding } from '@fettle/engine/assessment/assessment.ts';
import type { Comparison } from '@fettle/engine/assessment/findings/measured.ts';
import type { Holding } from '@fettle/engine/claims/holding.ts';
import type { Doubts } from '@fettle/engine/doubt/doubtOf.ts';
import type { Model, PackedState } from '@fettle/engine/model/model.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { Photograph } from './content/document.ts';
import type { Outlook } from './outlook.ts';

/** One state of a job's filter with everything that was found out about it. */
export interface AssessedState {
  readonly model: Model;
  readonly assessment: Assessment;
  readonly findings: readonly Finding[];
  readonly claims: readonly Holding[];
  readonly comparisons: readonly Comparison[];
  /** How sure the figures are; absent where nothing was drawn. */
  readonly doubts?: Doubts;
}

/** A state with the days to come. */
export interface ForetoldState extends AssessedState {
  readonly outlook: Outlook;
}

/** A photograph that may be published. */
export interface PublishedPhotograph extends Photograph {
  /** Unique within the job. */
  readonly id: string;
  /** Empty where nobody wrote one. */
  readonly caption: string;
}

/** All that a write-up is made from: the job's document and its states, assessed on one comparison day. */
export interface WriteUpSource {
  /** One that reads without a problem. */
  readonly document: JobDocument;
  readonly found: ForetoldState;
  /** What is changed, as planned or as it was built; absent where nothing is planned yet. */
  readonly after?: ForetoldState & { readonly state: Exclude<PackedState, 'as-found'> };
  /** What was planned before it was built, where the job still holds that: what was quoted. */
  readonly planned?: ForetoldState;
  /** Name of the workshop, as its settings have it; it signs where the job names nobody. */
  readonly workshop?: string;
  /** Those that the owner lets be published, oldest first; none where absent. */
  readonly photographs?: readonly PublishedPhotograph[];
}
