import { media } from '@fettle/engine/catalogue/media.ts';
import { readQuantity } from '@fettle/engine/quantities/readQuantity.ts';
import { describe, expect, it } from 'vitest';
import { figureText, mediumFigures } from './mediumFigures.ts';

describe('the figures of a medium', () => {
  it.each(Object.values(media))('$id: each is shown with unit, doubt and source', (medium) => {
    for (const shown of mediumFigures(medium)) {
      expect(shown.figure.source.text).not.toBe('');
      // What is thrown away keeps nothing, of which there is no doubt.
      if (shown.figure.value === 0) continue;
      for (const system of ['metric', 'us'] as const) {
        const text = figureText(shown, system);
        expect(text).toMatch(/ (±|×\/÷) /);
        // Within the rounding to two digits of its doubt, what is read is what the catalogue has.
        const read = readQuantity(text, shown.dimension);
        expect(read.ok && read.value / shown.figure.value).toBeCloseTo(1, 0);
      }
    }
  });

  it('are those of its own law, the deposit and the price, and what else it has', () => {
    const labels = (id: string) => mediumFigures(media[id]!).map(({ label }) => label);
    expect(labels('foam-20ppi')[0]).toBe('diameter of the cells');
    expect(labels('ceramic-rings-15mm').slice(0, 3)).toEqual([
      'size of a piece',
      'share open to the water',
      'outer surface of the pieces',
    ]);
    expect(labels('zeolite-4mm')).toContain('takes out ammonium');
  });
});
