import { describe, expect, test } from 'vitest';
import { effectTexts } from './effects.ts';

const litresPerHour = 1 / 3.6e6;
const gramsPerDay = 1 / 86_400_000;
const dayS = 86_400;

const effect = {
  dayS: 60 * dayS,
  flow: { beforeM3PerS: 400 * litresPerHour, afterM3PerS: 300 * litresPerHour },
  feed: { beforeKgPerS: 0, afterKgPerS: 0.5 * gramsPerDay },
  cleaningInterval: { beforeS: dayS / 2, afterS: 400 * dayS, beforeBeyond: false, afterBeyond: true },
};

describe('the effect of a cure', () => {
  test('tells feed, flow and cleaning before and after in one unit, with the difference', () => {
    expect(effectTexts(effect, 'metric')).toEqual([
      { what: 'feed carried', before: '0', after: '0.5', unit: 'g/d', percent: '' },
      { what: 'flow', before: '400', after: '300', unit: 'L/h', percent: '−25 %' },
      { what: 'cleaning after', before: '12 hours', after: 'more than a year', unit: '', percent: '' },
    ]);
  });

  test('tells no difference that would come to no per cent', () => {
    const feed = { beforeKgPerS: 0.134 * gramsPerDay, afterKgPerS: 0.1335 * gramsPerDay };
    expect(effectTexts({ ...effect, feed }, 'metric')[0]?.percent).toBe('');
  });

  test('tells the flow in US gallons where these are asked for: 400 L are 105.67 of 3.785411784 L', () => {
    expect(effectTexts(effect, 'us')[1]).toMatchObject({ before: '106', after: '79.3', unit: 'US gal/h' });
  });
});
