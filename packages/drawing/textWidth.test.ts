import { describe, expect, it } from 'vitest';
import { textWidth } from './textWidth.ts';

describe('width of words on a drawing', () => {
  // Advance widths measured by a browser's canvas in DejaVu Sans at a letter height of 100, over 100.
  it.each([
    ['granular carbon, 1.57 in, right tray 1 (top)', false, 21.09],
    ['M mechanical, B biological, C chemical; numbered as the water meets them', false, 38.2],
    ['225\u00a0mm', false, 4.17],
    ['HAND-CUT COARSE FOAM', false, 13],
    ['illicit little filter', false, 7.53],
    ['mmmm wwww WWWW', false, 11.76],
    ['>99\u00a0%', false, 3.38],
    ['Ärger über Überlauf', false, 9.94],
    ['Planned: head turned, everything else stays where it is', true, 31.32],
    ['HAND-CUT COARSE FOAM', true, 14.42],
    ['illicit little filter', true, 8.88],
    ['34\u00a0%', true, 2.74],
  ])('of %s (bold: %s) is never too small and at most an eighth too large', (content, bold, measured) => {
    const width = textWidth(content, { size: 1, bold });
    expect(width).toBeGreaterThanOrEqual(measured);
    expect(width).toBeLessThanOrEqual(1.125 * measured);
  });
});
