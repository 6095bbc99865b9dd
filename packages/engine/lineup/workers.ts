import type { Compiled } from '../assessment/compiled.ts';
import { filterFlow } from '../assessment/dirt/transport.ts';
import {
  flux,
  makePass,
  passOverArea,
  passThrough,
  type Rates,
  type TankLevels,
} from '../assessment/life/oxidation.ts';
import { chemistryFactor } from '../assessment/life/rates.ts';
import { solidsMadeIn } from '../assessment/loads.ts';
import { facesOf } from '../assessment/tank/habitat.ts';
import type { TankFigures } from '../assessment/tank/tankFigures.ts';
import {
  FLUX_OXYGEN_PER_AMMONIA,
  FLUX_OXYGEN_PER_NITRITE,
  organicCarbonFactor,
} from '../laws/life/nitrification.ts';
import type { OtherFilter } from '../model/model.ts';
import type { Oxidised } from './settle.ts';

/** The bacteria there are, where they bind before the area does: greatest work of each step by bed, kg N/s. */
export interface Present {
  readonly ammoniaMost: readonly number[];
  readonly nitriteMost: readonly number[];
  readonly ammoniaHalf: number;
  readonly nitriteHalf: number;
}

/** Somewhere that bacteria work: what they do at levels of the tank. */
export interface Worker {
  readonly kind: 'filter' | 'other' | 'walls';
  /** What another filter is called. */
  readonly name?: string;
  /** Effective area of each of its beds, m². */
  readonly areaM2: readonly number[];
  readonly work: (levels: TankLevels) => Oxidised;
  /** What each bed did at the last levels. */
  readonly byBed: () => { readonly ammonia: readonly number[]; readonly nitrite: readonly number[] };
  /** The same place with only so many bacteria in it. */
  readonly limitedTo: (present: Present) => Worker;
}

/** Limits as the rates have them: by area. */
const limitsOn = (areaM2: readonly number[], present: Present): NonNullable<Rates['bacteria']> => ({
  ammoniaMost: Float64Array.from(present.ammoniaMost, (most, bed) => most / (areaM2[bed]! || 1)),
  nitriteMost: Float64Array.from(present.nitriteMost, (most, bed) => most / (areaM2[bed]! || 1)),
  ammoniaHalf: present.ammoniaHalf,
  nitriteHalf: present.nitriteHalf,
});

/** The filter of the job, at the flows of the last solve. */
export const filterWorker = (compiled: Compiled, rates: Rates): Worker => {
  const pass = makePass(compiled);
  const areaM2 = compiled.beds.map((bed, place) => rates.areaPerM[place]! * bed.volumeM3);
  return {
    kind: 'filter',
    areaM2,
    work: (levels) => {
      passThrough({ compiled, rates, pass }, levels);
      return { ammonia: pass.ammoniaKgNPerS, nitrite: pass.nitriteKgNPerS };
    },
    byBed: () => ({ ammonia: [...pass.byBedKgNPerS], nitrite: [...pass.nitriteByBedKgNPerS] }),
    limitedTo: (present) => filterWorker(compiled, { ...rates, bacteria: limitsOn(areaM2, present) }),
  };
};

/** A place of one area, with what it does kept for asking. */
const onePlace = (
  of: Pick<Worker, 'kind' | 'name'> & { readonly areaM2: number },
  work: (levels: TankLevels) => Oxidised,
  limitedTo: Worker['limitedTo'],
): Worker => {
  let last: Oxidised = { ammonia: 0, nitrite: 0 };
  return {
    ...of,
    areaM2: [of.areaM2],
    work: (levels) => {
      last = work(levels);
      return last;
    },
    byBed: () => ({ ammonia: [last.ammonia], nitrite: [last.nitrite] }),
    limitedTo,
  };
};

/** Rates of one bed in water that flows fast enough to leave it no film of its own. */
const plainRates = ({ constants }: Compiled, rates: Rates): Rates => {
  const heat = rates.nitriteCeiling / rates.ammoniaCeiling;
  return {
    ...rates,
    areaPerM: Float64Array.of(1),
    ammoniaSlopeMPerS: Float64Array.of(rates.kineticSlopeMPerS),
    nitriteSlopeMPerS: Float64Array.of(rates.kineticSlopeMPerS * constants.nitriteSlopeRatio * heat),
    dirtOxygenKgPerS: Float64Array.of(0),
  };
};

