/**
 * What drives the water. A pump: two points of the curve, or measured points (flow rising, head falling), drawn through
 * as they are or, where there are three and the first has no flow, as the power form A − B·Q^C through them. Or air
 * that lifts it in the family's lift tubes: `airFlowM3PerS` is that of all tubes, measured at the tank's surface.
 */
export type PumpCurve =
  | { readonly kind: 'air-lift'; readonly airFlowM3PerS: number }
  | { readonly kind: 'two-point'; readonly shutoffHeadM: number; readonly freeFlowM3PerS: number }
  | {
      readonly kind: 'points';
      readonly points: readonly { readonly flowM3PerS: number; readonly headM: number }[];
      readonly form?: 'through' | 'power';
    };

export interface Pump {
  readonly curve: PumpCurve;
  /** Rated (free) flow as the maker states it, m³/s. */
  readonly ratedFlowM3PerS: number;
  /** Electrical power at the set speed, W. */
  readonly powerW: number;
  /** Speed against the curve's own speed, 0 to 1. */
  readonly speedRatio: number;
}

/** One hose run with what is in it. */
export interface HoseRun {
  readonly lengthM: number;
  readonly boreM: number;
  readonly roughnessM: number;
  /** Bore of the barbs at its ends, m. */
  readonly barbBoreM: number;
  /** Fittings by catalogue id; one entry each. */
  readonly fittings: readonly string[];
  /** Extra loss of coils and kinks, in velocity heads of the hose. */
  readonly extraK: number;
  /** Thickness of the film on its wall, m; none where left out. It takes bore and makes the wall rough. */
  readonly filmM?: number;
  /** Turns of the part that lies in a coil, and the coil's diameter at the hose's middle line, m. */
  readonly coil?: { readonly turns: number; readonly diameterM: number };
  /** Share of the bore's area that its worst kink leaves; absent where there is none. */
  readonly kinkOpenFraction?: number;
  /** Share of the quarter turn of its tap that is open; open where left out. */
  readonly tapOpenFraction?: number;
  /** Head that its check valve asks for before it opens, m; absent where there is none. */
  readonly checkValveHeadM?: number;
  /** Sine of the slope of its flattest falling stretch; hangs straight down where left out. */
  readonly fallSlope?: number;
}

/** One of several outlets that the outlet hose parts into at its end. */
export interface OutletBranch {
  readonly run: HoseRun;
  /** Height of a free outlet above the tank's surface, m; 0 where it is under water. */
  readonly liftM: number;
}

/** A second pump on the same water. */
export interface SecondPump {
  readonly pump: Pump;
  /** `beside`: between the same two places; `behind`: in the outlet hose, or where there is none behind the first. */
  readonly place: 'beside' | 'behind';
  /** False where it stands still and water runs through it, or back. */
  readonly running: boolean;
  /** Head that a check valve behind it asks for, m; absent where there is none. */
  readonly checkValveHeadM?: number;
}
