import { packedStates } from '@fettle/job/packedStates.ts';
import { readingKinds } from '@fettle/store/contract/readings.ts';
import { figureSchema } from '@fettle/workflows/results/figures.ts';
import { z } from '@hono/zod-openapi';
import { readingFields, readingNotesSchema } from './readingFields.ts';

export const newLinkSchema = z
  .strictObject({
    endsAt: z
      .string()
      .max(40)
      .optional()
      .openapi({ description: 'A day or a moment; without end where left out.' }),
  })
  .openapi('NewOwnerLink');

export const madeLinkSchema = z
  .strictObject({
    id: z.string(),
    url: z.string().openapi({ description: 'Address of the sheet with the secret in it; told this once.' }),
    endsAt: z.string().optional(),
  })
  .openapi('MadeOwnerLink');

export const linkSchema = z
  .strictObject({
    id: z.string(),
    job: z.int(),
    madeAt: z.string(),
    madeBy: z.string(),
    endsAt: z.string().optional(),
    withdrawnAt: z.string().optional(),
  })
  .openapi('OwnerLink');

export const linksSchema = z.strictObject({ links: z.array(linkSchema) }).openapi('OwnerLinks');

const kind = z.enum(readingKinds);

export const sheetReadingSchema = z.strictObject({
  kind,
  day: z.string(),
  value: z.string(),
  note: z.string(),
  by: z.enum(['owner', 'workshop']),
});

const quoteLine = z.strictObject({ says: z.string(), price: z.string().optional() });

export const sheetSchema = z
  .strictObject({
    title: z.string().optional(),
    filter: z.string(),
    family: z.string(),
    stage: z.string().optional(),
    received: z.string().optional(),
    promised: z.string().optional(),
    figures: z
      .strictObject({
        state: z
          .enum(packedStates)
          .exclude(['planned'])
          .meta({ description: 'Which packing they are of: as left, where the job says what was left.' }),
        flow: figureSchema,
        turnover: figureSchema,
        carries: figureSchema.meta({ description: 'Dry feed that the filter carries.' }),
        served: figureSchema.meta({ description: 'Water at a normal stock that it is enough for.' }),
        cleaningInterval: figureSchema.extend({ beyond: z.boolean() }),
      })
      .optional()
      .openapi({ description: 'Absent where the filter cannot be computed at the moment.' }),
    cautions: z.array(z.string()),
    quote: z
      .strictObject({
        lines: z.array(quoteLine),
        total: z.string().optional().openapi({ description: 'Absent where a price is still open.' }),
        validUntil: z.string().optional(),
        warranty: z.string().optional(),
      })
      .optional(),
    readings: z.array(sheetReadingSchema),
  })
  .openapi('OwnerSheet');

export type Sheet = z.infer<typeof sheetSchema>;

export const newReadingSchema = z
  .strictObject({
    ...readingFields,
    day: z.string().max(40).optional().openapi({ description: 'Today where left out.' }),
  })
  .openapi('NewOwnerReading');

export const enteredSchema = z
  .strictObject({ reading: sheetReadingSchema, notes: readingNotesSchema })
  .openapi('EnteredReading');
