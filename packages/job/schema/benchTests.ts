import * as z from 'zod';
import { fieldFacts, list, oneOf, quantity, shortName, text } from './fields.ts';

/** A kind of test with what it finds out, in one word. */
function testKind<const Kind extends string>(kind: Kind, finds: string) {
  const schema = z.literal(kind);
  fieldFacts.add(schema, { says: finds });
  return schema;
}

const common = {
  id: shortName({ says: 'short name of the test', example: 'fill-as-found' }).optional(),
  state: oneOf(['as-found', 'clean-empty', 'cleaned-original', 'as-left'], {
    says: 'state of the filter during the test',
  }).optional(),
  notes: text({ says: 'anything else', most: 2000 }).optional(),
};

/** Time taken to fill a measured volume at the filter's outlet. */
export const timedVolumeSchema = z.strictObject({
  kind: testKind('timed-volume', 'flow'),
  ...common,
  volume: quantity({
    dimension: 'volume',
    says: 'volume filled in each run',
    example: '5 L ± 1 %',
    above: '0 L',
    most: '1 m3',
  }),
  times: list(
    quantity({
      dimension: 'time',
      says: 'time of one run',
      example: '31.2 s',
      least: '0.5 s',
      most: '1 d',
      clock: true,
    }),
    { says: 'time of each run', most: 50 },
  ).min(1),
});

/** Power at the plug. */
export const powerTestSchema = z.strictObject({
  kind: testKind('power', 'watts'),
  ...common,
  power: quantity({
    dimension: 'power',
    says: 'power at the plug',
    example: '13.2 ± 0.5 W',
    above: '0 W',
    most: '5 kW',
  }),
});

/** Height at which the flow stops. */
export const shutoffHeadSchema = z.strictObject({
  kind: testKind('shutoff-head', 'head'),
  ...common,
  head: quantity({
    dimension: 'length',
    says: 'height above the surface at which the flow stops',
    example: '1.25 m',
    above: '0 m',
    most: '30 m',
  }),
});

/** Water that a chamber holds. */
export const displacementSchema = z.strictObject({
  kind: testKind('displacement', 'volume'),
  ...common,
  chamber: shortName({ says: 'chamber', example: 'basket-1' }),
  volume: quantity({
    dimension: 'volume',
    says: 'water that the chamber took',
    example: '1.4 L',
    above: '0 L',
    most: '1 m3',
  }),
});

/** Dye or salt pulse: when it comes out again. */
export const dyeSchema = z.strictObject({
  kind: testKind('dye', 'routes'),
  ...common,
  flow: quantity({
    dimension: 'flow',
    says: 'flow during the test',
    example: '500 L/h',
    above: '0 L/h',
    most: '200 m3/h',
  }).optional(),
  deadTime: quantity({
    dimension: 'time',
    says: 'time that the pulse takes in hoses that only the test needs; taken off',
    example: '0 s',
    least: '0 s',
    most: '1 h',
  }).optional(),
  background: quantity({
    dimension: 'count',
    says: 'strength before the pulse, in the unit of the readings; taken off',
    example: '0',
    least: '0',
    most: '1000000',
  }).optional(),
  readingDoubt: quantity({
    dimension: 'fraction',
    says: 'doubt of one reading as a share of the strongest',
    example: '5 %',
    least: '0.1 %',
    most: '50 %',
  }).optional(),
  loop: oneOf(['single-pass', 'returning'], {
    says: 'whether the water runs to waste or back into the vessel that it is drawn from',
  }).optional(),
  water: quantity({
    dimension: 'volume',
    says: 'water in the vessel that it returns to',
    example: '60 L',
    above: '0 L',
    most: '10 m3',
  }).optional(),
  readings: list(
    z.strictObject({
      at: quantity({
        dimension: 'time',
        says: 'time after the pulse',
        example: '12 s',
        least: '0 s',
        most: '1 d',
      }),
      strength: quantity({
        dimension: 'count',
        says: 'strength of the colour or salt, in any one unit',
        example: '3',
        least: '0',
        most: '1000000',
      }),
    }),
    { says: 'strength at the outlet in time', most: 1000 },
  ),
});

/** Ammonia put into a closed loop, and how it goes. */
export const ammoniaChallengeSchema = z.strictObject({
  kind: testKind('ammonia-challenge', 'bacteria'),
  ...common,
  water: quantity({
    dimension: 'volume',
    says: 'water in the loop',
    example: '60 L',
    above: '0 L',
    most: '10 m3',
  }),
  temperature: quantity({
    dimension: 'temperature',
    says: 'water temperature',
    example: '25 °C',
    least: '0 °C',
    most: '45 °C',
  }).optional(),
  readings: list(
    z.strictObject({
      at: quantity({
        dimension: 'time',
        says: 'time after the dose',
        example: '4 h',
        least: '0 h',
        most: '60 d',
      }),
      ammonia: quantity({
        dimension: 'concentration',
        basis: 'N',
        says: 'total ammonia; say as what it is counted',
        example: '1.2 mg/L N',
        least: '0 mg/L',
        most: '100 mg/L',
      }),
    }),
    { says: 'ammonia in time', most: 1000 },
  ),
});

/** A bench test. */
export const benchTestSchema = z.discriminatedUnion('kind', [
  timedVolumeSchema,
  powerTestSchema,
  shutoffHeadSchema,
  displacementSchema,
  dyeSchema,
  ammoniaChallengeSchema,
]);

/** The kinds of bench test. */
export const benchTestKinds: readonly string[] = benchTestSchema.options.map(({ shape }) => shape.kind.value);

export const benchTestsSchema = list(benchTestSchema, { says: 'bench tests' });
