import type { Compiled } from '../compiled.ts';
import { cleanState, type DirtState, heldKg } from '../dirt/state.ts';

/** Where all solids since the start went, kg: the balance of a march. */
export interface SolidsAccount {
  /** Suspended in the tank when the march began. */
  startKg: number;
  madeKg: number;
  /** Taken out with the water changes. */
  changedKg: number;
  /** Caught by other filters on the same tank. */
  elsewhereKg: number;
  /** Rotted in the beds. */
  decayedKg: number;
  /** Taken out by rinsing and with beds that were replaced. */
  cleanedKg: number;
}

/** The dirt in filter and tank at one time, of the full march. */
export interface FullState extends DirtState {
  timeS: number;
  /** Suspended solids in the tank by class, kg/m³. */
  readonly tankKgPerM3: Float64Array;
  readonly account: SolidsAccount;
}

const noAccount = (): SolidsAccount => ({
  startKg: 0,
  madeKg: 0,
  changedKg: 0,
  elsewhereKg: 0,
  decayedKg: 0,
  cleanedKg: 0,
});

export const cleanFullState = (compiled: Compiled): FullState => ({
  ...cleanState(compiled),
  tankKgPerM3: new Float64Array(compiled.grid.classShare.length),
  account: noAccount(),
});

/** Makes one state the same as another. */
export const copyState = (from: FullState, into: FullState): void => {
  into.timeS = from.timeS;
  into.deposit.set(from.deposit);
  into.matKgPerM2.set(from.matKgPerM2);
  into.labileKg.set(from.labileKg);
  into.tankKgPerM3.set(from.tankKgPerM3);
  Object.assign(into.account, from.account);
};

const sum = (values: Iterable<number>): number => {
  let all = 0;
  for (const value of values) all += value;
  return all;
};

/** Dry solids suspended in the tank, kg. */
export const suspendedKg = ({ model }: Compiled, { tankKgPerM3 }: FullState): number =>
  sum(tankKgPerM3) * model.tank.volumeM3;

/** Dry solids held by all beds, kg. */
export const allHeldKg = (compiled: Compiled, state: FullState): number => sum(heldKg(compiled, state));

/**
 * What the balance of a march leaves over: what was there and made, less what is held, suspended, and was taken out,
 * as a share of what was there and made; 0 but for rounding.
 */
export const balanceError = (compiled: Compiled, state: FullState): number => {
  const { account } = state;
  const given = account.startKg + account.madeKg;
  const found =
    allHeldKg(compiled, state) +
    suspendedKg(compiled, state) +
    account.changedKg +
    account.elsewhereKg +
    account.decayedKg +
    account.cleanedKg;
  return given > 0 ? (given - found) / given : found;
};
