/** Which friction law a conduit follows. `swamee-jain-cubic` is there to compare with other solvers. */
export type FrictionLaw = 'churchill' | 'swamee-jain-cubic';

/**
 * What a link takes from the water's head, as a strictly rising function of its flow Q (m³/s), in metres.
 * `resistance`: linear·Q + quadratic·Q|Q|; `one-way` is the same but lets no water back, and none at all below its
 * `crackingHeadM` (0 where left out), which it then takes as well.
 * `conduit`: a hose, or with `laminarConstant` 96 and twice the thickness as diameter a plane slot; its
 * `minorK` counts velocity heads of its own area and `linear` adds the part of fittings that grows with Q. A coiled
 * one follows Mishra & Gupta 1979, with `curvature` the bore over the diameter of the coil (0 where left out).
 * `pump`: gives shutoffHeadM − coefficient·Q^exponent; `pump-points`: gives the head of a monotone curve.
 * `weir`: a crest that passes coefficient·h^1.5 for a level h above it and nothing back; with water standing
 * `tailwaterM` above the crest behind it (0 where left out) it is drowned as by Villemonte 1947.
 */
export type LinkLaw =
  | { readonly kind: 'resistance'; readonly linear: number; readonly quadratic: number }
  | {
      readonly kind: 'one-way';
      readonly linear: number;
      readonly quadratic: number;
      readonly crackingHeadM?: number;
    }
  | {
      readonly kind: 'conduit';
      readonly areaM2: number;
      readonly hydraulicDiameterM: number;
      readonly lengthM: number;
      readonly relativeRoughness: number;
      readonly minorK: number;
      readonly linear: number;
      readonly laminarConstant: number;
      readonly friction: FrictionLaw;
      readonly curvature?: number;
    }
  | {
      readonly kind: 'pump';
      readonly shutoffHeadM: number;
      readonly coefficient: number;
      readonly exponent: number;
    }
  | {
      readonly kind: 'pump-points';
      readonly flowM3PerS: readonly number[];
      readonly headM: readonly number[];
    }
  | { readonly kind: 'weir'; readonly coefficient: number; readonly tailwaterM?: number };

export interface Link {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly law: LinkLaw;
}

/**
 * Water that falls freely: what these links carry comes in again at `into`, whatever level stands there, and that
 * level has no say in what they carry.
 */
export interface Fall {
  readonly links: readonly string[];
  readonly into: string;
}

/** A network as written: heads in metres of the water that flows in it. */
export interface NetworkSpec {
  /** Head of each node that holds its level whatever flows: tanks, crests. At least one. */
  readonly fixedHeadsM: Readonly<Record<string, number>>;
  readonly links: readonly Link[];
  /** Free falls that carry water on from one part of the network to another; none where left out. */
  readonly falls?: readonly Fall[];
  readonly kinematicViscosityM2PerS: number;
  readonly gravityMPerS2: number;
  /** A usual flow, m³/s: decides which links close the loops, not the answer. */
  readonly usualFlowM3PerS: number;
}
