import { assess } from '../assessment/assess.ts';
import type { Assessment } from '../assessment/assessment.ts';
import { layoutOf } from '../assessment/compile.ts';
import type { Chamber, Layout } from '../families/layout.ts';
import type { Model, Packing, PermittedAlteration } from '../model/model.ts';
import type { PartNeed } from './alterationKind.ts';
import { alterationSets, altered, partsOf } from './alterations.ts';
import { purchasesFor, renewalsFor, type Supplies, shelfHolds, suppliesOf, volumesOf } from './candidates.ts';
import { checkpointOf, figureRow, figuresAt, figuresFrom } from './checkpoint.ts';
import type { Favour, PlanOptions, Purchase } from './plan.ts';
import { beats, type Figures, figuresOf, gainOver, keepsWaterClear, type Merits, meritsOf } from './score.ts';

/** Candidates that are assessed at most where nothing else is asked for. */
const DEFAULT_CAP = 3000;
const PROGRESS_EVERY = 50;

/** Share of the feed that a plan must still carry: what is lost below that is within the doubt. */
export const FEED_KEPT = 0.98;

export interface Candidate {
  readonly alterations: readonly PermittedAlteration[];
  readonly model: Model;
  readonly chambers: readonly Chamber[];
  readonly purchases: readonly Purchase[];
  readonly renewals: readonly Purchase[];
  readonly parts: readonly PartNeed[];
  readonly cost: number;
}

/** A candidate with what it is compared by. Its assessment is not kept: of thousands a handful is shown. */
export interface Assessed extends Candidate {
  readonly merits: Merits;
}

/** One set of alterations carried out, with what it costs and the chambers in water order. */
export interface Hardware {
  readonly alterations: readonly PermittedAlteration[];
  readonly model: Model;
  readonly layout: Layout;
  readonly parts: readonly PartNeed[];
  readonly partsCost: number;
}

const costOf = (parts: readonly PartNeed[]): number =>
  parts.reduce((sum, { count, price }) => sum + count * price, 0);

/** Permitted alterations whose parts cost more than there is, with their price. */
export const beyondBudget = (
  model: Model,
  budget: number,
): { readonly id: string; readonly cost: number }[] => {
  const found = layoutOf(model);
  return model.alterations.flatMap((alteration) => {
    const cost = costOf(partsOf(model, found, [alteration]));
    return cost > budget ? [{ id: alteration.id, cost }] : [];
  });
};

/** Every set of the permitted alterations whose parts the budget pays for, in the job's currency, carried out. */
export const hardwareSets = (model: Model, budget: number): Hardware[] => {
  const found = layoutOf(model);
  return alterationSets(model.alterations).flatMap((alterations) => {
    const changed = altered(model, found, alterations);
    const parts = partsOf(model, found, alterations);
    const partsCost = costOf(parts);
    if (partsCost > budget) return [];
    return [{ alterations, model: changed, layout: layoutOf(changed), parts, partsCost }];
  });
};

/** What the media of a packing do: stages, and for chemical media the substance that they take out. */
const servicesOf = (model: Model): Set<string> =>
  new Set(
    Object.values(model.packing).flatMap((beds) =>
      beds.map((bed) => model.media[bed.medium]!.removes?.substance ?? model.media[bed.medium]!.stage),
    ),
  );

const NANOMETRES_PER_M = 1e9;

/** The same for packings of the same media in the same places, whatever their beds are called. */
const keyOf = ({ alterations, layout }: Hardware, packing: Packing): string =>
  JSON.stringify([
    alterations,
    layout.chambers.map(({ id }) =>
      (packing[id] ?? []).map(({ medium, depthM, laying }) => [
        medium,
        Math.round(depthM * NANOMETRES_PER_M),
        laying,
      ]),
    ),
  ]);

/** Keeps the account of a search: what was assessed, up to the cap. */
export class Search {
  readonly assessed: Assessed[] = [];
  readonly #known = new Map<string, Assessed>();
  readonly #asFound: Merits;

  readonly model: Model;
  readonly asFound: Assessment;
  readonly options: PlanOptions;
  readonly supplies: Supplies;
  readonly #held: ReadonlyMap<string, number>;
  readonly #resumed: readonly number[];
  readonly #figuresSoFar: number[] = [];

