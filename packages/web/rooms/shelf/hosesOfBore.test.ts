import { describe, expect, it } from 'vitest';
import { hosesOfBore } from './hosesOfBore.ts';

const names = (boreM: number) => hosesOfBore(boreM).map(({ name }) => name);

describe('hoses as sold', () => {
  it('of 16 mm and of 5/8 in fit one another', () => {
    expect(names(0.016)).toEqual(['5/8 in hose', '16/22 mm hose']);
    expect(names(0.015875)).toEqual(['5/8 in hose', '16/22 mm hose']);
  });

  it('of 12 mm and of 1/2 in do not', () => {
    expect(names(0.012)).toEqual(['12/16 mm hose']);
    expect(names(0.0127)).toEqual(['1/2 in hose']);
  });

  it('are none of a bore that nobody sells', () => {
    expect(names(0.014)).toEqual([]);
  });
});
