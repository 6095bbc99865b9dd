import { type Constants, usualConstants } from '../assessment/constants.ts';
import type { Model } from '../model/model.ts';
import { drawnAt, type UncertainInput } from './inputs.ts';

/** A job into which draws are written, one after the other: `model` and `constants` are the same objects all along. */
export interface Drawing {
  readonly model: Model;
  readonly constants: Constants;
  /** Writes a point of the unit cube, one coordinate for each input. */
  put(point: ArrayLike<number>, from?: number): void;
}

/** Plain data, every object and list of it anew. */
const copied = <Data>(data: Data): Data => {
  if (Array.isArray(data)) return data.map(copied) as Data;
  if (typeof data !== 'object' || data === null) return data;
  return Object.fromEntries(Object.entries(data).map(([key, one]) => [key, copied(one)])) as Data;
};

type Shelf = Record<string, unknown>;

const shelfAt = (root: object, keys: readonly string[]): Shelf | undefined => {
  let shelf: unknown = root;
  for (const key of keys) {
    if (typeof shelf !== 'object' || shelf === null || !(key in shelf)) return undefined;
    shelf = Reflect.get(shelf, key);
  }
  return typeof shelf === 'object' && shelf !== null ? (shelf as Shelf) : undefined;
};

/**
 * A copy of a job that takes draws of its inputs.
 * @throws where an input has no place in the model, which is a bug of whoever noted it
 */
export const drawingOf = (model: Model, inputs: readonly UncertainInput[]): Drawing => {
  const copy = copied(model);
  const constants = { ...usualConstants };
  const places = inputs.map(({ id, kind, place }) => {
    const shelf = kind === 'constant' ? (constants as Shelf) : shelfAt(copy, place.slice(0, -1));
    if (shelf === undefined) throw new Error(`no place for the input “${id}”`);
    return { shelf, key: place.at(-1)! };
  });
  return {
    model: copy,
    constants,
    put(point, from = 0) {
      inputs.forEach((input, index) => {
        const { shelf, key } = places[index]!;
        shelf[key] = drawnAt(input, point[from + index]!);
      });
    },
  };
};
