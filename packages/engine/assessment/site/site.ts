/** A part of the run of hoses, with the pressure in it while the pump runs and the media are clean. */
export interface PartPressure {
  readonly part: 'intake-hump' | 'housing' | 'pump-inlet' | 'pump-outlet' | 'outlet-hump';
  /** Height above the tank's water surface, m. */
  readonly heightM: number;
  /** Pressure against the air outside, Pa. */
  readonly gaugePa: number;
  /** What a leak does there: water comes out, air goes in, or neither. */
  readonly leaks: 'water-out' | 'air-in' | 'neither';
}

/** Water that comes out of the tank where something goes wrong. */
export interface Spill {
  readonly cause: 'intake-hose-off' | 'outlet-hose-off-running' | 'outlet-hose-off-stopped' | 'power-fails';
  readonly volumeM3: number;
  /** Fall of the tank's surface until it ends, m. */
  readonly fallM: number;
  /** What ends it: an air hole, the mouth of the hose, or the edge that the tank runs over. */
  readonly endedBy: 'hole' | 'mouth' | 'edge';
  /** Flow at first, m³/s; absent where it runs to its end by itself within minutes. */
  readonly flowM3PerS?: number;
  /** Time that it takes at that flow, s. */
  readonly timeS?: number;
  /** Water that sump or tray can take up, m³; absent where it is not known. */
  readonly spareM3?: number;
}

/** The jet of an outlet under water, with clean media. */
export interface Jet {
  /** `outlet`, or `outlet-<n>` for one of several. */
  readonly outlet: string;
  /** Bore of the mouth, or of one hole of a spray bar, m. */
  readonly boreM: number;
  readonly velocityMPerS: number;
  /** Current that the weakest swimmers of the tank stand for long, m/s. */
  readonly standsMPerS: number;
  /** True where that is not stated but a prior, from memory. */
  readonly standsAssumed: boolean;
  /** How far from the mouth the jet's middle is faster than that, m. */
  readonly reachM: number;
}

/** Water that stands in one part of an open box under the tank, with clean media. */
export interface WaterLevel {
  /** Id of its space in the layout. */
  readonly space: string;
  /** Over the floor of the box while the pump runs, m. */
  readonly runningM: number;
  /**
   * The same once the pump has stopped and all has come down, m, at most the walls' height; absent where it runs empty
   * and where what comes down is not known.
   */
  readonly stoppedM?: number;
  /** The edge that it runs over next, m over the floor, with the id of its way; the walls of the box where absent. */
  readonly edgeM: number;
  readonly over?: string;
}

/** Levels in an open box under the tank. */
export interface BoxLevels {
  readonly levels: readonly WaterLevel[];
  /** Water that it can take up on top of the running levels, m³. */
  readonly roomM3: number;
  /** What is left of that once all has come down, m³, below 0 where it runs over; absent where that is not known. */
  readonly roomStoppedM3?: number;
}

/** What hoses, heights and outlets mean for the room and the tank. */
export interface Site {
  /** Empty where heights are not stated or no water flows. */
  readonly pressures: readonly PartPressure[];
  /** Empty where heights are not stated. */
  readonly spills: readonly Spill[];
  /** Empty where no outlet hose ends under water. */
  readonly jets: readonly Jet[];
  /** Absent without an open box under the tank, and where no water flows. */
  readonly box?: BoxLevels;
}
