import { flowDoubtRatio } from '@fettle/engine/assessment/findings/measured.ts';
import type { Doubt } from '@fettle/engine/model/figure.ts';
import type { Model } from '@fettle/engine/model/model.ts';
import type { Printable } from '@fettle/engine/quantities/printQuantity.ts';
import type { Fact } from '@fettle/engine/wording/said.ts';

/** Facts of the quantities that a write-up speaks of, from SI values. */

export const flow = (value: number, doubtM3PerS?: number): Printable => ({
  value,
  dimension: 'flow',
  ...withDoubt(doubtM3PerS),
});

/** A computed flow of a filter with the doubt that it is taken to have until ranges are computed. */
export const computedFlow = (value: number, of: Pick<Model, 'filter'>): Printable =>
  flow(value, flowDoubtRatio(of) * value);

/** A computed flow beside another of the same filter: what both have wrong alike does not part them. */
export const comparedFlow = (value: number): Printable => ({ value, dimension: 'flow' });

export const length = (value: number, digits = 3): Printable => ({ value, dimension: 'length', digits });

export const volume = (value: number, digits = 2): Printable => ({ value, dimension: 'volume', digits });

export const mass = (value: number): Printable => ({ value, dimension: 'mass', digits: 3 });

export const power = (value: number, doubtW?: number): Printable => ({
  value,
  dimension: 'power',
  ...withDoubt(doubtW),
});

export const velocity = (value: number): Printable => ({ value, dimension: 'velocity', digits: 2 });

export const pressure = (value: number): Printable => ({ value, dimension: 'pressure', digits: 2 });

export const temperature = (value: number): Printable => ({ value, dimension: 'temperature' });

/** Dry feed a day. */
export const feed = (value: number): Printable => ({ value, dimension: 'mass-rate', digits: 2 });

export const money = (value: number, currency: string): Printable => ({
  value,
  dimension: 'money',
  currency,
});

export const energy = (value: number): Printable => ({ value, dimension: 'energy', digits: 2 });

export const share = (value: number): Fact => ({ share: value });

export const duration = (durationS: number, beyond = false): Fact => ({ durationS, beyond });

const withDoubt = (size: number | undefined): { readonly doubt?: Doubt } =>
  size === undefined || size <= 0 ? {} : { doubt: { kind: 'plus-minus', size } };
