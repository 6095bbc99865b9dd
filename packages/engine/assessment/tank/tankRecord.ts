import { unionizedAmmoniaFraction } from '../../laws/water/ammonia.ts';
import { crossingIn, type DenseStep } from '../../numerics/stiff.ts';
import { AMMONIA_TARGET, NITRITE_TARGET, UNIONIZED_LIMIT } from '../life/capacity.ts';
import type { TankMarch } from './beginTank.ts';
import { at, LEVELS } from './tankState.ts';
import { pHNow } from './tankSystem.ts';

const DAY_S = 86_400;

/** A tank by day; each list has an entry a day, from day 0. */
export interface TankDays {
  readonly day: readonly number[];
  readonly ammoniaKgNPerM3: readonly number[];
  readonly nitriteKgNPerM3: readonly number[];
  readonly nitrateKgNPerM3: readonly number[];
  /** Un-ionized ammonia, kg NH3-N/m³. */
  readonly unionizedKgNPerM3: readonly number[];
  readonly oxygenKgPerM3: readonly number[];
  readonly alkalinityKgPerM3: readonly number[];
  readonly pH: readonly number[];
  /** Bacteria of each step against those that the job's own load feeds in the long run. */
  readonly firstRatio: readonly number[];
  readonly secondRatio: readonly number[];
}

/** A value at its highest or lowest, and when. */
export interface Extreme {
  readonly value: number;
  readonly timeS: number;
}

/** How a level stands against what it is to stay under. */
export interface Held {
  readonly limit: number;
  readonly peak: Extreme;
  /** Time above the limit, s. */
  readonly aboveS: number;
  /** When it last came back under; absent where it never was above, or is still. */
  readonly backS?: number;
  /** Whether it is above at the end. */
  readonly stillAbove: boolean;
}

const unionized = ({ regime }: TankMarch, y: Float64Array): number =>
  y[at.ammonia]! *
  unionizedAmmoniaFraction({
    temperatureK: regime.habitat.temperatureK,
    pH: Math.min(10, Math.max(5, pHNow(regime, y[at.alkalinity]!))),
    salinity: regime.habitat.working.compiled.model.tank.salinity,
  });

const massOf = (y: Float64Array, from: number, places: number): number => {
  let mass = 0;
  for (let place = 0; place < places; place += 1) mass += y[from + place]!;
  return mass;
};

/** Watches one level: its peak, and the time above its limit. */
const holder = (limit: number, value: (y: Float64Array) => number) => {
  let peak: Extreme = { value: Number.NEGATIVE_INFINITY, timeS: 0 };
  let aboveS = 0;
  let backS: number | undefined;
  let above = false;
  /** At a state that is not reached through a step: the start, and behind a change. */
  const jump = (y: Float64Array, timeS: number): void => {
    const now = value(y);
    if (now > peak.value) peak = { value: now, timeS };
    if (above && now <= limit) backS = timeS;
    above = now > limit;
    if (above) backS = undefined;
  };
  const look = (step: DenseStep, y: Float64Array, room: Float64Array): void => {
    const crossed = crossingIn(step, room, (state) => value(state) - limit);
    if (crossed !== undefined) aboveS += above ? crossed - step.from : step.to - crossed;
    else if (above) aboveS += step.to - step.from;
    const was = above;
    jump(y, step.to);
    if (was && !above) backS = crossed ?? step.to;
    step.at(0.5 * (step.from + step.to), room);
    const middle = value(room);
    if (middle > peak.value) peak = { value: middle, timeS: 0.5 * (step.from + step.to) };
  };
  const held = (): Held => ({
    limit,
    peak,
    aboveS,
    ...(backS === undefined ? {} : { backS }),
    stillAbove: above,
  });
  return { jump, look, held };
};

/** A list a day of everything that is told by day. */
const dayLists = (tank: TankMarch) => {
  const places = tank.regime.habitat.areaM2.length;
  const days = {
    day: [] as number[],
    ammoniaKgNPerM3: [] as number[],
    nitriteKgNPerM3: [] as number[],
    nitrateKgNPerM3: [] as number[],
    unionizedKgNPerM3: [] as number[],
    oxygenKgPerM3: [] as number[],
    alkalinityKgPerM3: [] as number[],
    pH: [] as number[],
    firstRatio: [] as number[],
    secondRatio: [] as number[],
  };
  const note = (y: Float64Array): void => {
    days.day.push(days.day.length);
    days.ammoniaKgNPerM3.push(y[at.ammonia]!);
    days.nitriteKgNPerM3.push(y[at.nitrite]!);
    days.nitrateKgNPerM3.push(y[at.nitrate]!);
    days.unionizedKgNPerM3.push(unionized(tank, y));
    days.oxygenKgPerM3.push(y[at.oxygen]!);
    days.alkalinityKgPerM3.push(y[at.alkalinity]!);
    days.pH.push(pHNow(tank.regime, y[at.alkalinity]!));
    days.firstRatio.push(massOf(y, LEVELS, places) / tank.fullKg.first);
    days.secondRatio.push(massOf(y, LEVELS + places, places) / tank.fullKg.second);
  };
  return { days: days as TankDays, note };
};

/** Watches one entry of the state for its least. */
const leastOf = (entry: number) => {
  let least: Extreme = { value: Number.POSITIVE_INFINITY, timeS: 0 };
  const look = (y: Float64Array, timeS: number): void => {
    if (y[entry]! < least.value) least = { value: y[entry]!, timeS };
  };
  return { look, least: () => least };
};

/** Watches a tank while it is marched. */
export const tankRecorder = (tank: TankMarch) => {
  const room = new Float64Array(tank.system.size);
  const { days, note } = dayLists(tank);
  const held = {
    ammonia: holder(AMMONIA_TARGET, (y) => y[at.ammonia]!),
    nitrite: holder(NITRITE_TARGET, (y) => y[at.nitrite]!),
    unionized: holder(UNIONIZED_LIMIT, (y) => unionized(tank, y)),
  };
  const leasts = { oxygen: leastOf(at.oxygen), alkalinity: leastOf(at.alkalinity) };
  /** At the start and behind each change. */
  const jump = (): void => {
    const { y, time } = tank.march;
    if (days.day.length === 0) note(y);
    for (const one of Object.values(held)) one.jump(y, time);
    for (const one of Object.values(leasts)) one.look(y, time);
  };
  const look = (step: DenseStep): void => {
    const { y } = tank.march;
    for (const one of Object.values(held)) one.look(step, y, room);
    for (const one of Object.values(leasts)) one.look(y, step.to);
    for (let day = days.day.length; day * DAY_S <= step.to; day += 1) {
      step.at(day * DAY_S, room);
      note(room);
    }
  };
  const told = () => ({
    days,
    ammonia: held.ammonia.held(),
    nitrite: held.nitrite.held(),
    unionized: held.unionized.held(),
    leastOxygen: leasts.oxygen.least(),
    leastAlkalinity: leasts.alkalinity.least(),
  });
  return { jump, look, told };
};
