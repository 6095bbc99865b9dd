import type { Sign } from './causes.ts';
import type { Trial } from './trials.ts';

/** A measured figure with its 95 % half-width, both in SI units. */
export interface Measured {
  readonly value: number;
  readonly doubt: number;
}

/** What is known of a filter whose flow has faded, in SI units. */
export interface FadedReadings {
  /** Flow now, before anything is done, m³/s; above 0. */
  readonly flowNow: Measured;
  /** Flow when it was new or last in order, m³/s; taken from the filter's own computation where absent. */
  readonly flowBefore?: Measured;
  /** Power at the plug now and before, W. */
  readonly powerNow?: Measured;
  readonly powerBefore?: Measured;
  /** Height at which the flow stops, now and before, m. */
  readonly shutoffNow?: Measured;
  readonly shutoffBefore?: Measured;
  /** Time since the media were last cleaned, s. */
  readonly sinceCleanedS?: number;
  /** Signs that were looked for: whether they are there. */
  readonly signs: Readonly<Partial<Record<Sign, boolean>>>;
  /** What was done, in its order, with the flow after each, m³/s. */
  readonly done: readonly { readonly trial: Trial; readonly flowAfter: Measured }[];
}
