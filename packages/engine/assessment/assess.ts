import type { Model } from '../model/model.ts';
import { solveNetwork } from '../network/solve.ts';
import type { Assessment, BedState, Warning } from './assessment.ts';
import { chemicalStates } from './chemical.ts';
import { cleaningOf } from './cleaning.ts';
import { compiledOf } from './compile.ts';
import type { Compiled } from './compiled.ts';
import { costOf } from './cost.ts';
import { march } from './dirt/march.ts';
import { cleanState, type DirtState, heldKg } from './dirt/state.ts';
import { solveAt } from './dirt/step.ts';
import { filterFlow, layDown, makeTransport } from './dirt/transport.ts';
import { headBudgetOf, pumpHead } from './hydraulics/headBudget.ts';
import { bypassOf, routesOf } from './hydraulics/routes.ts';
import { waterInBed } from './hydraulics/trickling.ts';
import { type BacteriaShares, bacteriaShares } from './life/bacteria.ts';
import { type CarriesDetail, carriesIn } from './life/carries.ts';
import { orderSharesOf } from './life/orderShares.ts';
import { ammoniaMadeIn, solidsMadeIn } from './loads.ts';
import { replacementsOf } from './replacement.ts';
import { siteOf } from './site/siteOf.ts';
import { warningsOf } from './warnings.ts';

/** Edition of the models: it changes whenever a figure changes by more than 1e-6. */
export const MODEL_EDITION = '2026.2';

/** Days after cleaning on which packings are compared. */
export const COMPARISON_DAY = 60;

const DAY_S = 86_400;

/** What `assess` may be asked beside the job itself. */
export interface AssessOptions {
  /** Comparison day, days since every bed was cleaned; 1 to 365. */
  readonly day?: number;
}

interface Clean {
  readonly dutyPoint: Assessment['dutyPoint'];
  readonly headBudget: Assessment['headBudget'];
  readonly routes: Assessment['routes'];
  readonly bypass: Assessment['bypass'];
  readonly wayFlowM3PerS: Record<string, number>;
  readonly site: Assessment['site'];
  readonly siteWarnings: readonly Warning[];
}

const cleanFigures = (compiled: Compiled): Clean => ({
  ...siteOf(compiled),
  dutyPoint: { flowM3PerS: filterFlow(compiled), headM: pumpHead(compiled) },
  headBudget: headBudgetOf(compiled),
  routes: routesOf(compiled),
  bypass: bypassOf(compiled),
  wayFlowM3PerS: Object.fromEntries(compiled.ways.map((way) => [way.id, compiled.network.flow[way.link]!])),
});

/** Solids in the tank with clean media, and what one pass keeps of them. */
const cleanSolids = (compiled: Compiled, made: number): Assessment['solids'] => {
  const transport = makeTransport(compiled);
  layDown(compiled, transport, { dirt: cleanState(compiled), madeKgPerS: made });
  return { tankKgPerM3: transport.tankKgPerM3, caughtFraction: transport.caughtShare };
};

