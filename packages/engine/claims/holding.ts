import { engineEnglish } from '../wording/english/english.ts';
import type { Said } from '../wording/said.ts';
import { word } from '../wording/word.ts';
import type { Subject } from './subjects.ts';

/** How a maker's statement stands. */
export type Verdict = 'agrees' | 'contradicts-itself' | 'differs-from-ours' | 'not-checked';

/** One statement held against itself, against another, or against what was measured or computed. */
export interface Holding {
  /** The statement, verbatim. */
  readonly says: string;
  readonly subject: Subject;
  readonly verdict: Verdict;
  /** Why, before it is put into a language. */
  readonly said: Said;
  /** The same in English, in both systems of units. */
  readonly detail: string;
  /** First of the pair over second, or ours over the claim; of a range over its upper end. */
  readonly ratio?: number;
}

/** A verdict with why, before it is put into words. */
export type Told = Omit<Holding, 'says' | 'subject' | 'detail'>;

/** A statement's entry, from what is told of it. */
export const holding = (of: Pick<Holding, 'says' | 'subject'>, told: Told): Holding => ({
  says: of.says,
  subject: of.subject,
  ...told,
  detail: word(told.said, { language: engineEnglish, units: 'both' }),
});

/** What was measured or computed, in SI; what is not known is left out. */
export interface Computed {
  /** Flow at the tank, at the duty point. */
  readonly flowM3PerS?: number;
  /** How far off that flow may be, as a share of it; no more than any other figure where left out. */
  readonly flowDoubtRatio?: number;
  /** Flow of the pump alone, at no head. */
  readonly ratedFlowM3PerS?: number;
  /** True where the flow of the pump alone was measured; else it is itself a statement of the maker. */
  readonly ratedFlowMeasured?: boolean;
  readonly shutoffHeadM?: number;
  /** True where that head was measured; else it is itself a statement of the maker. */
  readonly shutoffHeadMeasured?: boolean;
  readonly powerW?: number;
  /** True where the power was measured at the plug. */
  readonly powerMeasured?: boolean;
  readonly mediaVolumeM3?: number;
  /** Tank volume that the packing can serve at each stock. */
  readonly servedM3?: { readonly light: number; readonly normal: number; readonly heavy: number };
}
