import { type ConstantName, constantFigures, constantNames } from '../assessment/constants.ts';
import type { Doubt, Figure } from '../model/figure.ts';
import type { Medium } from '../model/medium.ts';
import type { Given, Model } from '../model/model.ts';
import { normalQuantile } from '../numerics/normal.ts';

/** Where an input of the models comes from. */
export type InputKind = 'job' | 'medium' | 'constant';

/** One number that is not sure. */
export interface UncertainInput {
  /** Path in the job's document, `<medium>.<figure>`, or the constant's name; unique. */
  readonly id: string;
  readonly kind: InputKind;
  readonly value: number;
  readonly doubt: Doubt;
  /** Where it stands: keys from the model down, or the constant's name. */
  readonly place: readonly string[];
  /** A share of 0 to 1, which no draw may leave. */
  readonly isShare: boolean;
}

/** Doubts are told at 95 %: two standard deviations. */
const DEVIATIONS = 2;

/** No draw of a figure that has to be above 0 falls below this share of it. */
const LEAST_SHARE = 0.05;

/**
 * A draw of an input.
 * @param share of its distribution below the draw, above 0 and below 1: normal for a half-width, normal in the logarithm
 *   for a factor; cut off at 0.01 and 0.99 for shares, and at a twentieth of the figure where it is above 0
 */
export const drawnAt = ({ value, doubt, isShare }: UncertainInput, share: number): number => {
  const deviations = normalQuantile(share) / DEVIATIONS;
  const drawn = doubt.kind === 'factor' ? value * doubt.size ** deviations : value + doubt.size * deviations;
  if (isShare) return Math.min(0.99, Math.max(0.01, drawn));
  return value > 0 ? Math.max(LEAST_SHARE * value, drawn) : drawn;
};

/** A plate tells of a pump what its maker hopes: common practice, no source. */
const PLATE_DOUBT: Doubt = { kind: 'factor', size: 1.15 };

/** Keys of a path in the model: `packing.basket-1[0].depthM` is packing, basket-1, 0, depthM. */
const keysOf = (modelPath: string): readonly string[] =>
  // A point before a digit belongs to a name.
  modelPath
    .replaceAll(/\[(\d+)\]/g, '.[$1')
    .split(/\.(?!\d)/)
    .map((key) => key.replace('[', ''));

const SHARE_NAMES = /fraction|voidage|kept/i;

const fromGiven = ({ path, modelPath, value, doubt }: Given): readonly UncertainInput[] =>
  doubt === undefined || modelPath.startsWith('money.')
    ? []
    : [
        {
          id: path,
          kind: 'job',
          value,
          doubt,
          place: keysOf(modelPath),
          isShare: SHARE_NAMES.test(modelPath),
        },
      ];

/** What a plate says of a pump where the job states it without a doubt of its own. */
const fromPlate = ({ filter, givens }: Model): readonly UncertainInput[] => {
  const { curve } = filter.pump;
  if (curve.kind !== 'two-point') return [];
  const told = new Set(givens.flatMap(({ modelPath, doubt }) => (doubt === undefined ? [] : [modelPath])));
  const plate = [
    ['filter.pump.ratedFlow', 'freeFlowM3PerS'],
    ['filter.pump.shutoffHead', 'shutoffHeadM'],
  ] as const;
  return plate
    .filter(([, name]) => !told.has(`filter.pump.curve.${name}`))
    .map(([id, name]) => ({
      id,
      kind: 'job',
      value: curve[name],
      doubt: PLATE_DOUBT,
      place: ['filter', 'pump', 'curve', name],
      isShare: false,
    }));
};

const isFigure = (value: unknown): value is Figure =>
  typeof value === 'object' && value !== null && 'value' in value && 'source' in value;

/** Figures of a medium on which what it does depends; prices and lives are none. */
const mediumFigures = (medium: Medium): readonly (readonly [keys: readonly string[], figure: Figure])[] => {
  const resistance: [string, unknown][] = Object.entries(medium.resistance);
  return [
    ...resistance.flatMap(([name, one]) => (isFigure(one) ? [[['resistance', name], one] as const] : [])),
    [['areaPerM'], medium.areaPerM],
    [['depositFactor'], medium.depositFactor],
    [['bacteriaKept'], medium.bacteriaKept],
  ];
};

const usedMedia = ({ packing }: Model): ReadonlySet<string> =>
  new Set(
    Object.values(packing).flatMap((beds) =>
      beds.flatMap(({ medium, laying }) =>
        laying?.mixed === undefined ? [medium] : [medium, laying.mixed.medium],
      ),
    ),
  );

const fromMedia = (model: Model): readonly UncertainInput[] =>
  [...usedMedia(model)].flatMap((id) => {
    const medium = model.media[id];
    if (medium === undefined) return [];
    return mediumFigures(medium).flatMap(([keys, { value, doubt }]): UncertainInput[] => {
      if (doubt === undefined) return [];
      const isShare = SHARE_NAMES.test(keys.at(-1)!);
      const place = ['media', id, ...keys, 'value'];
      return [{ id: `${id}.${keys.at(-1)}`, kind: 'medium', value, doubt, place, isShare }];
    });
  });

const fromConstant = (name: ConstantName): UncertainInput => {
  const { value, doubt } = constantFigures[name];
  return { id: name, kind: 'constant', value, doubt, place: [name], isShare: SHARE_NAMES.test(name) };
};

/** Every number of a job and of the models that is not sure, in a fixed order. */
export const uncertainInputs = (model: Model): readonly UncertainInput[] => [
  ...model.givens.flatMap(fromGiven),
  ...fromPlate(model),
  ...fromMedia(model),
  ...constantNames.map(fromConstant),
];
