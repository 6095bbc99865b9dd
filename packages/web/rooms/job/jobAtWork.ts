import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import type { Quick } from '../../computing/useQuick.ts';
import type { JobSession, SessionState } from '../../session/jobSession.ts';

/** A job with its figures, as the parts of its room show it. */
export interface JobAtWork {
  readonly session: JobSession;
  readonly state: SessionState;
  readonly figures: Quick;
  readonly system: System;
  /** The document that the figures are of: without a later state that is wrong, where nothing else is. */
  readonly readable: Readonly<Record<string, unknown>>;
}
