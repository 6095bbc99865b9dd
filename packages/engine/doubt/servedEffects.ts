import { COMPARISON_DAY } from '../assessment/assess.ts';
import type { Model } from '../model/model.ts';
import { type EffectSearch, totalEffects } from '../numerics/totalEffects.ts';
import { drawingOf } from './draws.ts';
import { type InputKind, uncertainInputs } from './inputs.ts';
import { outcomeOf } from './outcome.ts';

/** How much of the range of the served volume an input makes, with all that it does together with others. */
export interface ServedEffect {
  readonly id: string;
  readonly kind: InputKind;
  /** Share of the variance that is left while it alone is unknown, 0 or more. */
  readonly total: number;
}

const DAY_S = 86_400;
const USUAL_POINTS = 64;

/**
 * Total effects of everything that is not sure on the volume served at the end of the interval, as its logarithm.
 *
 * @param search.points as in the search for effects, 64 where left out: then good to a fifth of the larger ones
 * @param search.day the day of the comparison, 1 to 365
 * @returns the greatest first; undefined where it was broken off
 */
export const servedEffects = (
  model: Model,
  search: Partial<Pick<EffectSearch, 'points' | 'seed' | 'onProgress'>> & { readonly day?: number } = {},
): readonly ServedEffect[] | undefined => {
  const { points = USUAL_POINTS, seed = 1, day = COMPARISON_DAY, onProgress } = search;
  const inputs = uncertainInputs(model);
  const drawing = drawingOf(model, inputs);
  const served = (point: Float64Array): number => {
    drawing.put(point);
    const found = outcomeOf(drawing.model, { constants: drawing.constants, dayS: day * DAY_S });
    return Math.log(Math.max(found?.['intervalEnd.servedM3'] ?? 0, 1e-9));
  };
  const found = totalEffects(served, {
    axes: inputs.length,
    points,
    seed,
    ...(onProgress === undefined ? {} : { onProgress }),
  });
  return (
    found &&
    inputs
      .map(({ id, kind }, input) => ({ id, kind, total: found[input]! }))
      .sort((one, other) => other.total - one.total)
  );
};