  constructor(model: Model, asFound: Assessment, options: PlanOptions) {
    this.model = model;
    this.asFound = asFound;
    this.options = options;
    this.#held = volumesOf(asFound.layout.chambers, model.packing);
    this.supplies = suppliesOf(model, this.#held);
    this.#asFound = meritsOf(asFound, { cost: 0, changes: 0 });
    this.#resumed = figuresFrom(options.resume);
  }

  get cap(): number {
    return this.options.cap ?? DEFAULT_CAP;
  }

  get full(): boolean {
    return this.assessed.length >= this.cap;
  }

  /** Assesses a packing in altered hardware, once; undefined where it costs too much or the cap is reached. */
  try(hardware: Hardware, packing: Packing): Assessed | undefined {
    const key = keyOf(hardware, packing);
    const known = this.#known.get(key);
    if (known) return known;
    const candidate = this.#price(hardware, packing);
    if (!candidate || this.full) return undefined;
    const spent = { cost: candidate.cost, changes: this.#changes(candidate) };
    const done = { ...candidate, merits: { ...this.#figures(candidate.model), ...spent } };
    this.assessed.push(done);
    this.#known.set(key, done);
    if (this.assessed.length % PROGRESS_EVERY === 0) this.#report();
    return done;
  }

  /** Assesses a job on the day of the comparison. */
  assess(model: Model): Assessment {
    return assess(model, this.options.day === undefined ? {} : { day: this.options.day });
  }

  /** The next candidate's figures: those of the checkpoint as long as it reaches, since the order is the same. */
  #figures(model: Model): Figures {
    const resumed = figuresAt(this.#resumed, this.assessed.length);
    if (resumed === undefined) this.options.onCandidate?.();
    const figures = resumed ?? figuresOf(this.assess(model));
    this.#figuresSoFar.push(...figureRow(figures));
    return figures;
  }

  #report(): void {
    this.options.onProgress?.(this.assessed.length, this.cap);
    this.options.onCheckpoint?.(this.assessed.length, (from) => checkpointOf(this.#figuresSoFar, from));
  }

  /** Whether a packing can be had for the budget and from the shelf. */
  affordable(hardware: Hardware, packing: Packing): boolean {
    return this.#price(hardware, packing) !== undefined;
  }

  #price(hardware: Hardware, packing: Packing): Candidate | undefined {
    const { chambers } = hardware.layout;
    const wanted = volumesOf(chambers, packing);
    const purchases = purchasesFor(this.model, wanted, this.#held);
    const cost = hardware.partsCost + purchases.reduce((sum, { price }) => sum + price, 0);
    if (cost > (this.options.budget ?? 0) + 1e-9 || !shelfHolds(this.model, purchases)) return undefined;
    const { alterations, parts } = hardware;
    const renewals = renewalsFor(this.model, wanted, this.#held);
    return { alterations, model: { ...hardware.model, packing }, chambers, purchases, renewals, parts, cost };
  }

  /** Beds that lie elsewhere than as found, and alterations. */
  #changes({ model, alterations }: Candidate): number {
    const moved = Object.entries(model.packing).flatMap(([chamber, beds]) => {
      const before = this.model.packing[chamber] ?? [];
      return beds.filter((bed, place) => before[place]?.medium !== bed.medium);
    });
    return moved.length + alterations.length;
  }

  /** How much better than as found, by what is asked for or by another favour. */
  gain(one: Assessed, favour: Favour = this.favour): number {
    return gainOver(this.#asFound, one.merits, {
      favour,
      fedKgPerS: this.model.tank.feedKgPerS,
      budget: this.options.budget ?? 0,
    });
  }

  get favour(): Favour {
    return this.options.favour ?? 'balance';
  }

  /** Whether a candidate carries what the tank is fed, or at least what the filter carried as found. */
  #keepsFed(one: Assessed): boolean {
    return (
      one.merits.feedKgPerS >= FEED_KEPT * Math.min(this.#asFound.feedKgPerS, this.model.tank.feedKgPerS)
    );
  }

  /** Whether a candidate is better than as found in the one figure that a favour names. */
  beatsAsFound(one: Assessed, favour: Favour): boolean {
    return beats(this.#asFound, one.merits, favour);
  }

  /** Whether a candidate may be offered: nothing lost that the media did, water not dirtier, the tank not worse fed. */
  fit(one: Assessed): boolean {
    const kept = servicesOf(one.model);
    for (const service of servicesOf(this.model)) if (!kept.has(service)) return false;
    return keepsWaterClear(this.#asFound, one.merits) && this.#keepsFed(one);
  }
}
