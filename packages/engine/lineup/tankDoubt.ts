import { compile } from '../assessment/compile.ts';
import type { Constants } from '../assessment/constants.ts';
import { type TankFigures, tankFigures } from '../assessment/tank/tankFigures.ts';
import { type UncertainInput, uncertainInputs } from '../doubt/inputs.ts';
import { DRAW_REFINEMENT } from '../doubt/outcome.ts';
import { type Range, rangeOf } from '../doubt/ranges.ts';
import { drawnOutcomes } from '../doubt/sample.ts';
import type { Model } from '../model/model.ts';
import { sideBySide } from './stops.ts';
import { type TankBalance, type TankBalanceOptions, tankBalanceOf } from './tankBalance.ts';

/** Figures of a tank's balance that are told with a range. */
export const tankOutcomeNames = [
  'clean.ammonia',
  'clean.nitrite',
  'clean.nitrate',
  'intervalEnd.ammonia',
  'intervalEnd.nitrite',
  'intervalEnd.nitrate',
  'wallShare',
  'changePerS',
  'sideBySideS',
] as const;
export type TankOutcomeName = (typeof tankOutcomeNames)[number];
export type TankRanges = Readonly<Record<TankOutcomeName, Range>>;

const SEED = 1;

const inputsOf = (model: Model): readonly UncertainInput[] => [
  ...uncertainInputs(model),
  ...Object.entries(tankFigures).map(
    ([name, { value, doubt }]): UncertainInput => ({
      id: name,
      kind: 'constant',
      value,
      doubt,
      place: [name],
      isShare: false,
    }),
  ),
];

const outcomesOf = (balance: TankBalance, alone: number): Readonly<Record<TankOutcomeName, number>> => {
  const { clean, intervalEnd, nitrateHeld } = balance;
  const walls = intervalEnd.work.find(({ kind }) => kind === 'walls')?.ammonia ?? 0;
  return {
    'clean.ammonia': clean.ammonia,
    'clean.nitrite': clean.nitrite,
    'clean.nitrate': clean.nitrate,
    'intervalEnd.ammonia': intervalEnd.ammonia,
    'intervalEnd.nitrite': intervalEnd.nitrite,
    'intervalEnd.nitrate': intervalEnd.nitrate,
    wallShare: intervalEnd.loadKgNPerS > 0 ? walls / intervalEnd.loadKgNPerS : 0,
    changePerS: nitrateHeld.changePerS,
    sideBySideS: alone,
  };
};

/**
 * Ranges of a tank's balance: everything that is not sure about the job, the models and the tank drawn at once, in a Latin
 * hypercube. An endless end of a range is a level that rises for ever.
 * @param of.draws 8 or more
 */
export const tankRanges = (
  model: Model,
  { draws, ...options }: TankBalanceOptions & { readonly draws: number },
): TankRanges => {
  const inputs = inputsOf(model);
  const { outcomes } = drawnOutcomes({ model, inputs }, { draws, seed: SEED }, (drawing) => {
    // The figures of the tank lie on the shelf of the constants while they are drawn.
    const drawn = drawing.constants as Constants & TankFigures;
    const result = compile(drawing.model, { constants: drawn, refinement: DRAW_REFINEMENT });
    if (!result.ok) return undefined;
    const { temperatureK } = drawing.model.tank;
    return outcomesOf(
      tankBalanceOf(result.compiled, { ...options, figures: drawn }),
      sideBySide({ recoveryS: drawn.recoveryS, temperatureK }),
    );
  });
  const weights = outcomes.map(() => 1);
  return Object.fromEntries(
    tankOutcomeNames.map((name) => [name, rangeOf({ values: outcomes.map((one) => one[name]), weights })]),
  ) as Record<TankOutcomeName, Range>;
};
