import type { Model } from '../../model/model.ts';
import { marchStiff } from '../../numerics/stiff.ts';
import { AMMONIA_TARGET, NITRITE_TARGET } from '../life/capacity.ts';
import { beginTank, type TankMarch } from './beginTank.ts';
import { makeChange } from './happen.ts';
import { at, LEVELS } from './tankState.ts';

const DAY_S = 86_400;
const WEEK_S = 7 * DAY_S;

/** Parts in which a bed may be changed: whole, halves, thirds, quarters, sixths, eighths. */
const PARTS = [1, 2, 3, 4, 6, 8] as const;
const MOST_WEEKS = 12;

/**
 * Share of a level's target that a change may add where the tank stands above it anyway: what no test kit tells apart
 * (ours).
 */
const UNSEEN_SHARE = 0.25;

/** How a bed of a ripe filter may be replaced. */
export interface StagedChange {
  /** Bed by id. */
  readonly bed: string;
  /** Share of all bacteria of the first step that live in it, 0 to 1. */
  readonly share: number;
  /** How many equal parts, and weeks from one to the next; absent where even an eighth is too much within 12 weeks. */
  readonly parts?: number;
  readonly weeksApart?: number;
  /** Highest ammonia and nitrite of the way found, or of an eighth at once, kg N/m³. */
  readonly peakAmmoniaKgNPerM3: number;
  readonly peakNitriteKgNPerM3: number;
  /** Highest levels if all of it were replaced at once, kg N/m³. */
  readonly wholeAmmoniaKgNPerM3: number;
  readonly wholeNitriteKgNPerM3: number;
}

interface Peaks {
  readonly ammonia: number;
  readonly nitrite: number;
}

/** A tank at one state, to be tried on again and again. */
interface Ripe {
  readonly tank: TankMarch;
  readonly y: Float64Array;
  /** Levels that may not be passed: the targets, or a little above where the tank stands. */
  readonly most: Peaks;
}

const massIn = ({ y }: Pick<Ripe, 'y'>, place: number): number => y[LEVELS + place]!;

/** Replaces `parts` equal parts one after another, each bare part staying as bare as what grew on it. */
const tryStaged = (ripe: Ripe, of: { place: number; parts: number; apartS: number }): Peaks => {
  const { tank } = ripe;
  const { march } = tank;
  march.y.set(ripe.y);
  march.time = 0;
  const places = tank.regime.habitat.areaM2.length;
  const peaks = { ammonia: 0, nitrite: 0 };
  const look = (): void => {
    peaks.ammonia = Math.max(peaks.ammonia, march.y[at.ammonia]!);
    peaks.nitrite = Math.max(peaks.nitrite, march.y[at.nitrite]!);
  };
  for (let part = 0; part < of.parts; part += 1) {
    makeChange(tank, {
      timeS: march.time,
      make: () => {
        for (const entry of [LEVELS + of.place, LEVELS + places + of.place])
          march.y[entry] = march.y[entry]! * (1 - 1 / of.parts);
      },
    });
    const last = part === of.parts - 1;
    marchStiff(march, march.time + (last ? Math.max(of.apartS, 4 * WEEK_S) : of.apartS), look);
  }
  return peaks;
};

const isUnder = ({ most }: Ripe, peaks: Peaks): boolean =>
  peaks.ammonia <= most.ammonia && peaks.nitrite <= most.nitrite;

/** Fewest weeks apart at which so many parts stay under; absent within twelve. Longer is never worse. */
const weeksFor = (ripe: Ripe, place: number, parts: number): number | undefined => {
  const works = (weeks: number): boolean =>
    isUnder(ripe, tryStaged(ripe, { place, parts, apartS: weeks * WEEK_S }));
  if (!works(MOST_WEEKS)) return undefined;
  let [bad, good] = [0, MOST_WEEKS];
  while (good - bad > 1) {
    const middle = Math.floor(0.5 * (bad + good));
    if (works(middle)) good = middle;
    else bad = middle;
  }
  return good;
};

const stagedOf = (ripe: Ripe, place: number): StagedChange => {
  const { tank } = ripe;
  const beds = tank.regime.habitat.working.compiled.beds;
  const all = tank.regime.habitat.areaM2.reduce((sum, _, other) => sum + massIn(ripe, other), 0);
  const whole = tryStaged(ripe, { place, parts: 1, apartS: WEEK_S });
  const told = {
    bed: beds[place]!.id,
    share: all > 0 ? massIn(ripe, place) / all : 0,
    wholeAmmoniaKgNPerM3: whole.ammonia,
    wholeNitriteKgNPerM3: whole.nitrite,
  };
  const peaksAs = ({ ammonia, nitrite }: Peaks) => ({
    peakAmmoniaKgNPerM3: ammonia,
    peakNitriteKgNPerM3: nitrite,
  });
  if (isUnder(ripe, whole)) return { ...told, ...peaksAs(whole), parts: 1, weeksApart: 0 };
  for (const parts of PARTS.slice(1)) {
    const weeksApart = weeksFor(ripe, place, parts);
    if (weeksApart === undefined) continue;
    return {
      ...told,
      ...peaksAs(tryStaged(ripe, { place, parts, apartS: weeksApart * WEEK_S })),
      parts,
      weeksApart,
    };
  }
  return { ...told, ...peaksAs(tryStaged(ripe, { place, parts: 8, apartS: MOST_WEEKS * WEEK_S })) };
};

/**
 * How each bed of a ripe filter may be replaced by new media of its kind so that ammonia and nitrite stay under target:
 * in the fewest equal parts, at the fewest weeks from one to the next. Where a level stands above its target anyway, it
 * may rise by a quarter of the target. Beds in which no bacteria are counted are left out.
 * @throws where the network cannot be solved: the job's own checks keep such layouts out
 */
export const stagedChanges = (model: Model): readonly StagedChange[] => {
  const tank = beginTank(model, { days: 1, start: { kind: 'mature' }, happenings: [] });
  const y = tank.march.y.slice();
  const most = {
    ammonia: Math.max(AMMONIA_TARGET, y[at.ammonia]! + UNSEEN_SHARE * AMMONIA_TARGET),
    nitrite: Math.max(NITRITE_TARGET, y[at.nitrite]! + UNSEEN_SHARE * NITRITE_TARGET),
  };
  const ripe = { tank, y, most };
  const { areaM2, working } = tank.regime.habitat;
  return working.compiled.beds.flatMap((_, place) => (areaM2[place]! > 0 ? [stagedOf(ripe, place)] : []));
};
