import { z } from 'zod';

/** A figure as it leaves: unrounded, in a fixed unit. `low` and `high` stand there once doubt is computed. */
export const figureSchema = z.strictObject({
  value: z.number().meta({ description: 'Unrounded value.' }),
  unit: z
    .string()
    .meta({ description: 'Fixed unit of this key, whatever units were asked for on the screen.' }),
  low: z.number().optional().meta({ description: 'P10; absent until doubt is computed.' }),
  high: z.number().optional().meta({ description: 'P90; absent until doubt is computed.' }),
});

export type Figure = z.infer<typeof figureSchema>;

const DAY_S = 86_400;

/** What one SI unit is in each fixed unit. */
const PER_SI = {
  'L/h': 3.6e6,
  m: 1,
  mm: 1000,
  Pa: 1,
  d: 1 / DAY_S,
  h: 1 / 3600,
  s: 1,
  'g/d': 1000 * DAY_S,
  L: 1000,
  '1': 1,
  '1/h': 3600,
  '1/s': 1,
  'm/s': 1,
  'mg/L': 1000,
  m2: 1,
  g: 1000,
  W: 1,
  'kWh/a': 1 / 3.6e6,
} as const;

export type FixedUnit = keyof typeof PER_SI;

/** An SI value as a number of a fixed unit. */
export const inUnit = (si: number, unit: FixedUnit): number => si * PER_SI[unit];

/** An SI value in a fixed unit. */
export const figure = (si: number, unit: FixedUnit): Figure => ({ value: inUnit(si, unit), unit });

/** The SI value of a figure of a fixed unit. */
export const siOf = ({ value, unit }: Figure): number => {
  const found = Object.entries(PER_SI).find(([each]) => each === unit);
  if (found === undefined) throw new TypeError(`${unit} is no fixed unit`);
  return value / found[1];
};

/** A sum in the job's currency, or a yearly one with `/a`. */
export const money = (value: number, currency: string): Figure => ({ value, unit: currency });
