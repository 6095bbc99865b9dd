import { cases, drawn, expectNoOverlap, wordsOf } from '@fettle/drawing/testing/drawingReading.ts';
import { describe, expect, it } from 'vitest';
import { languages } from './languages.ts';

describe.each(Object.values(languages))('a section in $itself', (language) => {
  it.each(cases)('%s: keeps its words on the sheet and apart, with both systems of units', (_, one) => {
    const svg = drawn(one, { units: 'both', language, caption: 'As found' });
    for (const word of wordsOf(svg)) {
      expect(word.from, word.content).toBeGreaterThanOrEqual(0);
      expect(word.to, word.content).toBeLessThanOrEqual(100);
    }
    expectNoOverlap(svg);
    expect(svg).not.toContain('\u00ad');
  });
});