const bedStates = (
  compiled: Compiled,
  shares: BacteriaShares,
  day: { readonly detail: CarriesDetail; readonly dirt: DirtState },
): BedState[] => {
  const { detail, dirt } = day;
  const transport = makeTransport(compiled);
  layDown(compiled, transport, { dirt, madeKgPerS: solidsMadeIn(compiled) });
  const held = heldKg(compiled, dirt);
  const { grid, network } = compiled;
  const reaching = transport.tankKgPerM3 * filterFlow(compiled);
  return compiled.beds.map((bed, place) => {
    let pores = 0;
    let laid = transport.laidByMat[place]!;
    for (let slice = grid.sliceStart[place]!; slice < grid.sliceStart[place + 1]!; slice += 1) {
      const volumeM3 = grid.sliceThicknessM[slice]! * grid.sliceAreaM2[slice]!;
      pores += (dirt.deposit[slice]! * volumeM3) / (bed.voidage * bed.volumeM3);
      laid += transport.laid[slice]!;
    }
    const flowM3PerS = network.flow[bed.link]!;
    return {
      id: bed.id,
      chamber: bed.chamber,
      medium: bed.medium.id,
      stage: bed.medium.stage,
      ...(bed.laying === undefined ? {} : { laying: bed.laying }),
      depthM: bed.depthM,
      volumeM3: bed.volumeM3,
      flowM3PerS,
      velocityMPerS: flowM3PerS / bed.areaM2,
      contactTimeS: flowM3PerS > 0 ? waterInBed(compiled, bed) / flowM3PerS : 0,
      headM: network.drop[bed.link]!,
      dirtFraction: pores,
      dirtKg: held[place]!,
      catchFraction: reaching > 0 ? laid / reaching : 0,
      carbonFactor: shares.carbonFactor[place]!,
      cleaningFactor: shares.cleaningFactor[place]!,
      oxidisedKgNPerS: detail.capacity.byBedKgNPerS[place]!,
    };
  });
};

const usesOf = ({ constants }: Compiled, oxidisedKgNPerS: number): Assessment['uses'] => ({
  alkalinityKgPerS: oxidisedKgNPerS * constants.alkalinityPerNitrogenRatio,
  oxygenKgPerS: oxidisedKgNPerS * constants.oxygenPerNitrogenRatio,
});

/**
 * Evaluates a compiled job: duty point, routes, dirt, life and money.
 * @returns everything computed, in SI units; ranges are absent until doubt is computed
 */
export const evaluate = (compiled: Compiled, options: AssessOptions = {}): Assessment => {
  const dayS = (options.day ?? COMPARISON_DAY) * DAY_S;
  const { tank } = compiled.model;
  solveAt(compiled, cleanState(compiled));
  solveNetwork(compiled.network);
  const { siteWarnings, ...clean } = cleanFigures(compiled);
  const made = solidsMadeIn(compiled);
  const solids = cleanSolids(compiled, made);
  const marched = march(compiled, made, dayS);
  const tanMade = ammoniaMadeIn(compiled);
  const shares = bacteriaShares(compiled, marched, tanMade);
  const cleaning = cleaningOf(compiled, marched, shares);
  const atClean = carriesIn(compiled, shares, marched.clean).carries;
  const atEnd = carriesIn(compiled, shares, marched.atEnd).carries;
  // Last, for the network stays solved in its state: beds and chemical media are read at the flows of the day.
  const day = carriesIn(compiled, shares, marched.atDay);
  const beds = bedStates(compiled, shares, { detail: day, dirt: marched.atDay });
  const chemical = chemicalStates({ compiled, capacity: day.capacity, dirt: marched.atDay });
  const replaced = replacementsOf(compiled, cleaning, chemical);
  const orderShares = orderSharesOf(compiled, shares, {
    dirt: marched.atDay,
    feedKgPerS: day.carries.feedKgPerS,
  });
  return {
    edition: MODEL_EDITION,
    layout: compiled.layout,
    ...clean,
    turnoverPerS: clean.dutyPoint.flowM3PerS / tank.volumeM3,
    beds,
    carries: { clean: atClean, day: day.carries, intervalEnd: atEnd },
    cleaning,
    chemical,
    replaced,
    cost: costOf(compiled, replaced),
    uses: usesOf(compiled, day.carries.oxidisedKgNPerS),
    solids,
    orderShares,
    warnings: [
      ...warningsOf(compiled, { cleanFlowM3PerS: clean.dutyPoint.flowM3PerS, beds, cleaning }),
      ...siteWarnings,
    ],
  };
};

/**
 * Assesses one job.
 * @throws where the network cannot be solved: the job's own checks keep such layouts out
 */
export const assess = (model: Model, options: AssessOptions = {}): Assessment =>
  evaluate(compiledOf(model), options);
