import { compiledOf } from '../assessment/compile.ts';
import type { Compiled } from '../assessment/compiled.ts';
import { stateAt } from '../assessment/dirt/march.ts';
import { applyDirt, cleanState, type DirtState } from '../assessment/dirt/state.ts';
import { filterFlow } from '../assessment/dirt/transport.ts';
import { pumpHead } from '../assessment/hydraulics/headBudget.ts';
import type { Model } from '../model/model.ts';
import { LINK_KIND, PARAMETER_STRIDE } from '../network/lawNumbers.ts';
import { solveNetwork, startFrom } from '../network/solve.ts';
import { curveShortOfAir, shortOfAir } from './airShort.ts';
import { type Cause, causes } from './causes.ts';
import { dirtCourse } from './dirtCourse.ts';
import { blockedHeadRatio, dirtTimeS, filmRatio, speedLeft } from './severity.ts';

const ENERGY_TOLERANCE = 1e-8;

/** How grave each cause is, 0 to 1 from mild to grave, in the order of `causes`; NaN where it is not there. */
export type Faults = Float64Array;

/** A filter in order, ready to have faults put into it. */
export interface FaultyFilter {
  readonly compiled: Compiled;
  /** Causes that this construction can have. */
  readonly possible: ReadonlySet<Cause>;
  /** Flow in order, with clean media, m³/s. */
  readonly cleanFlowM3PerS: number;
  readonly pumpHeadM: number;
  readonly course: readonly DirtState[];
  readonly sinceCleanedS: number | undefined;
  /** Of the filter in order: where solves begin, and what faults change. */
  readonly chordFlow: Float64Array;
  readonly flow: Float64Array;
  readonly parameters: Float64Array;
  readonly tables: Float64Array;
  /** Curves of an air-lift with ever less air; absent where a pump drives the filter. */
  readonly airCurves: readonly Float64Array[] | undefined;
  /** Links that a fault acts on. */
  readonly intakeLink: number | undefined;
  readonly outletLink: number | undefined;
}

/** First of these links that takes head, so that more of it means something. */
const takingHead = ({ network }: Compiled, ids: readonly string[]): number | undefined =>
  ids
    .map((id) => network.linkIndex.get(id))
    .find((link): link is number => link !== undefined && network.drop[link]! > 0);

const intakeOf = (compiled: Compiled): number | undefined => {
  const { openings, inletSpace } = compiled.layout;
  const meant = openings.filter(({ from, bypass }) => from === inletSpace && !bypass).map(({ id }) => id);
  return takingHead(compiled, ['intake:fittings', ...meant]);
};

const outletOf = (compiled: Compiled): number | undefined => {
  const { openings, outletSpace } = compiled.layout;
  const meant = openings.filter(({ to, bypass }) => to === outletSpace && !bypass).map(({ id }) => id);
  return takingHead(compiled, ['outlet:fittings', ...meant]);
};

const possibleIn = (filter: Omit<FaultyFilter, 'possible'>): Set<Cause> => {
  const { intake, outlet } = filter.compiled.model.filter;
  const has: Readonly<Record<Cause, boolean>> = {
    'intake-blocked': filter.intakeLink !== undefined,
    air: intake !== undefined && filter.airCurves === undefined,
    'air-short': filter.airCurves !== undefined,
    'impeller-fouled': filter.airCurves === undefined,
    'impeller-worn': filter.airCurves === undefined,
    'hose-film': intake !== undefined || outlet !== undefined,
    'media-clogged': filter.course.length > 1,
    'outlet-restricted': filter.outletLink !== undefined,
  };
  return new Set(causes.filter((cause) => has[cause]));
};

/**
 * Makes a filter ready for faults.
 *
 * @param sinceCleanedS time since its media were cleaned, s, where it is known
 * @throws where the network cannot be solved: the job's own checks keep such layouts out
 */
