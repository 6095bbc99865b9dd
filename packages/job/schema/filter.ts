import { fittings } from '@fettle/engine/catalogue/fittings.ts';
import { families } from '@fettle/engine/families/families.ts';
import { slotPlaces } from '@fettle/engine/model/model.ts';
import * as z from 'zod';
import {
  byShortName,
  list,
  oneOf,
  quantity,
  shortName,
  text,
  trueOrFalse,
  type WrittenQuantity,
} from './fields.ts';
import { placingSchema } from './placing.ts';

const flow = (says: string, example: string) =>
  quantity({ dimension: 'flow', says, example, least: '0 L/h', most: '200 m3/h' });
const head = (says: string, example: string) =>
  quantity({ dimension: 'length', says, example, least: '0 m', most: '30 m' });
const bore = (says: string, example: string) =>
  quantity({ dimension: 'length', says, example, least: '2 mm', most: '150 mm' });

/** A slot past a chamber that the family does not know of. */
export const slotSchema = z.strictObject({
  past: shortName({ says: 'chamber whose media it goes past', example: 'basket-1' }),
  at: oneOf(slotPlaces, { says: 'where it is' }),
  thickness: quantity({
    dimension: 'length',
    says: 'clear thickness of the slot',
    example: '0.5 mm',
    least: '0 mm',
    most: '20 mm',
  }),
  width: quantity({
    dimension: 'length',
    says: 'extent across the flow; all round the chamber where left out',
    example: '300 mm',
    above: '0 mm',
    most: '5 m',
  }).optional(),
  length: quantity({
    dimension: 'length',
    says: 'extent along the flow: how wide the lip or seat is',
    example: '3 mm',
    above: '0 mm',
    most: '50 cm',
  }).optional(),
});

/** One measured point of a pump's curve. */
export const curvePointSchema = z.strictObject({
  flow: flow('flow at this head', '450 L/h'),
  head: head('head at this flow', '0.9 m'),
});

const pumpFields = {
  ratedFlow: quantity({
    dimension: 'flow',
    says: "the maker's rated flow, which is the flow of the bare pump at no head",
    example: '900 L/h',
    above: '0 L/h',
    most: '200 m3/h',
  }).optional(),
  shutoffHead: quantity({
    dimension: 'length',
    says: 'head at which the flow stops',
    example: '1.3 m',
    above: '0 m',
    most: '30 m',
  }).optional(),
  curve: list(curvePointSchema, {
    says: 'measured points of the curve, in the order of rising flow',
    most: 40,
  }).optional(),
  power: quantity({
    dimension: 'power',
    says: 'electrical power at the plug',
    example: '14 W',
    above: '0 W',
    most: '5 kW',
  }).optional(),
  speed: quantity({
    dimension: 'fraction',
    says: "speed against the curve's own speed",
    example: '100 %',
    least: '10 %',
    most: '100 %',
  }).optional(),
  curveForm: oneOf(['through-points', 'power'], {
    says: 'how the curve is drawn: through all its points, or as a power of the flow through three, the first without flow',
    example: 'through-points',
  }).optional(),
};

/** The pump. */
export const pumpSchema = z.strictObject({
  ...pumpFields,
  airFlow: quantity({
    dimension: 'flow',
    says: 'air blown into the lift tubes, of all together, where air drives the filter: fill a jar under water and time it',
    example: '90 L/h',
    above: '0 L/h',
    most: '20 m3/h',
  }).optional(),
});

const crackingHead = quantity({
  dimension: 'length',
  says: 'head that its check valve asks for before it opens; 0.35 m is half a pound per square inch',
  example: '0.2 m',
  least: '0 m',
  most: '5 m',
}).optional();

/** A second pump on the same water. */
export const secondPumpSchema = z.strictObject({
  ...pumpFields,
  place: oneOf(['behind', 'beside'], {
    says: 'where it stands: behind the first in the same hose, or beside it between the same two places',
  }),
  running: trueOrFalse({
    says: 'whether it runs; one that stands still takes head, or lets water back',
  }).optional(),
  checkValve: crackingHead,
});

