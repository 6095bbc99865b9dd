import type { Effect } from '@fettle/engine/assessment/assessment.ts';
import { z } from 'zod';
import { type Figure, figure, figureSchema } from './figures.ts';

const changeSchema = figureSchema.extend({ before: figureSchema, after: figureSchema }).meta({
  description: '`value` is after less before.',
});

export const effectSchema = z.strictObject({
  flow: changeSchema,
  feed: changeSchema,
  cleaningInterval: changeSchema,
});

const DAY_S = 86_400;

const change = (before: Figure, after: Figure): z.infer<typeof changeSchema> => ({
  value: after.value - before.value,
  unit: after.unit,
  before,
  after,
});

export const toEffect = ({ flow, feed, cleaningInterval }: Effect): z.infer<typeof effectSchema> => ({
  flow: change(figure(flow.beforeM3PerS, 'L/h'), figure(flow.afterM3PerS, 'L/h')),
  feed: change(figure(feed.beforeKgPerS, 'g/d'), figure(feed.afterKgPerS, 'g/d')),
  cleaningInterval: change(
    { value: cleaningInterval.beforeS / DAY_S, unit: 'd' },
    { value: cleaningInterval.afterS / DAY_S, unit: 'd' },
  ),
});
