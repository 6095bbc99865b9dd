import type { Doubt } from '@fettle/engine/model/figure.ts';
import type { Given, Model } from '@fettle/engine/model/model.ts';
import { z } from 'zod';
import { figureSchema } from './figures.ts';

/** `low` and `high` are absent until doubt is computed; `doubt` is what was stated or assumed of the input, at 95 %. */
export const assumedSchema = z.strictObject({
  path: z.string().meta({ description: 'Field of the job document.' }),
  value: figureSchema,
  doubt: z
    .strictObject({ kind: z.enum(['plus-minus', 'factor']), size: z.number() })
    .optional()
    .meta({ description: 'At 95 %: a half-width in the unit of the value, or a factor.' }),
  because: z.string(),
});

/** SI units of givens, the fixed units in which they leave, and how many of these one SI unit is. */
const LEAVES_AS: Readonly<Record<string, readonly [unit: string, perSi: number]>> = {
  m: ['m', 1],
  m3: ['L', 1000],
  'm3/s': ['L/h', 3.6e6],
  'kg/s': ['g/d', 8.64e7],
  'kg/m3': ['mg/L', 1000],
  '1/s': ['1/h', 3600],
  'yes or no': ['1', 1],
};

const leavesAs = (unit: string): readonly [string, number] => {
  const perSecond = /^([A-Z]{3})\/s$/.exec(unit);
  if (perSecond) return [`${perSecond[1]}/h`, 3600];
  const perJoule = /^([A-Z]{3})\/J$/.exec(unit);
  if (perJoule) return [`${perJoule[1]}/kWh`, 3.6e6];
  return LEAVES_AS[unit] ?? [unit, 1];
};

const doubtIn = (doubt: Doubt, perSi: number): z.infer<typeof assumedSchema>['doubt'] =>
  doubt.kind === 'factor' ? { ...doubt } : { kind: 'plus-minus', size: doubt.size * perSi };

const toAssumedOne = (
  { path, value, unit, doubt }: Given,
  because: string,
): z.infer<typeof assumedSchema> => {
  const [fixed, perSi] = leavesAs(unit);
  return {
    path,
    value: { value: value * perSi, unit: fixed },
    ...(doubt ? { doubt: doubtIn(doubt, perSi) } : {}),
    because,
  };
};

/** What the job did not state, and what was taken instead. */
export const toAssumed = ({ givens }: Model): z.infer<typeof assumedSchema>[] =>
  givens.flatMap((given) =>
    given.assumedBecause === undefined ? [] : [toAssumedOne(given, given.assumedBecause)],
  );
