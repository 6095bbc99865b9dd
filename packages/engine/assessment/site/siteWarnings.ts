import {
  airClearingVelocityEscarameia2007,
  airClearingVelocityEscarameia2007Range,
  slugBubbleVelocityViana2003,
} from '../../laws/hydraulics/air.ts';
import { coilFrictionMishraGupta1979Range } from '../../laws/hydraulics/coils.ts';
import { jetVelocityHussein1994Range, velocityInBore } from '../../laws/hydraulics/jet.ts';
import { tapKWeisbach1855Range } from '../../laws/hydraulics/restrictions.ts';
import { surfaceTensionIapwsR1, vapourPressureWagnerPruss1993 } from '../../laws/water/vapour.ts';
import type { HoseRun } from '../../model/model.ts';
import { flowOf } from '../../network/solve.ts';
import { number, quantity } from '../../wording/facts.ts';
import { said } from '../../wording/said.ts';
import type { Warning } from '../assessment.ts';
import type { Compiled } from '../compiled.ts';
import { openBore } from '../hydraulics/linkLaws.ts';
import { warning } from '../warnings.ts';
import { outletEnds } from './outlets.ts';
import type { Site } from './site.ts';

/** Pressure that has to be left above that of boiling, Pa: a metre of water (common practice, no source). */
const VAPOUR_MARGIN_PA = 9.8e3;

/** Pressure below the air's from which dissolved air comes out in bubbles, Pa (from memory, ×/÷ 2). */
const AIR_COMES_OUT_PA = -1e4;

/** Largest pocket of air that Escarameia measured, 4V/(πD³). */
const POCKET = 1;

interface Run {
  readonly name: string;
  readonly side: 'intake' | 'outlet';
  readonly run: HoseRun;
}

const runsOf = ({ model }: Compiled): Run[] => {
  const { intake, outlet, outletBranches = [] } = model.filter;
  const ends = outletEnds(model).map(({ name, run }) => ({ name, side: 'outlet' as const, run }));
  const stem =
    outlet && outletBranches.length > 0 ? [{ name: 'outlet', side: 'outlet' as const, run: outlet }] : [];
  return [...(intake ? [{ name: 'intake', side: 'intake' as const, run: intake }] : []), ...stem, ...ends];
};

const speedIn = (compiled: Compiled, { name, run }: Run): number =>
  velocityInBore({ flowM3PerS: flowOf(compiled.network, `${name}:hose`), boreM: openBore(run) });

/** Speed from which water takes the air along that gathers at the top of a falling hose, m/s. */
const clearingSpeed = (compiled: Compiled, run: HoseRun): number => {
  const boreM = openBore(run);
  const { densityKgPerM3, temperatureK } = compiled.water;
  const upright = slugBubbleVelocityViana2003({
    boreM,
    densityKgPerM3,
    surfaceTensionNPerM: surfaceTensionIapwsR1({ temperatureK }),
  });
  if (run.fallSlope === undefined) return upright;
  const slope = Math.min(run.fallSlope, airClearingVelocityEscarameia2007Range.slope.most);
  return Math.max(upright, airClearingVelocityEscarameia2007({ boreM, slope, pocketSize: POCKET }));
};

/** Air that stays in a hose that falls: only between a tank and a filter below it do hoses fall with the water. */
const airStays = (compiled: Compiled): Warning[] => {
  const { intake, outlet } = compiled.model.filter;
  if (!intake || !outlet) return [];
  return runsOf(compiled).flatMap((run) => {
    const [speed, need] = [speedIn(compiled, run), clearingSpeed(compiled, run.run)];
    if (speed <= 0 || speed >= need) return [];
    const facts = { hose: said(`hose.${run.side}`), speed: quantity(speed, 'velocity') };
    return [warning('air-stays-in-hose', run.name, { ...facts, need: quantity(need, 'velocity') })];
  });
};

/** Pressure too near to boiling, or so low that dissolved air comes out. */
const lowPressure = (compiled: Compiled, { pressures }: Site): Warning[] => {
  const { temperatureK, pressurePa } = compiled.model.tank;
  const boiling = vapourPressureWagnerPruss1993({ temperatureK });
  return pressures.flatMap(({ part, gaugePa }) => {
    const place = said(`part.${part}`);
    const absolute = pressurePa + gaugePa;
    if (absolute < boiling + VAPOUR_MARGIN_PA) {
      const facts = { place, boiling: quantity(boiling, 'pressure') };
      return [warning('water-near-boiling', part, { ...facts, pressure: quantity(absolute, 'pressure') })];
    }
    if (gaugePa > AIR_COMES_OUT_PA) return [];
    return [warning('air-comes-out', part, { place, below: quantity(-gaugePa, 'pressure') })];
  });
};

/** A pump above the water cannot fill its own hose. */
const pumpAboveWater = ({ model }: Compiled): Warning[] => {
  const { placing, intake } = model.filter;
  if (!placing || !intake || placing.lidDepthM >= 0) return [];
  return [warning('pump-above-water', 'pump', { above: quantity(-placing.lidDepthM, 'length') })];
};

/** Water that runs back through a second pump beside the first. */
const runsBack = ({ network }: Compiled): Warning[] => {
  const link = network.linkIndex.get('pump:beside');
  if (link === undefined || network.flow[link]! >= 0) return [];
  return [warning('water-runs-back', 'pump', { flow: quantity(-network.flow[link]!, 'flow') })];
};

const outsideLaws = (compiled: Compiled): Warning[] =>
  runsOf(compiled).flatMap(({ name, side, run }) => {
    const hose = said(`hose.${side}`);
    const curvature = run.coil ? openBore(run) / run.coil.diameterM : 0;
    const tight = curvature > coilFrictionMishraGupta1979Range.curvature.most;
    const open = run.tapOpenFraction ?? 1;
    return [
      ...(tight ? [warning('coil-outside-law', name, { hose })] : []),
      ...(open < tapKWeisbach1855Range.openFraction.least
        ? [warning('tap-outside-law', name, { hose })]
        : []),
    ];
  });

/** Jets too slow to be turbulent spread sooner than the law says, which was not measured for them. */
const slowJets = (compiled: Compiled, { jets }: Site): Warning[] =>
  jets.flatMap(({ outlet, boreM, velocityMPerS, reachM }) => {
    const Re = (velocityMPerS * boreM) / compiled.water.kinematicViscosityM2PerS;
    if (reachM === 0 || Re >= jetVelocityHussein1994Range.reynolds.least) return [];
    return [warning('jet-outside-law', outlet, { Re: number(Re, 2) })];
  });

/**
 * Where hoses may lock with air, pressure falls too low, water runs back, or a law of the run is left.
 * At the flows of the last solve.
 */
export const siteWarnings = (compiled: Compiled, site: Site): Warning[] => [
  ...airStays(compiled),
  ...lowPressure(compiled, site),
  ...pumpAboveWater(compiled),
  ...runsBack(compiled),
  ...outsideLaws(compiled),
  ...slowJets(compiled, site),
];
