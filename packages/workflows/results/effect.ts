import type { Effect } from '@fettle/engine/assessment/assessment.ts';
import { z } from 'zod';
import { type Figure, figure, figureSchema } from './figures.ts';

const changeOf = <T extends z.ZodType>(state: T) =>
  figureSchema.extend({ before: state, after: state }).meta({ description: '`value` is after less before.' });

const changeSchema = changeOf(figureSchema);

export const effectSchema = z.strictObject({
  flow: changeSchema,
  feed: changeSchema,
  cleaningInterval: changeOf(figureSchema.extend({ beyond: z.boolean() })),
});

const change = <F extends Figure>(before: F, after: F): Figure & { before: F; after: F } => ({
  value: after.value - before.value,
  unit: after.unit,
  before,
  after,
});

export const toEffect = ({ flow, feed, cleaningInterval }: Effect): z.infer<typeof effectSchema> => ({
  flow: change(figure(flow.beforeM3PerS, 'L/h'), figure(flow.afterM3PerS, 'L/h')),
  feed: change(figure(feed.beforeKgPerS, 'g/d'), figure(feed.afterKgPerS, 'g/d')),
  cleaningInterval: change(
    { ...figure(cleaningInterval.beforeS, 'd'), beyond: cleaningInterval.beforeBeyond },
    { ...figure(cleaningInterval.afterS, 'd'), beyond: cleaningInterval.afterBeyond },
  ),
});
