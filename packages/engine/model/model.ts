import type { Doubt } from './figure.ts';
import type { Medium } from './medium.ts';
import type { Placing } from './placing.ts';
import type { HoseRun, OutletBranch, Pump, SecondPump } from './waterways.ts';

export type { HoseRun, OutletBranch, Pump, PumpCurve, SecondPump } from './waterways.ts';

/** The tank that the filter must serve, in SI units. */
export interface Tank {
  /** Net water volume, m³. */
  readonly volumeM3: number;
  readonly temperatureK: number;
  /** Practical salinity, 1 (0 fresh, 35 sea water). */
  readonly salinity: number;
  readonly pH: number;
  /** Alkalinity as CaCO3, kg/m³. */
  readonly alkalinityKgPerM3: number;
  /** Dry feed given, kg/s. */
  readonly feedKgPerS: number;
  /** Protein share of the dry feed, 0 to 1. */
  readonly feedProteinFraction: number;
  /** Share of the tank's volume changed per second, 1/s. */
  readonly waterChangePerS: number;
  readonly planted: boolean;
  /** How densely it is planted, where the job says so. */
  readonly planting?: 'lightly' | 'densely';
  /** Oxygen in the tank as a share of saturation. */
  readonly oxygenFraction: number;
  /** Air pressure, Pa. */
  readonly pressurePa: number;
  /** Area of the water's surface, m²; absent where it is not known. */
  readonly surfaceM2?: number;
  /** Current that the weakest swimmers stand for long, m/s; a prior where left out. */
  readonly standsCurrentMPerS?: number;
}

/** How a bed lies that is not one medium, loose, from wall to wall. */
export interface Laying {
  /** Clear gap between the piece and the chamber's wall on each side, m: cut too small. */
  readonly cutGapM?: number;
  /** Volume before it was put in over its volume as it lies, 1: above 1 pressed. Foam and fibre alone. */
  readonly pressedRatio?: number;
  /** How much larger than the chamber it was cut on each side, m: part of what `pressedRatio` says. */
  readonly cutLargerM?: number;
  /** A second medium mixed in, with its share of the two volumes before they were mixed. Grains and rings alone. */
  readonly mixed?: { readonly medium: string; readonly share: number };
  /** A bag about it: open share of the mesh, and radius of its edges in the chamber's corners, m. */
  readonly bag?: { readonly openFraction: number; readonly cornerRadiusM: number };
}

/** Ways past a chamber beside the one all round it, by where they are. */
export const slotPlaces = ['tray-lip', 'end-cap', 'partition', 'other'] as const;

/** A slot past a chamber that the family does not know of. */
export interface OtherSlot {
  /** Unique within the filter. */
  readonly id: string;
  /** Chamber whose media it goes past. */
  readonly chamber: string;
  readonly at: (typeof slotPlaces)[number];
  readonly thicknessM: number;
  readonly widthM: number;
  readonly lengthM: number;
}

/** A bed as it lies in its chamber. */
export interface Bed {
  /** Unique within the packing. */
  readonly id: string;
  /** Key into the model's `media`. */
  readonly medium: string;
  /** Extent along the chamber's depth, m. */
  readonly depthM: number;
  /** Absent where it lies loose from wall to wall. */
  readonly laying?: Laying;
}

/**
 * The beds of each chamber in the order in which a hand meets them: from the top down in upright chambers,
 * from the pump's side in slots. The way the water takes through them is the layout's business.
 */
export type Packing = Readonly<Record<string, readonly Bed[]>>;

/** The family's measurements in SI units by the family's own keys; a yes/no is 1 or 0. */
export type Measurements = Readonly<Record<string, number>>;

export interface Filter {
  readonly name: string;
  readonly family: string;
  readonly measurements: Measurements;
  readonly pump: Pump;
  /** Absent where the family has no hose on that side. */
  readonly intake?: HoseRun;
  readonly outlet?: HoseRun;
  /** Height of the free outlet above the tank's surface, m; 0 where the outlet is under water. */
  readonly outletLiftM: number;
  /** Outlets that the outlet hose parts into; none where it has one end of its own. */
  readonly outletBranches?: readonly OutletBranch[];
  readonly secondPump?: SecondPump;
  /** Heights of hoses, housing and holes about the tank's surface; absent where nobody has measured any. */
  readonly placing?: Placing;
  /** Thickness of the gap past each chamber where it differs from the family's own, m, by chamber id. */
  readonly chamberGapM: Readonly<Record<string, number>>;
  /** Slots past chambers at lips, end caps and partitions; none where left out. */
  readonly otherSlots?: readonly OtherSlot[];
  /** Price in the job's currency; absent where it is not known. */
  readonly price?: number;
  /** Years over which the price is spread. */
  readonly lifeYears: number;
}

/** Another filter on the same tank. */
export interface OtherFilter {
  readonly name: string;
  /** Flow it gives, m³/s. */
  readonly flowM3PerS: number;
  /** Area open to bacteria, m². */
  readonly areaM2: number;
}

