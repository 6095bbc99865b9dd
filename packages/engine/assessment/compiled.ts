import type { BedShape } from '../families/bedShape.ts';
import type { Layout } from '../families/layout.ts';
import type { Medium } from '../model/medium.ts';
import type { Laying, Model } from '../model/model.ts';
import type { CompiledNetwork } from '../network/compiled.ts';
import type { Constants } from './constants.ts';
import type { LinkRole } from './hydraulics/networkDraft.ts';
import type { WaterState } from './hydraulics/water.ts';

/** A bed with what the models need of it, in the order in which the water meets it. */
export interface CompiledBed {
  readonly id: string;
  readonly chamber: string;
  /** As it is in the bed: pressed or mixed. */
  readonly medium: Medium;
  readonly laying?: Laying;
  readonly depthM: number;
  /** Mean area that the water passes, m²: times the depth it is the volume. */
  readonly areaM2: number;
  /** Area by which the water comes in, m². */
  readonly faceAreaM2: number;
  readonly volumeM3: number;
  /** Radii and length of a bed that lies about a tube; absent where its faces are plane and alike. */
  readonly ring?: NonNullable<BedShape['ring']>;
  readonly voidage: number;
  readonly pieceM: number;
  /** Present where water trickles down over it with air between. */
  readonly trickles?: true;
  /** Present where water or air moves it about: it holds no dirt, and its water film is thin. */
  readonly moved?: 'carried-by-water' | 'stirred';
  /** Length over which its water mixes: a piece, a cell, the spacing of fibres; m. */
  readonly mixingLengthM: number;
  /** Place of its link in the network. */
  readonly link: number;
}

/** A way between two spaces: through a chamber's beds or past them; `to` is −1 for the tank. */
export interface Way {
  readonly id: string;
  readonly link: number;
  readonly from: number;
  readonly to: number;
  /** Beds on it by place in `beds`, in water order; none where it goes past the media. */
  readonly beds: readonly number[];
}

/** Beds cut into slices, and how each bed catches each size of solids, as flat arrays. */
export interface DirtGrid {
  /** Share of the solids' mass in each size class. */
  readonly classShare: Float64Array;
  /** First slice of each bed; one entry more than there are beds. */
  readonly sliceStart: Int32Array;
  readonly sliceThicknessM: Float64Array;
  /** Area that the water passes in each slice, m²: times the thickness it is the slice's volume. */
  readonly sliceAreaM2: Float64Array;
  /** Dry solids in each slice for a deposit of 1, volume per bed volume, kg. */
  readonly sliceKg: Float64Array;
  /** Share of the clean bed's resistance in creeping flow that each slice has; together 1 for each bed. */
  readonly sliceShare: Float64Array;
  /** Filter coefficient by bed and class: the part that does not depend on velocity, 1/m. */
  readonly steadyPerM: Float64Array;
  /** The part by settling, which grows as water slows: 1/m at 1 m/s. */
  readonly settlingPerS: Float64Array;
  /** Share of a class that a mat on the bed's face holds back. */
  readonly matShare: Float64Array;
  /** Deposit volume per bed volume at which a slice takes no more, by bed. */
  readonly fullFraction: Float64Array;
}

/** A job turned into flat numbers once, to be evaluated many times. */
export interface Compiled {
  readonly model: Model;
  readonly constants: Constants;
  readonly layout: Layout;
  readonly water: WaterState;
  readonly network: CompiledNetwork;
  readonly roles: readonly LinkRole[];
  /** Spaces in an order in which water comes from earlier ones only; the first is the inlet. */
  readonly spaces: readonly string[];
  readonly ways: readonly Way[];
  readonly beds: readonly CompiledBed[];
  readonly grid: DirtGrid;
  /** How fine slices and steps of the march are: 1 as used, 2 twice as fine. */
  readonly refinement: number;
}
