import { describe, expect, it } from 'vitest';
import type { Given } from '../model/model.ts';
import { engineEnglish } from '../wording/english/english.ts';
import { word } from '../wording/word.ts';
import { fedSaid } from './fedSaid.ts';
import { gramsPerDay, stackCanister, withTank } from './testing/models.ts';

const feedKgPerS = gramsPerDay(0.5604);
const given = (more: Partial<Given>): Given => ({
  path: 'tank.feed',
  modelPath: 'tank.feedKgPerS',
  value: feedKgPerS,
  unit: 'kg/s',
  ...more,
});
const saidOf = (givens: readonly Given[]): string =>
  word(fedSaid({ ...withTank(stackCanister(), { feedKgPerS }), givens }), {
    language: engineEnglish,
    units: 'metric',
  });

describe('the feed that a tank gets', () => {
  it('is said to two figures where it was stated', () => {
    expect(saidOf([])).toBe('0.56 g/d');
    expect(saidOf([given({ doubt: { kind: 'plus-minus', size: 1e-10 } })])).toBe('0.56 g/d');
  });

  it('is said to be assumed, and how well it is known, where nobody stated it', () => {
    const assumedBecause = 'not stated';
    expect(saidOf([given({ assumedBecause, doubt: { kind: 'factor', size: 2 } })])).toBe(
      '0.56 g/d (assumed from its stock, within a factor of 2)',
    );
    expect(saidOf([given({ assumedBecause })])).toBe('0.56 g/d (assumed from its stock)');
  });
});