const hoseFields = {
  length: quantity({
    dimension: 'length',
    says: 'length of the hose',
    example: '1.5 m',
    least: '0 m',
    most: '50 m',
  }).optional(),
  bore: bore('inner diameter of the hose', '16 mm').optional(),
  barbBore: bore('inner diameter of the barbs at its ends', '12.8 mm').optional(),
  roughness: quantity({
    dimension: 'length',
    says: 'roughness of the wall',
    example: '0.0015 mm',
    least: '0 mm',
    most: '2 mm',
  }).optional(),
  fittings: list(oneOf(Object.keys(fittings), { says: 'a fitting', example: 'elbow-90' }), {
    says: 'the fittings on this run, one entry each',
    most: 40,
  }).optional(),
  extraLoss: quantity({
    dimension: 'count',
    says: 'loss of coils and kinks: how many times the head that the speed of the water is worth; one tight elbow is about 1',
    example: '0',
    least: '0',
    most: '200',
  }).optional(),
  film: quantity({
    dimension: 'length',
    says: 'thickness of the film on its wall, which takes bore and makes it rough',
    example: '0.3 mm',
    least: '0 mm',
    most: '20 mm',
  }).optional(),
  turns: quantity({
    dimension: 'count',
    says: 'how many turns of it lie in a coil',
    example: '1.5',
    least: '0',
    most: '100',
  }).optional(),
  coil: quantity({
    dimension: 'length',
    says: 'diameter of the coil at the middle of the hose',
    example: '30 cm',
    least: '3 cm',
    most: '5 m',
  }).optional(),
  kink: quantity({
    dimension: 'fraction',
    says: 'share of its bore that its worst kink leaves open',
    example: '60 %',
    least: '5 %',
    most: '100 %',
  }).optional(),
  tap: quantity({
    dimension: 'fraction',
    says: 'how far its tap is open, by the turn of the handle',
    example: '100 %',
    least: '10 %',
    most: '100 %',
  }).optional(),
  checkValve: crackingHead,
  slope: quantity({
    dimension: 'fraction',
    says: 'fall over length of its flattest stretch that leads down, where it does not hang straight down',
    example: '20 %',
    least: '0 %',
    most: '100 %',
  }).optional(),
};

/** The hose from the tank to the filter. */
export const intakeSchema = z.strictObject(hoseFields);

const lift = quantity({
  dimension: 'length',
  says: "height of a free outlet above the tank's surface; 0 where it is under water",
  example: '0 cm',
  least: '0 cm',
  most: '5 m',
}).optional();

/** One of several outlets. */
export const branchSchema = z.strictObject({ ...hoseFields, lift });

/** The hose from the filter back to the tank. */
export const outletSchema = z.strictObject({
  ...hoseFields,
  lift,
  branches: list(branchSchema, {
    says: 'outlets that this hose parts into at its end, which is then no outlet of its own',
    most: 8,
  }).optional(),
});

/** A chamber's own gap. */
export const gapField = quantity({
  dimension: 'length',
  says: "clear thickness of the gap past this chamber, where it differs from the family's own",
  example: '0.4 mm',
  least: '0 mm',
  most: '50 mm',
});

/** The filter on the bench. */
export const filterSchema = z.strictObject({
  name: text({ says: 'what the technician calls it', example: 'Canister from the hall tank' }).optional(),
  family: oneOf(
    families.map(({ id }) => id),
    { says: 'kind of construction' },
  ),
  measurements: z
    .record(
      z.string(),
      z.custom<WrittenQuantity | boolean>((value) => value !== undefined),
    )
    .optional(),
  pump: pumpSchema,
  secondPump: secondPumpSchema.optional(),
  hoses: z.strictObject({ intake: intakeSchema.optional(), outlet: outletSchema.optional() }).optional(),
  placing: placingSchema.optional(),
  gaps: byShortName(gapField, { says: 'gaps past single chambers, by chamber' }).optional(),
  slots: list(slotSchema, {
    says: 'slots past chambers beside the gap all round them: at the lips of trays, at end caps, at partitions',
    most: 20,
  }).optional(),
  price: quantity({
    dimension: 'money',
    says: 'price of the filter',
    example: '85 GBP',
    least: '0 GBP',
    most: '1000000 GBP',
  }).optional(),
  life: quantity({
    dimension: 'time',
    says: 'time over which the price is spread',
    example: '8 a',
    least: '0.1 a',
    most: '100 a',
  }).optional(),
  claims: list(
    text({ says: "one of the maker's claims, verbatim", example: 'Pump output 900 L/h', most: 500 }),
    {
      says: "the maker's claims, verbatim",
    },
  ).optional(),
});
