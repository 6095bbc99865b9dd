import type { Assessment, Effect, OrderShares } from '../assessment/assessment.ts';
import type { Model, Packing, PermittedAlteration } from '../model/model.ts';
import type { PartNeed } from './alterationKind.ts';

/** What a plan is to be good for. */
export type Favour = 'balance' | 'feed' | 'flow' | 'interval' | 'clarity' | 'cost';

export const favours: readonly Favour[] = ['balance', 'feed', 'flow', 'interval', 'clarity', 'cost'];

/** Media to be bought. */
export interface Purchase {
  readonly medium: string;
  readonly volumeM3: number;
  readonly price: number;
}

/** A packing with alterations, its cost and its predicted effect. */
export interface Plan {
  readonly id: string;
  readonly alterations: readonly PermittedAlteration[];
  readonly packing: Packing;
  /** The job as it would be. */
  readonly model: Model;
  readonly assessment: Assessment;
  readonly purchases: readonly Purchase[];
  /** Fresh media in place of those that are used up: cleaning takes them in any case, so that `cost` leaves them out. */
  readonly renewals: readonly Purchase[];
  readonly parts: readonly PartNeed[];
  /** Media and parts, in the job's currency; labour apart. */
  readonly cost: number;
  readonly effect: Effect;
  /** What it is best at among the plans given. */
  readonly bestFor: readonly (Favour | 'trade-order')[];
  readonly order: OrderNote;
}

/** How the plan's order of media stands to the trade's order, and what the difference is worth. */
export interface OrderNote {
  /** Mechanical, biological, chemical; coarse before fine. */
  readonly followsTrade: boolean;
  /** Trade's order against this plan, with the same media, where the plan departs from it and they fit so. */
  readonly inTradeOrder?: Effect;
  /** The way in which dirt works on the bacteria that differs most between the two. */
  readonly mechanism?: keyof OrderShares | undefined;
}

/** What a search gives back. */
export interface Plans {
  readonly asFound: Assessment;
  /** How the order of the media as found stands to the trade's. */
  readonly orderAsFound: OrderNote;
  readonly plans: readonly Plan[];
  readonly counted: { readonly possible: number; readonly assessed: number };
  /** True where every possible candidate was assessed. */
  readonly complete: boolean;
  /** True where the cap ended the search, not the want of better candidates. */
  readonly capReached: boolean;
  /** Permitted alterations that were left out because their parts cost more than the budget. */
  readonly beyondBudget: readonly { readonly id: string; readonly cost: number }[];
  /** Present where no candidate is better than the filter as found: what would have to give. */
  readonly nothingBetter?: readonly string[];
}

/**
 * How far a search got, as plain data that survives a text of JSON: a search looks at candidates in an order
 * that job and options decide alone, so the figures of those assessed are all that a later run needs.
 */
export interface SearchCheckpoint {
  /** Edition of the model that the figures are from; those of another edition are of no use. */
  readonly edition: string;
  /** For each candidate in turn: feed, kg/s; flow, m³/s; cleaning interval, s; solids, kg/m³. */
  readonly figures: readonly number[];
}

export interface PlanOptions {
  /** Money for media and parts, in the job's currency; 0 for what costs nothing. */
  readonly budget?: number;
  readonly favour?: Favour;
  /** Most candidates to assess. */
  readonly cap?: number;
  /** Comparison day. */
  readonly day?: number;
  /** How many plans to give back at most. */
  readonly count?: number;
  /** Called now and then with how far the search is. */
  readonly onProgress?: (assessed: number, planned: number) => void;
  /** Called before each candidate is assessed: who runs the search may let others go first there. */
  readonly onCandidate?: () => void;
  /** How far an earlier run of the same search got: the same job, options and model edition. */
  readonly resume?: SearchCheckpoint;
  /**
   * Called now and then; `take` copies how far the search is, for a later run to resume from. Who has the first figures
   * already takes those `from` a place on, counted from 0; a search that resumes may not have come so far yet.
   */
  readonly onCheckpoint?: (assessed: number, take: (from?: number) => SearchCheckpoint) => void;
}
