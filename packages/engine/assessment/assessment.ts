import type { Layout } from '../families/layout.ts';
import type { Stage, Substance } from '../model/medium.ts';
import type { Laying } from '../model/model.ts';
import type { Said } from '../wording/said.ts';
import type { Site } from './site/site.ts';

/** Where a part of the pump's head goes. */
export interface HeadShare {
  readonly part: 'intake-hose' | 'outlet-hose' | 'fittings' | 'barbs' | 'openings' | 'beds' | 'lift';
  /** Chamber, hose or opening id; the same `part` may stand in several places. */
  readonly place: string;
  readonly headM: number;
  /** Share of the pump's head at the duty point, 0 to 1. */
  readonly share: number;
}

/** A way from inlet to outlet. */
export interface Route {
  readonly id: string;
  /** Share of the flow, 0 to 1; all shares, `rest` included, sum to 1. */
  readonly share: number;
  /** Beds in the order in which the water meets them, by bed id. */
  readonly beds: readonly string[];
  /** Ways taken beside beds, by id: gaps, leaks, overflows. */
  readonly past: readonly string[];
  /** Time in the pores of the beds on this route, s. */
  readonly contactTimeS: number;
}

/** One bed at the duty point, in water order. */
export interface BedState {
  readonly id: string;
  readonly chamber: string;
  readonly medium: string;
  readonly stage: Stage;
  /** How it lies; absent where loose from wall to wall. */
  readonly laying?: Laying;
  readonly depthM: number;
  readonly volumeM3: number;
  readonly flowM3PerS: number;
  /** Superficial velocity, m/s. */
  readonly velocityMPerS: number;
  readonly contactTimeS: number;
  readonly headM: number;
  /** Deposit as share of the bed's pore volume, 0 to 1. */
  readonly dirtFraction: number;
  /** Dry solids held, kg. */
  readonly dirtKg: number;
  /** Share of the solids that reach the filter in one pass and stay in this bed, 0 to 1. */
  readonly catchFraction: number;
  /** Factor on the bacteria by organic carbon, 0.3 to 1. */
  readonly carbonFactor: number;
  /** Factor on the bacteria by what cleaning leaves on average, 0 to 1. */
  readonly cleaningFactor: number;
  /** TAN oxidised here at the carried load, kg N/s. */
  readonly oxidisedKgNPerS: number;
}

export type BindingLimit =
  | 'area'
  | 'flow'
  | 'oxygen'
  | 'alkalinity'
  | 'nitrite'
  | 'ammonia-toxicity'
  | 'none';

/** A chemical bed on the day of the comparison. */
export interface ChemicalState {
  readonly bed: string;
  readonly substance: Substance;
  /** What it takes until it is full, clean and fresh, kg of the substance (N, P, C or CaCO3). */
  readonly capacityKg: number;
  /** Share of that which dirt leaves open, 0 to 1. */
  readonly openFraction: number;
  /** Share of what the tank makes that it takes while fresh, 0 to 1. */
  readonly takenFraction: number;
  /** Time until it is full, s; endless where nothing comes to it. */
  readonly lastsS: number;
}

/** What the packing can carry in one state. */
export interface Carries {
  /** Days since every bed was cleaned. */
  readonly dayS: number;
  /** Dry feed per second that can be carried, kg/s. */
  readonly feedKgPerS: number;
  /** TAN oxidised at that feed, kg N/s. */
  readonly oxidisedKgNPerS: number;
  readonly servedM3: { readonly light: number; readonly normal: number; readonly heavy: number };
  readonly bindingLimit: BindingLimit;
  /** Oxygen leaving the filter, kg/m³. */
  readonly outletOxygenKgPerM3: number;
  /** Flow at the tank in that state, m³/s. */
  readonly flowM3PerS: number;
  /** Nitrite in the tank at that feed, kg N/m³. */
  readonly nitriteKgNPerM3: number;
}

/** The cleaning interval and what ends it. */
export interface CleaningInterval {
  readonly timeS: number;
  /** True where nothing ended it within 365 days. */
  readonly beyond: boolean;
  readonly endedBy: 'bed-flow' | 'overflow' | 'none';
  /** Bed or overflow that decides, by id. */
  readonly place?: string;
  /** Flow at the tank at the end against clean, 0 to 1. */
  readonly flowRatio: number;
  /** Time after which the tank's feed is more than what the filter carries, s; absent where it never is within the interval. */
  readonly overfedFromS?: number;
  /** Beds that the usual pattern cleans at each interval. */
  readonly cleanedEachTime: readonly string[];
}