/** What the carbon of the solids that another filter catches leaves of its bacteria: it catches as well as the job's own. */
const carbonOf = (
  compiled: Compiled,
  other: OtherFilter,
  caught: { readonly allKgPerS: number; readonly tanMadeKgPerS: number },
): number => {
  const { constants } = compiled;
  const flow = filterFlow(compiled);
  if (caught.tanMadeKgPerS <= 0 || flow <= 0) return 1;
  const caughtKgPerS = Math.min(caught.allKgPerS * (other.flowM3PerS / flow), solidsMadeIn(compiled));
  const carbon = caughtKgPerS * constants.carbonPerSolidsRatio * constants.carbonAvailableFraction;
  return organicCarbonFactor({
    carbonToNitrogenRatio: carbon / caught.tanMadeKgPerS,
    steepness: constants.carbonSteepness,
  });
};

const otherWorker = (of: { name: string; areaM2: number; flowM3PerS: number }, rates: Rates): Worker =>
  onePlace(
    { kind: 'other', name: of.name, areaM2: of.areaM2 },
    (levels) => {
      const { ammoniaKgNPerS, nitriteKgNPerS } = passOverArea(rates, of, levels);
      return { ammonia: ammoniaKgNPerS, nitrite: nitriteKgNPerS };
    },
    (present) => otherWorker(of, { ...rates, bacteria: limitsOn([of.areaM2], present) }),
  );

/** The other filters on the tank, as plain beds of the open area and the flow that the job tells. */
export const otherWorkers = (
  compiled: Compiled,
  rates: Rates,
  caught: { readonly allKgPerS: number; readonly tanMadeKgPerS: number },
): readonly Worker[] => {
  const chemistry = chemistryFactor(compiled, compiled.model.tank);
  return compiled.model.otherFilters.map((other) =>
    otherWorker(
      { ...other, areaM2: other.areaM2 * chemistry * carbonOf(compiled, other, caught) },
      plainRates(compiled, rates),
    ),
  );
};

/** Glass and ground: as large as the tank's volume lets one guess, in slow water. */
export const wallWorker = (compiled: Compiled, rates: Rates, figures: TankFigures): Worker => {
  const { tank } = compiled.model;
  const slope = figures.wallSlopeRatio;
  const plain = plainRates(compiled, rates);
  const areaM2 =
    facesOf(tank.volumeM3) * figures.wallAreaRatio * chemistryFactor(compiled, compiled.model.tank);
  const made = (present?: Present): Worker => {
    const within = (level: number, most: number | undefined, half: number): number =>
      most === undefined ? Number.POSITIVE_INFINITY : ((most / areaM2) * level) / (half + level);
    const work = ({ ammoniaKgNPerM3: a, nitriteKgNPerM3: n, oxygenKgPerM3: o }: TankLevels): Oxidised => {
      const oxygenFactor = o / (rates.oxygenHalfSaturationKgPerM3 + o);
      const supply = slope * rates.kineticSlopeMPerS * o;
      const first = within(a, present?.ammoniaMost[0], present?.ammoniaHalf ?? 1);
      const second = within(n, present?.nitriteMost[0], present?.nitriteHalf ?? 1);
      return {
        ammonia:
          areaM2 *
          flux(slope * plain.ammoniaSlopeMPerS[0]!, a, {
            ceiling: Math.min(rates.ammoniaCeiling, first),
            oxygenFlux: supply / FLUX_OXYGEN_PER_AMMONIA,
            oxygenFactor,
          }),
        nitrite:
          areaM2 *
          flux(slope * plain.nitriteSlopeMPerS[0]!, n, {
            ceiling: Math.min(rates.nitriteCeiling, second),
            oxygenFlux: supply / FLUX_OXYGEN_PER_NITRITE,
            oxygenFactor,
          }),
      };
    };
    return onePlace({ kind: 'walls', areaM2 }, work, made);
  };
  return made();
};
