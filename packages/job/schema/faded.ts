import { signs } from '@fettle/engine/elimination/causes.ts';
import { trials } from '@fettle/engine/elimination/trials.ts';
import * as z from 'zod';
import { fieldFacts, list, oneOf, quantity, trueOrFalse } from './fields.ts';

const flow = (says: string, example: string) =>
  quantity({ dimension: 'flow', says, example, above: '0 L/h', most: '200 m3/h' });

const power = (says: string) =>
  quantity({ dimension: 'power', says, example: '9.5 ± 0.5 W', above: '0 W', most: '5 kW' });

const head = (says: string) =>
  quantity({ dimension: 'length', says, example: '1.1 m', above: '0 m', most: '30 m' });

/** Each sign as one says it of a filter. */
const signWords: Readonly<Record<(typeof signs)[number], string>> = {
  rattle: 'it rattles',
  growl: 'the pump growls, as one that gets too little water',
  gurgle: 'it gurgles',
  bubbles: 'the outlet spits bubbles',
  'few-bubbles': 'fewer bubbles rise in the lift tube than used to',
  'covered-intake': 'the intake is covered: plants, snails, slime',
  'brown-hoses': 'the hoses are brown inside',
  'bent-hose': 'a hose is bent, a tap half shut, or a hole of the spray bar blocked',
};

const signFields = Object.fromEntries(
  signs.map((sign) => [sign, trueOrFalse({ says: signWords[sign] }).optional()]),
) as Record<(typeof signs)[number], z.ZodOptional<z.ZodBoolean>>;

/** Something that was done about a faded flow, and what came of it. */
export const doneSchema = z.strictObject({
  did: oneOf(trials, { says: 'what was done', example: 'clear-intake' }),
  flow: flow('flow after it', '480 L/h ± 4 %'),
});

/** What is known of a flow that has faded. */
export const fadedSchema = z.strictObject({
  flowNow: flow('flow now; the timed filling as found where absent', '380 L/h ± 4 %').optional(),
  flowBefore: flow(
    'flow when it was new or last in order; that which is computed for clean media where absent',
    '620 L/h ± 4 %',
  ).optional(),
  powerNow: power('power at the plug now; the one measured as found where absent').optional(),
  powerBefore: power('power at the plug when it was in order').optional(),
  shutoffNow: head('height at which the flow stops now; the one measured as found where absent').optional(),
  shutoffBefore: head('height at which it stopped when it was in order').optional(),
  sinceCleaned: quantity({
    dimension: 'time',
    says: 'time since the media were cleaned',
    example: '6 wk',
    least: '0 d',
    most: '10 a',
  }).optional(),
  signs: z
    .strictObject(signFields)
    .register(fieldFacts, { says: 'what was looked and listened for; nothing where nobody did' })
    .optional(),
  done: list(doneSchema, { says: 'what was done about it so far, in its order', most: 30 }).optional(),
});
