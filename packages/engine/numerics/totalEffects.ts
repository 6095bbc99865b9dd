import { latinHypercube } from './latinHypercube.ts';

/** How total effects are found. */
export interface EffectSearch {
  readonly axes: number;
  /** Points, 8 to 65,536; each costs one look more than there are axes. */
  readonly points: number;
  readonly seed: number;
  /** Called with looks done and looks in all; where it answers true, the search is broken off. */
  readonly onProgress?: (done: number, all: number) => boolean | undefined;
}

/**
 * Share of a function's variance that is left while one input alone is unknown, for each input: all that the input does
 * alone and together with others.
 * Source: Jansen 1999, Comput. Phys. Commun. 117, 35–43, on points of a Latin hypercube.
 *
 * @param of the function over the unit cube; the point that it is given is used again
 * @returns a share for each axis, 0 or more; undefined where the search was broken off
 */
export const totalEffects = (
  of: (point: Float64Array) => number,
  { axes, points, seed, onProgress }: EffectSearch,
): Float64Array | undefined => {
  const cube = latinHypercube({ points, axes: 2 * axes, seed });
  const effects = new Float64Array(axes);
  const point = new Float64Array(axes);
  const values: number[] = [];
  for (let place = 0; place < points; place += 1) {
    const start = 2 * axes * place;
    point.set(cube.subarray(start, start + axes));
    const value = of(point);
    values.push(value);
    for (let axis = 0; axis < axes; axis += 1) {
      point[axis] = cube[start + axes + axis]!;
      effects[axis] = effects[axis]! + (of(point) - value) ** 2 / (2 * points);
      point[axis] = cube[start + axis]!;
    }
    if (onProgress?.((place + 1) * (axes + 1), points * (axes + 1))) return undefined;
  }
  const mean = values.reduce((sum, one) => sum + one, 0) / points;
  const variance = values.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (points - 1);
  return effects.map((effect) => (variance > 0 ? effect / variance : 0));
};
