import type { Layout } from '../families/layout.ts';
import type { Medium } from '../model/medium.ts';
import type { Model } from '../model/model.ts';
import type { CompiledNetwork } from '../network/compile.ts';
import type { DirtGrid } from './dirt/grid.ts';
import type { LinkRole } from './hydraulics/filterNetwork.ts';
import type { WaterState } from './hydraulics/water.ts';

/** A bed with what the models need of it, in the order in which the water meets it. */
export interface CompiledBed {
  readonly id: string;
  readonly chamber: string;
  readonly medium: Medium;
  readonly depthM: number;
  readonly areaM2: number;
  readonly volumeM3: number;
  readonly voidage: number;
  readonly pieceM: number;
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

/** A job turned into flat numbers once, to be evaluated many times. */
export interface Compiled {
  readonly model: Model;
  readonly layout: Layout;
  readonly water: WaterState;
  readonly network: CompiledNetwork;
  readonly roles: readonly LinkRole[];
  /** Spaces in an order in which water comes from earlier ones only; the first is the inlet. */
  readonly spaces: readonly string[];
  readonly ways: readonly Way[];
  readonly beds: readonly CompiledBed[];
  readonly grid: DirtGrid;
}