/** Prices and rates in the job's one currency. */
export interface Money {
  /** ISO 4217 code. */
  readonly currency: string;
  /** Price of electricity per joule. */
  readonly tariffPerJ: number;
  /** Labour per second. */
  readonly labourPerS: number;
  /** Price per m³ of bed, by medium id: the user's, else the catalogue's placeholder. */
  readonly mediumPricePerM3: Readonly<Record<string, number>>;
  /** Price of a part of an alteration, by part id. */
  readonly partPrice: Readonly<Record<string, number>>;
}

export type TestState = 'as-found' | 'clean-empty' | 'cleaned-original' | 'as-left';

/** A timed filling of a measured volume; doubts are 95 % half-widths. */
export interface TimedFilling {
  readonly volumeM3: number;
  readonly volumeDoubtM3: number;
  /** Times of each run, s; one or more, each above 0. */
  readonly timesS: readonly number[];
  /** Doubt of reading one time, the same in every run, s. */
  readonly readingDoubtS: number;
  /** Scatter of single runs as a share of the time (95 %), taken where there was one run only. */
  readonly assumedScatterRatio: number;
}

/** A bench test reduced to SI. `doubt` is the 95 % half-width. */
export type BenchTest =
  | {
      readonly kind: 'timed-volume';
      readonly id: string;
      readonly state: TestState;
      readonly flowM3PerS: number;
      readonly doubtM3PerS: number;
      readonly repeats: number;
      /** The runs themselves, where they are known. */
      readonly filling?: TimedFilling;
    }
  | {
      readonly kind: 'power';
      readonly id: string;
      readonly state: TestState;
      readonly powerW: number;
      readonly doubtW: number;
    }
  | {
      readonly kind: 'shutoff-head';
      readonly id: string;
      readonly state: TestState;
      readonly headM: number;
      readonly doubtM: number;
    }
  | {
      readonly kind: 'displacement';
      readonly id: string;
      readonly state: TestState;
      readonly chamber: string;
      readonly volumeM3: number;
      readonly doubtM3: number;
    };

/** A pulse of dye or salt put in at the intake and read at the outlet, SI; doubts are 95 % half-widths. */
export interface DyeTest {
  readonly id: string;
  readonly state: TestState;
  /** Flow during the test, m³/s; absent where it was not measured. */
  readonly flowM3PerS?: number;
  /** Strength above background, any unit, by the time since the pulse less the time in hoses of the test. */
  readonly samples: readonly { readonly timeS: number; readonly concentration: number }[];
  /** Of one reading, in the unit of the strength. */
  readonly readingDoubt: number;
  /** Of the start of the clock and of the time in the test's hoses, alike for all readings, s. */
  readonly timeDoubtS: number;
  /** Water that it comes back into, m³; absent where it ran to waste. */
  readonly returnsToM3?: number;
}

/** A permitted alteration: which one, and where it applies. */
export interface PermittedAlteration {
  /** Alteration id as declared by the family or in `planning/alterations`. */
  readonly id: string;
  /** Its own settings in SI units, such as a new bore. */
  readonly settings: Readonly<Record<string, number>>;
}

/** A value that the document did not give, or gave with a doubt. */
export interface Given {
  /** Path in the job document, as `filter.pump.shutoffHead`. */
  readonly path: string;
  /**
   * Path of the number in the model, as `filter.pump.curve.shutoffHeadM` or `packing.basket-1[0].depthM`; a point
   * before a digit belongs to a name.
   */
  readonly modelPath: string;
  /** SI value. */
  readonly value: number;
  /** The SI unit, for people. */
  readonly unit: string;
  readonly doubt?: Doubt;
  /** Present where the value is a default: why this one. */
  readonly assumedBecause?: string;
}

/** What the media shelf offers to plans: how much there is at most, m³ (absent: any amount). */
export interface ShelfItem {
  readonly medium: string;
  readonly amountM3?: number;
}

/** Which packing of a job a model has: the one found, the one chosen, the one built. */
export type PackedState = 'as-found' | 'planned' | 'as-left';

/** One job, checked and in SI units: all that the engine needs. */
export interface Model {
  /** Which packing this is; the one found where left out. */
  readonly packedState?: PackedState;
  readonly tank: Tank;
  readonly filter: Filter;
  readonly packing: Packing;
  readonly media: Readonly<Record<string, Medium>>;
  readonly otherFilters: readonly OtherFilter[];
  readonly tests: readonly BenchTest[];
  /** Dye and salt pulses; none where left out. */
  readonly dyeTests?: readonly DyeTest[];
  readonly alterations: readonly PermittedAlteration[];
  readonly shelf: readonly ShelfItem[];
  readonly money: Money;
  /** The maker's claims, verbatim. */
  readonly claims: readonly string[];
  readonly givens: readonly Given[];
}
