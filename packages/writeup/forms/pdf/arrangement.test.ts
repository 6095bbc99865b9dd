import { describe, expect, it } from 'vitest';
import type { Block, DrawingBlock } from '../../content/document.ts';
import { type BlockEnd, betterArranged, firstArrangement, pagesOf } from './arrangement.ts';

const said = (id: string): Block => ({ kind: 'paragraph', id, text: 'Said.' });
const headed: Block = { kind: 'heading', id: 'head', level: 2, text: 'Headed' };
const drawn = (width: DrawingBlock['width']): Block => ({
  kind: 'drawing',
  id: 'drawn',
  drawing: 'drawn',
  caption: 'Drawn.',
  alternative: 'Drawn.',
  width,
});

/** A paragraph, a heading, a drawing of 200 by 200 mm, which is set 152 mm high, and a paragraph. */
const documentWith = (width: DrawingBlock['width']) => ({
  blocks: [said('before'), headed, drawn(width), said('after')],
  drawings: { drawn: '<svg xmlns="x" width="200mm" height="200mm"></svg>' },
});

/** The drawing went over to page 2, and the paragraph before it ended at a height of page 1, mm. */
const endsWith = (y: number): readonly BlockEnd[] => [
  { id: 'before', page: 1, y },
  { id: 'drawn', page: 2, y: 17 + 12 + 152 },
  { id: 'after', page: 2, y: 200 },
];

const better = (width: DrawingBlock['width'], endOfText: number) => {
  const document = documentWith(width);
  return betterArranged(document, firstArrangement(document), { ends: endsWith(endOfText), paper: 'a4' });
};

describe('drawings and their pages', () => {
  it('sets a drawing smaller where it then fits under the text before it, by just what is missing', () => {
    // 278 mm is the foot of the page: 153 mm are left, and 12 + 152 + 9 mm are wanted, 20 mm more.
    expect(better('full', 125)).toMatchObject({ widths: { drawn: 132 }, floating: [] });
  });

  it('lets the text go on before a drawing that would become too small to read', () => {
    // A drawing of 200 mm is legible down to 130 mm, which takes 151 mm with its heading and caption.
    expect(better('full', 128)?.floating).toEqual(['drawn']);
    expect(better('full', 126)?.floating).toEqual([]);
  });

  it('leaves a drawing that is to scale at its size and in its place', () => {
    expect(better('true', 125)).toBeUndefined();
  });

  it('leaves everything where the page before is full, and where the drawing stands on the page of its text', () => {
    expect(better('full', 260)).toBeUndefined();
    const document = documentWith('full');
    const ends = endsWith(60).map((end) => ({ ...end, page: 1 }));
    expect(betterArranged(document, firstArrangement(document), { ends, paper: 'a4' })).toBeUndefined();
  });

  it('moves a drawing once at most', () => {
    const document = documentWith('full');
    const moved = better('full', 150)!;
    expect(betterArranged(document, moved, { ends: endsWith(150), paper: 'a4' })).toBeUndefined();
  });

  it('tells a last page that is nearly blank from one that is not, and from the only one', () => {
    const ends = (page: number, y: number): readonly BlockEnd[] => [{ id: 'last', page, y }];
    expect(pagesOf(ends(3, 40), 'a4')).toEqual({ count: 3, endsNearlyBlank: true });
    expect(pagesOf(ends(3, 90), 'letter')).toEqual({ count: 3, endsNearlyBlank: false });
    expect(pagesOf(ends(1, 40), 'a4')).toEqual({ count: 1, endsNearlyBlank: false });
  });
});
