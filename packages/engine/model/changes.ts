import type { Model } from './model.ts';

/** The same job with one measurement of its filter changed, SI. */
export const withMeasurement = (model: Model, key: string, value: number): Model => ({
  ...model,
  filter: { ...model.filter, measurements: { ...model.filter.measurements, [key]: value } },
});
