import type { Assessment } from '@fettle/engine/assessment/assessment.ts';
import { z } from 'zod';
import { figure, figureSchema, money } from './figures.ts';

/** What it costs to run for a year, and of what that is made up. */
export const costSchema = z.strictObject({
  perYear: figureSchema,
  energy: figureSchema,
  energyPerYear: figureSchema,
  mediaPerYear: figureSchema,
  pricePerYear: figureSchema,
  media: z
    .array(
      z.strictObject({
        bed: z.string(),
        medium: z.string(),
        perYear: figureSchema,
        every: figureSchema.meta({ description: 'Time from one replacement to the next.' }),
        because: z
          .enum(['clogs', 'full', 'calendar'])
          .meta({ description: 'What ends the bed first: clogging, its capacity, or its usual life.' }),
      }),
    )
    .meta({ description: 'Beds that are replaced.' }),
});

/** The running cost as it is printed. */
export const toCost = ({ cost }: Assessment): z.infer<typeof costSchema> => {
  const perYear = `${cost.currency}/a`;
  return {
    perYear: money(cost.perYear, perYear),
    energy: figure(cost.energyJPerYear, 'kWh/a'),
    energyPerYear: money(cost.energyPerYear, perYear),
    mediaPerYear: money(cost.mediaPerYear, perYear),
    pricePerYear: money(cost.pricePerYear, perYear),
    media: cost.media.map(({ bed, medium, everyS, because, ...line }) => ({
      bed,
      medium,
      perYear: money(line.perYear, perYear),
      every: figure(everyS, 'd'),
      because,
    })),
  };
};
