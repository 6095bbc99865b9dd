import { describe, expect, it } from 'vitest';
import { inscribed, unwordedLengths } from './inscriptions.ts';
import { fittingScale, type Sheet, sheetFor } from './sheet.ts';
import { drawingCases, layoutOf } from './testing/drawingCases.ts';

function sheetOf(layout: Parameters<typeof sheetFor>[0], scale = fittingScale(layout)): Sheet {
  return sheetFor(layout, { top: 10, scale });
}

const flat = layoutOf('basket-stack-canister', {
  baskets: 6,
  basketWidth: 0.3,
  basketDepth: 0.3,
  basketHeight: 0.02,
  baseHeight: 0.004,
});

describe('what stands at a dimension line', () => {
  it('is the word and the length where there is room', () => {
    const sheet = sheetOf(drawingCases.stack.layout);
    const lines = inscribed(sheet, { units: 'metric' }).map((one) => one.lines.join(' '));
    expect(lines).toEqual(
      expect.arrayContaining([
        'basket width 160\u00a0mm',
        'basket height 60\u00a0mm',
        'base height 15\u00a0mm',
      ]),
    );
    expect(unwordedLengths(sheet, { units: 'metric' })).toEqual([]);
  });

  it('is the length alone where lines stand too near each other, and the key has the words', () => {
    const sheet = sheetOf(drawingCases.six.layout);
    const beside = inscribed(sheet, { units: 'metric' }).filter((one) => one.dimension.side !== 'bottom');
    expect(beside.map((one) => one.lines)).toEqual([['50\u00a0mm'], ['15\u00a0mm']]);
    expect(unwordedLengths(sheet, { units: 'metric' }).toSorted()).toEqual([
      'base height 15\u00a0mm',
      'basket height 50\u00a0mm',
    ]);
  });

  it('is the length alone where its words would reach below the section', () => {
    expect(unwordedLengths(sheetOf(flat), { units: 'metric' })).toEqual(['base height 4\u00a0mm']);
  });

  it.each([
    ['as large as it can be', 1],
    ['at half that size', 0.5],
    ['at a quarter of it', 0.25],
  ])('stays near the middle of its line, drawn %s', (_, share) => {
    for (const { layout } of Object.values(drawingCases)) {
      const sheet = sheetOf(layout, share * fittingScale(layout));
      for (const { dimension, middle } of inscribed(sheet, { units: 'metric' })) {
        const { from, to } = dimension.line;
        const at = sheet.at({ x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 });
        expect(Math.abs(middle - (dimension.side === 'bottom' ? at.x : at.y))).toBeLessThanOrEqual(3);
      }
    }
  });
});