export const faultyFilter = (model: Model, sinceCleanedS?: number): FaultyFilter => {
  const compiled = compiledOf(model);
  const course = dirtCourse(compiled);
  const { network } = compiled;
  applyDirt(compiled, cleanState(compiled));
  solveNetwork(network);
  const filter = {
    compiled,
    course: model.tank.feedKgPerS > 0 && compiled.beds.length > 0 ? course : course.slice(0, 1),
    cleanFlowM3PerS: filterFlow(compiled),
    pumpHeadM: pumpHead(compiled),
    sinceCleanedS,
    chordFlow: network.chordFlow.slice(),
    flow: network.flow.slice(),
    parameters: network.parameters.slice(),
    tables: network.tables.slice(),
    airCurves: shortOfAir(model),
    intakeLink: intakeOf(compiled),
    outletLink: outletOf(compiled),
  };
  return { ...filter, possible: possibleIn(filter) };
};

/** Speed that faults leave to the pump, as far as its head goes, 0 to 1. */
export const speedUnder = (faults: Faults): number => {
  let speed = 1;
  for (const cause of ['air', 'impeller-fouled', 'impeller-worn'] as const) {
    const share = faults[causes.indexOf(cause)]!;
    if (!Number.isNaN(share)) speed *= speedLeft(cause, share);
  }
  return speed;
};

/** An air-lift with the air that faults leave it. */
const takeAir = ({ compiled: { network }, tables, airCurves = [] }: FaultyFilter, share: number): void => {
  if (Number.isNaN(share)) network.tables.set(tables);
  else network.tables.set(curveShortOfAir(airCurves, share));
};

/** The pump at another speed, by the affinity laws. */
const slowDown = ({ compiled, parameters, tables }: FaultyFilter, speed: number): void => {
  const { network } = compiled;
  const link = network.linkIndex.get('pump')!;
  const at = link * PARAMETER_STRIDE;
  if (network.kind[link] === LINK_KIND.pump) {
    network.parameters[at] = parameters[at]! * speed ** 2;
    return;
  }
  for (let place = 0; place < tables.length; place += 3) {
    network.tables[place] = tables[place]! * speed;
    network.tables[place + 1] = tables[place + 1]! * speed ** 2;
    network.tables[place + 2] = tables[place + 2]! * speed;
  }
};

const block = ({ compiled, pumpHeadM, flow }: FaultyFilter, link: number, share: number): void => {
  const { network } = compiled;
  const at = link * PARAMETER_STRIDE;
  const own = network.parameters[at]! * flow[link]! + network.parameters[at + 1]! * flow[link]! ** 2;
  network.resistanceRatio[link] = 1 + (blockedHeadRatio(share) * pumpHeadM) / own;
};

const coatHoses = ({ compiled, flow }: FaultyFilter, share: number): void => {
  const { network, model, water } = compiled;
  for (const side of ['intake', 'outlet'] as const) {
    const run = model.filter[side];
    if (run === undefined) continue;
    const link = network.linkIndex.get(`${side}:hose`)!;
    const through = {
      flowM3PerS: flow[link]!,
      kinematicViscosityM2PerS: water.kinematicViscosityM2PerS,
    };
    network.resistanceRatio[link] = filmRatio(run, share, through);
  }
};

/** Flow at the tank with faults in the filter, m³/s. */
export const flowUnder = (filter: FaultyFilter, faults: Faults): number => {
  const { compiled, course, sinceCleanedS } = filter;
  const { network } = compiled;
  const share = (cause: Cause): number => faults[causes.indexOf(cause)]!;
  network.resistanceRatio.fill(1);
  // A mat's loss is taken at the flow that stands in the network.
  network.flow.set(filter.flow);
  const media = share('media-clogged');
  applyDirt(compiled, Number.isNaN(media) ? course[0]! : stateAt(course, dirtTimeS(media, sinceCleanedS)));
  if (!Number.isNaN(share('hose-film'))) coatHoses(filter, share('hose-film'));
  if (!Number.isNaN(share('intake-blocked'))) block(filter, filter.intakeLink!, share('intake-blocked'));
  if (!Number.isNaN(share('outlet-restricted')))
    block(filter, filter.outletLink!, share('outlet-restricted'));
  if (filter.airCurves) takeAir(filter, share('air-short'));
  else slowDown(filter, speedUnder(faults));
  startFrom(network, filter.chordFlow);
  solveNetwork(network, ENERGY_TOLERANCE);
  return filterFlow(compiled);
};
