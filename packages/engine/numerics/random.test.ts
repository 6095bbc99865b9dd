import { describe, expect, it } from 'vitest';
import { latinHypercube } from './latinHypercube.ts';
import { nextWord, randomStream } from './random.ts';

describe('random numbers', () => {
  it('begin as the published algorithm does by hand', () => {
    // From state 1, 2, 3, 4: rotl(2·5, 7)·9 = 11520; the state is then 7, 0, 1026, 12288, and rotl(0·5, 7)·9 = 0.
    const state = Uint32Array.of(1, 2, 3, 4);
    expect(nextWord(state)).toBe(11_520);
    expect([...state]).toEqual([7, 0, 1026, 12_288]);
    expect(nextWord(state)).toBe(0);
  });

  it('are the same for a seed, others for another', () => {
    const draw = (seed: number): number[] => Array.from({ length: 8 }, randomStream(seed));
    expect(draw(7)).toEqual(draw(7));
    expect(draw(7)).not.toEqual(draw(8));
  });

  it('lie evenly: by χ² over 64 strips, below the value that one in a thousand passes', () => {
    const strips = new Array<number>(64).fill(0);
    const random = randomStream(1);
    for (let draw = 0; draw < 64_000; draw += 1) strips[Math.floor(random() * 64)]! += 1;
    const chiSquare = strips.reduce((sum, found) => sum + (found - 1000) ** 2 / 1000, 0);
    // χ² with 63 degrees of freedom at 0.999 is 103.4 (Wilson & Hilferty 1931, computed).
    expect(chiSquare).toBeLessThan(103.4);
  });
});

describe('a Latin hypercube', () => {
  it('has one point in every strip of every axis', () => {
    const cube = latinHypercube({ points: 50, axes: 3, seed: 4 });
    for (let axis = 0; axis < 3; axis += 1) {
      const strips = Array.from({ length: 50 }, (_, point) => Math.floor(cube[point * 3 + axis]! * 50));
      expect(strips.toSorted((a, b) => a - b)).toEqual(Array.from({ length: 50 }, (_, strip) => strip));
    }
  });

  it('knows the mean of a smooth function better than as many points of chance', () => {
    const points = 200;
    const ofCube = latinHypercube({ points, axes: 1, seed: 9 });
    const random = randomStream(9);
    const meanSquare = (value: (point: number) => number): number =>
      Array.from({ length: points }, (_, point) => value(point) ** 2).reduce((a, b) => a + b) / points;
    const byCube = Math.abs(meanSquare((point) => ofCube[point]!) - 1 / 3);
    expect(byCube).toBeLessThan(Math.abs(meanSquare(() => random()) - 1 / 3));
    expect(byCube).toBeLessThan(1e-3);
  });
});
