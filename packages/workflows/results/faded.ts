import { causes, signs } from '@fettle/engine/elimination/causes.ts';
import { trials } from '@fettle/engine/elimination/trials.ts';
import { z } from 'zod';
import type { FadedCase } from '../fadedFlow.ts';
import { figure, figureSchema } from './figures.ts';

const causeSchema = z.strictObject({
  cause: z.enum(causes),
  chiefShare: z.number().meta({ description: 'Chance that it takes the most flow of all, 0 to 1.' }),
  presentShare: z.number().meta({ description: 'Chance that it is there at all, 0 to 1.' }),
  flowCured: figureSchema
    .optional()
    .meta({ description: 'Flow once it alone is cured, where it is there; absent where it never is.' }),
});

const questionSchema = z.strictObject({
  kind: z.enum(['look', 'trial', 'shutoff']),
  sign: z.enum(signs).optional().meta({ description: 'What is looked for; of a look.' }),
  trial: z.enum(trials).optional().meta({ description: 'What is done before a filling; of a trial.' }),
  settles: z
    .number()
    .meta({ description: 'Share of what is open about the chief cause that the answer settles, 0 to 1.' }),
  minutes: z.number().meta({ description: 'About how long it takes; from memory.' }),
});

/** What `faded --json` prints. */
export const fadedSchema = z.strictObject({
  faded: z.enum(['yes', 'not', 'back']),
  flowNow: figureSchema,
  flowBefore: figureSchema,
  beforeIsComputed: z.boolean().meta({ description: 'True where nobody measured the flow before.' }),
  left: figureSchema.meta({ description: 'Flow now over flow before.' }),
  explained: z.boolean().meta({
    description: 'False where no set of these causes comes within three standard doubts of the readings.',
  }),
  effectiveCases: z
    .number()
    .meta({ description: 'Effective number of sets of causes that go with the readings.' }),
  causes: z.array(causeSchema).meta({ description: 'Most likely chief cause first.' }),
  questions: z.array(questionSchema).meta({ description: 'What settles most first.' }),
});

/** A faded flow as a plain result. */
export const toFaded = ({ readings, found }: FadedCase): z.infer<typeof fadedSchema> => ({
  faded: found.faded,
  flowNow: figure(readings.flowNow.value, 'L/h'),
  flowBefore: figure(readings.flowNow.value / found.leftRatio, 'L/h'),
  beforeIsComputed: readings.flowBefore === undefined,
  left: figure(found.leftRatio, '1'),
  explained: found.explained,
  effectiveCases: found.effective,
  causes: found.causes.map(({ cause, mainShare, presentShare, flowCuredM3PerS: cured }) => ({
    cause,
    chiefShare: mainShare,
    presentShare,
    ...(cured === undefined
      ? {}
      : {
          flowCured: {
            ...figure(cured.value, 'L/h'),
            low: figure(cured.low, 'L/h').value,
            high: figure(cured.high, 'L/h').value,
          },
        }),
  })),
  questions: found.questions.map(({ question, settles, minutes }) => ({ ...question, settles, minutes })),
});
