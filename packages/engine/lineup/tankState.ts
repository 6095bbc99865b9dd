import type { Compiled } from '../assessment/compiled.ts';
import { type DirtState, keptPerS } from '../assessment/dirt/state.ts';
import { solveAt } from '../assessment/dirt/step.ts';
import type { BacteriaShares } from '../assessment/life/bacteria.ts';
import { decayPerFeed } from '../assessment/life/carries.ts';
import { ratesOf } from '../assessment/life/rates.ts';
import { ammoniaMadeIn } from '../assessment/loads.ts';
import { stepsAt } from '../assessment/tank/habitat.ts';
import { usualPlants } from '../assessment/tank/plants.ts';
import type { TankFigures } from '../assessment/tank/tankFigures.ts';
import { type Oxidised, type Settled, settle, type TankTerms } from './settle.ts';
import { filterWorker, otherWorkers, type Worker, wallWorker } from './workers.ts';

/** Everything that works on the tank's water in one state of the filter's dirt. */
export interface Workplace {
  readonly compiled: Compiled;
  readonly workers: readonly Worker[];
  readonly terms: Omit<TankTerms, 'oxidise'>;
  /** Oxygen that rotting dirt in the filter takes up, kg/s. */
  readonly dirtOxygenKgPerS: number;
}

/** What one filter, or the walls, oxidise of the ammonia and of the nitrite, kg N/s. */
export interface Work extends Oxidised {
  readonly kind: Worker['kind'];
  readonly name?: string;
}

/** A tank that has settled, and who did the work. */
export interface TankState extends Settled {
  readonly loadKgNPerS: number;
  readonly work: readonly Work[];
}

/** How a tank is looked at. */
export interface TankLooking {
  readonly figures: TankFigures;
  readonly shares: BacteriaShares;
  readonly dirt: DirtState;
  /** Solids that the filter catches on the mean of an interval, kg/s: what other filters' shares are taken from. */
  readonly caughtKgPerS: number;
}

/** Puts the network into a state of dirt; the workplace holds until the next solve. */
export const workplaceOf = (compiled: Compiled, looking: TankLooking): Workplace => {
  const { figures, shares, dirt } = looking;
  const { tank } = compiled.model;
  solveAt(compiled, dirt);
  const caughtKgPerS = keptPerS(compiled, dirt);
  const rates = ratesOf(compiled, shares, { caughtKgPerS, ageS: dirt.timeS, areaFactor: 1 });
  const rotting = tank.feedKgPerS * decayPerFeed(compiled, caughtKgPerS, dirt.timeS);
  const tanMadeKgPerS = ammoniaMadeIn(compiled);
  const caught = { allKgPerS: looking.caughtKgPerS, tanMadeKgPerS };
  return {
    compiled,
    workers: [
      filterWorker(compiled, rates),
      ...otherWorkers(compiled, rates, caught),
      wallWorker(compiled, rates, figures),
    ],
    terms: {
      volumeM3: tank.volumeM3,
      loadKgNPerS: tanMadeKgPerS + rotting,
      changePerS: tank.waterChangePerS,
      plants: tank.planted ? usualPlants(tank, figures) : undefined,
    },
    dirtOxygenKgPerS: rates.dirtOxygenKgPerS.reduce((sum, one) => sum + one, 0),
  };
};

/** The workplace as terms of a balance, with the tank's oxygen, pH and alkalinity as the job states them. */
export const termsOf = ({ compiled, terms }: Workplace, workers: readonly Worker[]): TankTerms => ({
  ...terms,
  oxidise: (ammoniaKgNPerM3, nitriteKgNPerM3) => {
    const { oxygenKgPerM3 } = compiled.water;
    let ammonia = 0;
    let nitrite = 0;
    for (const worker of workers) {
      const done = worker.work({ ammoniaKgNPerM3, nitriteKgNPerM3, oxygenKgPerM3 });
      ammonia += done.ammonia;
      nitrite += done.nitrite;
    }
    return { ammonia, nitrite };
  },
});

const total = (values: readonly number[]): number => values.reduce((sum, one) => sum + one, 0);

/** Settles a tank with some of its workers. Each of them stands at the levels it settled at. */
export const settledWith = (place: Workplace, workers: readonly Worker[] = place.workers): TankState => ({
  ...settle(termsOf(place, workers)),
  loadKgNPerS: place.terms.loadKgNPerS,
  work: workers.map(({ kind, name, byBed }) => {
    const { ammonia, nitrite } = byBed();
    return {
      kind,
      ...(name === undefined ? {} : { name }),
      ammonia: total(ammonia),
      nitrite: total(nitrite),
    };
  }),
});

/**
 * The workers with only the bacteria that their present work feeds: where growth is decay, Y·J = b·M, so that the
 * most they do is µ/b times what they did last.
 */
export const asNow = (place: Workplace, workers: readonly Worker[] = place.workers): readonly Worker[] => {
  const { first, second } = stepsAt(place.compiled.model.tank.temperatureK);
  return workers.map((worker) => {
    const { ammonia, nitrite } = worker.byBed();
    return worker.limitedTo({
      ammoniaMost: ammonia.map((one) => (first.growthPerS / first.decayPerS) * one),
      nitriteMost: nitrite.map((one) => (second.growthPerS / second.decayPerS) * one),
      ammoniaHalf: first.halfKgNPerM3,
      nitriteHalf: second.halfKgNPerM3,
    });
  });
};
