import { describe, expect, it } from 'vitest';
import { engineEnglish } from '../../wording/english/english.ts';
import { word } from '../../wording/word.ts';
import type { Effect } from '../assessment.ts';
import { severityOf, weighing } from './weighing.ts';

const dayS = 86_400;

/** A cure that multiplies what there was. */
const effect = (change: { feed?: number; flow?: number; interval?: number }): Effect => ({
  dayS: 60 * dayS,
  feed: { beforeKgPerS: 2e-8, afterKgPerS: 2e-8 * (change.feed ?? 1) },
  flow: { beforeM3PerS: 1e-4, afterM3PerS: 1e-4 * (change.flow ?? 1) },
  cleaningInterval: {
    beforeS: 3 * dayS,
    afterS: 3 * dayS * (change.interval ?? 1),
    beforeBeyond: false,
    afterBeyond: false,
  },
});

const weighed = (of: Effect): string =>
  weighing(of)
    .map((one) => word(one, { language: engineEnglish, units: 'metric' }))
    .join(' ');

describe('a cure that gives something up', () => {
  const trade = effect({ feed: 0.83, flow: 1.02, interval: 17 / 3 });

  it('says what is gained and what is given up', () => {
    expect(weighed(trade)).toBe(
      'Gained: 2 % more flow, cleaning after 17 days in place of 3 days. Given up: 17 % less feed carried. Weigh which of the two this tank needs more.',
    );
  });

  it('is of a slight fault at most where the filter carries less, however much later it is cleaned', () => {
    expect(severityOf(trade)).toBe('slight');
    expect(severityOf(effect({ feed: 1, interval: 17 / 3 }))).toBe('grave');
  });

  it('keeps the severity of its fault where the filter carries more', () => {
    const sealed = effect({ feed: 2.8, flow: 0.41 });
    expect(severityOf(sealed)).toBe('grave');
    expect(weighed(sealed)).toMatch(
      /Given up: 59 % less flow\. On the whole it gains more than it gives up\.$/,
    );
  });

  it('gives up no cleaning interval of a filter through which no water flows', () => {
    const lifted: Effect = {
      ...effect({}),
      feed: { beforeKgPerS: 0, afterKgPerS: 2e-8 },
      flow: { beforeM3PerS: 0, afterM3PerS: 1e-4 },
      cleaningInterval: { beforeS: 365 * dayS, afterS: 3 * dayS, beforeBeyond: true, afterBeyond: false },
    };
    expect(weighed(lifted)).not.toContain('Given up');
  });

  it('is said to lose where it does', () => {
    expect(weighed(effect({ feed: 0.5, interval: 2 }))).toMatch(
      /By itself this loses more here than it gains/,
    );
  });
});

it('a cleaning interval that differs by less than it is known to is none to tell', () => {
  expect(weighed(effect({ feed: 1.04, flow: 1.07, interval: 0.96 }))).toBe('');
});

it('a cure that only does good is weighed against nothing', () => {
  expect(weighed(effect({ feed: 1.2, interval: 2 }))).toBe('');
});
