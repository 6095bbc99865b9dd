import type { LinkNumbers } from './linkNumbers.ts';
import type { NetworkSpec } from './links.ts';
import type { LoopNumbers } from './loopNumbers.ts';
import type { Topology } from './topology.ts';
import type { WayNumbers } from './wayNumbers.ts';

/** A free fall as flat arrays: the links that feed it, and the ways of the tree that take its water to the ground. */
export interface CompiledFall {
  readonly fedBy: Int32Array;
  readonly pathWay: Int32Array;
  readonly pathSense: Int8Array;
}

/** What has been told already: of the last solve, and of the network. */
export interface Telling {
  flows: boolean;
  heads: boolean;
  /** Square of the part of its flow by which a way may be off where its friction was worked out. */
  reachSquared: number;
  /** Places of the links by their ids, once they have been asked for. */
  linkIndex: ReadonlyMap<string, number> | undefined;
}

/**
 * A network as flat arrays, with the room that a solve needs; solving allocates nothing.
 * `chordFlow` holds the flows of the ways that close the loops as the last solve found them, and is where the next
 * one starts. `resistanceRatio` multiplies what a `resistance`, `one-way` or `conduit` link takes, and may be
 * changed between solves; so may `tables`, and `parameters` of pumps, weirs, one-way links and fixed heads.
 * Flows, heads and slopes by link and node are of the last solve. They are worked out when they are first read
 * after it, so they must be read from here each time, and before `parameters` or `tables` change.
 */
export interface CompiledNetwork {
  readonly spec: NetworkSpec;
  readonly topology: Topology;
  readonly linkIndex: ReadonlyMap<string, number>;
  readonly kind: Uint8Array;
  readonly parameters: Float64Array;
  /** Points of `pump-points` curves: flow, head, slope in turn. */
  readonly tables: Float64Array;
  readonly resistanceRatio: Float64Array;
  /** Flow of each link, m³/s; head that it takes, m; slope of that, s/m². */
  readonly flow: Float64Array;
  readonly drop: Float64Array;
  readonly slope: Float64Array;
  /** Head of each node, m. */
  readonly nodeHead: Float64Array;
  readonly links: LinkNumbers;
  readonly head: Float64Array;
  readonly telling: Telling;
  /** Head slope at the usual flow, s/m²: the first step from rest takes it instead of the slope at rest. */
  readonly usualSlope: Float64Array;
  /** Largest head that is given whatever flows, m: the heads of pumps at no flow and the fixed heads. */
  readonly givenHeadM: number;
  readonly ways: WayNumbers;
  readonly loops: LoopNumbers;
  readonly falls: readonly CompiledFall[];
  /** What each fall carried at the last solve, m³/s, and what all of them send through each way of the tree. */
  readonly fallFlow: Float64Array;
  readonly fallen: Float64Array;
  readonly chordFlow: Float64Array;
  /** Flow of each way before the last move, m³/s. */
  readonly before: Float64Array;
  readonly trialFlow: Float64Array;
  readonly residual: Float64Array;
  readonly held: Uint8Array;
}
