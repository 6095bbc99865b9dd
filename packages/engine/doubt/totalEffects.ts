import { COMPARISON_DAY } from '../assessment/assess.ts';
import type { Model } from '../model/model.ts';
import { latinHypercube } from '../numerics/latinHypercube.ts';
import { drawingOf } from './draws.ts';
import { type InputKind, uncertainInputs } from './inputs.ts';
import { outcomeOf } from './outcome.ts';

/** How much of a figure's variance an input makes alone, and with all that it does together with others. */
export interface TotalEffect {
  readonly id: string;
  readonly kind: InputKind;
  /** Share of the variance that goes once it is known: 0 to 1, with noise a little below 0. */
  readonly alone: number;
  /** Share of the variance that is left while it alone is unknown: 0 to 1. */
  readonly total: number;
}

/** How effects are found. */
export interface EffectOptions {
  /** Pairs of points, 8 to 65,536; each costs as many draws as there are inputs, and two more. 64 where left out. */
  readonly pairs?: number;
  readonly seed?: number;
  readonly day?: number;
  /** Called with draws done and draws in all; where it answers true, the search is broken off. */
  readonly onProgress?: (done: number, all: number) => boolean | undefined;
}

const DAY_S = 86_400;

/** The logarithm of the volume served at the end of the interval, at a point of the unit cube. */
const servedAt = (model: Model, day: number) => {
  const inputs = uncertainInputs(model);
  const drawing = drawingOf(model, inputs);
  const point = new Float64Array(inputs.length);
  return (of: (axis: number) => number): number => {
    for (let axis = 0; axis < point.length; axis += 1) point[axis] = of(axis);
    drawing.put(point);
    const found = outcomeOf(drawing.model, { constants: drawing.constants, dayS: day * DAY_S });
    return Math.log(Math.max(found?.['intervalEnd.servedM3'] ?? 0, 1e-9));
  };
};

/**
 * First-order and total effects of all inputs on the served volume, by pairs of points that differ in one input
 * (Saltelli et al. 2010, Comput. Phys. Commun. 181, 259–270, for the first; Jansen 1999, same journal 117, 35–43, for the
 * total).
 *
 * @returns the greatest total first; undefined where it was broken off
 */
export const totalEffects = (
  model: Model,
  options: EffectOptions = {},
): readonly TotalEffect[] | undefined => {
  const { pairs = 64, seed = 1, day = COMPARISON_DAY, onProgress } = options;
  const inputs = uncertainInputs(model);
  const axes = inputs.length;
  const cube = latinHypercube({ points: pairs, axes: 2 * axes, seed });
  const served = servedAt(model, day);
  const ones: number[] = [];
  const others: number[] = [];
  const swapped = inputs.map(() => new Float64Array(pairs));
  for (let pair = 0; pair < pairs; pair += 1) {
    const at = (axis: number): number => cube[2 * axes * pair + axis]!;
    ones.push(served(at));
    others.push(served((axis) => at(axis + axes)));
    for (let input = 0; input < axes; input += 1)
      swapped[input]![pair] = served((axis) => at(axis === input ? axis + axes : axis));
    if (onProgress?.((pair + 1) * (axes + 2), pairs * (axes + 2))) return undefined;
  }
  const all = [...ones, ...others];
  const mean = all.reduce((sum, one) => sum + one, 0) / all.length;
  const variance = all.reduce((sum, one) => sum + (one - mean) ** 2, 0) / all.length;
  return inputs
    .map(({ id, kind }, input) => {
      let alone = 0;
      let total = 0;
      swapped[input]!.forEach((one, pair) => {
        alone += (others[pair]! - mean) * (one - ones[pair]!);
        total += (ones[pair]! - one) ** 2 / 2;
      });
      const share = (sum: number): number => (variance > 0 ? sum / pairs / variance : 0);
      return { id, kind, alone: share(alone), total: share(total) };
    })
    .sort((one, other) => other.total - one.total);
};
