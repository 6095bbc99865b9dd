import type { Medium } from '@fettle/engine/model/medium.ts';

/** Where the stuff of a cut comes from: bought, in the filter already, or some of each. */
export type CutFrom = 'bought' | 'there' | 'both';

/** A piece of foam, pad or floss with the outline of its chamber. Lengths in m, as they are cut. */
export interface PadCut {
  readonly kind: 'pad';
  readonly medium: Medium;
  /** From left to right in upright chambers, along the tank's wall in slots. */
  readonly acrossM: number;
  /** From front to back in upright chambers, upright in slots. */
  readonly otherM: number;
  /** The chamber's own clear outline, without the oversize that presses foam against its walls. */
  readonly chamber: { readonly acrossM: number; readonly otherM: number };
  /** Thickness as it is cut, and as it lies where it is pressed thinner. */
  readonly thicknessM: number;
  readonly liesM: number;
  /** Cut larger or smaller than its chamber, or thicker than it lies, as the job says. */
  readonly asStated: boolean;
  readonly from: CutFrom;
  readonly count: number;
  /** Labels of the chambers that it is for. */
  readonly chambers: readonly string[];
}

/** A strip that closes a gap beside the media. */
export interface StripCut {
  readonly kind: 'strip';
  /** All round the media, or along the edge that leaks. */
  readonly lengthM: number;
  readonly widthM: number;
  /** Clear thickness of the gap that it has to fill. */
  readonly gapM: number;
  readonly count: number;
  /** Labels of what it is for. */
  readonly places: readonly string[];
}

/** A cover over slots past the media, of stiff sheet. */
export interface CoverCut {
  readonly kind: 'cover';
  readonly lengthM: number;
  readonly widthM: number;
  /** What the slots take of it, if they stand side by side. */
  readonly slots: { readonly acrossM: number; readonly otherM: number };
  readonly count: number;
  /** Labels of what it is for. */
  readonly places: readonly string[];
}

/** A hose cut to length. */
export interface HoseCut {
  readonly kind: 'hose';
  readonly side: 'intake' | 'outlet';
  readonly lengthM: number;
  readonly boreM: number;
  readonly from: 'bought' | 'there';
}

/** Anything that is cut for a re-pack. */
export type Cut = PadCut | StripCut | CoverCut | HoseCut;
