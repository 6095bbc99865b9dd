import { expect, it } from 'vitest';
import { assess } from '../assess.ts';
import { gramsPerDay, oneBasket, thrownAway, withTank } from '../testing/models.ts';
import { findingsOf } from './find.ts';

it('tells to shield carbon bonded into a pad that is thrown away, and nothing of loose carbon, which is rinsed', () => {
  const loose = withTank(oneBasket([['carbon-granular-1mm', 30]]), { feedKgPerS: gramsPerDay(5) });
  const often = (model: typeof loose): string[] =>
    findingsOf(model, assess(model)).flatMap(({ id, cure }) => (id === 'replaced-often' ? [cure] : []));
  expect(often(loose)).toEqual([]);
  expect(often(thrownAway(loose))).toEqual([expect.stringContaining('Put mechanical media ahead of it')]);
});