/** When a bed is replaced, and what decides it. */
export interface Replacement {
  readonly bed: string;
  /** Time from one replacement to the next, s. */
  readonly everyS: number;
  /** What ends it first: it clogs and cannot be rinsed, it has taken up what it can, or its life is over. */
  readonly because: 'clogs' | 'full' | 'calendar';
}

/** Running cost in the job's currency. */
export interface Cost {
  readonly currency: string;
  readonly energyJPerYear: number;
  readonly energyPerYear: number;
  readonly mediaPerYear: number;
  readonly pricePerYear: number;
  readonly perYear: number;
  /** Each bed that is replaced, with its medium and what that comes to in a year. */
  readonly media: readonly (Replacement & { readonly medium: string; readonly perYear: number })[];
}

/** A warning that a figure lies outside a law's range; codes are stable. */
export interface Warning {
  readonly code: string;
  readonly place: string;
  readonly said: Said;
  /** The same in English. */
  readonly says: string;
}

/** Everything computed about one filter, packing and tank, in SI units. */
export interface Assessment {
  /** Edition of the model: the same edition gives the same figures. */
  readonly edition: string;
  readonly layout: Layout;
  /** The clean state. */
  readonly dutyPoint: { readonly flowM3PerS: number; readonly headM: number };
  readonly headBudget: readonly HeadShare[];
  readonly routes: readonly Route[];
  /** Share of the flow that meets no medium of the stage; 1 where there is none. */
  readonly bypass: Readonly<Record<Stage, number>>;
  /** Tank volumes per second. */
  readonly turnoverPerS: number;
  /** In water order along the main route; state of the day of the comparison. */
  readonly beds: readonly BedState[];
  /** Flow of every gap, leak, opening and weir, m³/s, by id; the gap past a chamber is `gap:<chamber>`. */
  readonly wayFlowM3PerS: Readonly<Record<string, number>>;
  readonly carries: { readonly clean: Carries; readonly day: Carries; readonly intervalEnd: Carries };
  readonly cleaning: CleaningInterval;
  readonly chemical: readonly ChemicalState[];
  /** Beds that are replaced, in water order. */
  readonly replaced: readonly Replacement[];
  readonly cost: Cost;
  /** Solids in the tank's water at the stated feed with clean media, kg/m³, and the share of what reaches the filter that one pass keeps. */
  readonly solids: { readonly tankKgPerM3: number; readonly caughtFraction: number };
  /** What the filter uses at the carried feed of the day of the comparison: alkalinity as CaCO3 kg/s, oxygen kg/s. */
  readonly uses: { readonly alkalinityKgPerS: number; readonly oxygenKgPerS: number };
  /** Why the order of the beds matters here, on the day of the comparison. */
  readonly orderShares: OrderShares;
  /** Leak side, water on the floor, current in the tank; with clean media. */
  readonly site: Site;
  readonly warnings: readonly Warning[];
}

/**
 * What each way in which dirt works against the bacteria costs the load that is carried: the carried load with
 * that one way taken out against the carried load as it is, minus 1.
 */
export interface OrderShares {
  /** Dirt slows the water and changes who gets it. */
  readonly clogging: number;
  /** Organic carbon of caught dirt on the bacteria. */
  readonly carbon: number;
  /** Ammonia that rotting dirt gives back. */
  readonly decay: number;
  /** Bacteria lost at each cleaning. */
  readonly cleaning: number;
}

/** One fault or strength, with its effect by counterfactual. Figures in SI. */
export interface Finding {
  readonly id: string;
  readonly severity: 'grave' | 'marked' | 'slight' | 'note' | 'strength';
  /** Chamber, bed, hose or measurement that it points at. */
  readonly place: string;
  /** One sentence with its evidence, and what cures it, before they are put into a language. */
  readonly said: Said;
  readonly cureSaid: Said;
  /** The same in English, in the units asked for. */
  readonly says: string;
  readonly cure: string;
  /** Difference between the filter with only this cured and as it is; absent where there is no cure to compute. */
  readonly effect?: Effect;
}

/** What a change does, on the day on which packings are compared. */
export interface Effect {
  /** That day, s since every bed was cleaned: feed and flow are those of that day. */
  readonly dayS: number;
  readonly flow: { readonly beforeM3PerS: number; readonly afterM3PerS: number };
  readonly feed: { readonly beforeKgPerS: number; readonly afterKgPerS: number };
  readonly cleaningInterval: {
    readonly beforeS: number;
    readonly afterS: number;
    readonly beforeBeyond: boolean;
    readonly afterBeyond: boolean;
  };
}
