import { describe, expect, it } from 'vitest';
import { mergeBooks } from './mergeBooks.ts';

const base = {
  media: [{ medium: 'foam-20ppi', price: '3 GBP/L' }, { medium: 'floss-loose' }],
  parts: [{ part: 'clip', count: 4 }],
};

describe('two people at one shelf', () => {
  it('each put another medium on it, and both stand there', () => {
    const theirs = { ...base, media: [...base.media, { medium: 'gravel-4mm' }] };
    const yours = { ...base, media: [...base.media, { medium: 'lava-15mm', amount: '3 L' }] };
    const { yoursFirst, theirsFirst, conflicts } = mergeBooks({ base, theirs, yours });
    expect(conflicts).toEqual([]);
    expect(theirsFirst).toEqual({
      ...base,
      media: [...base.media, { medium: 'gravel-4mm' }, { medium: 'lava-15mm', amount: '3 L' }],
    });
    expect(yoursFirst.media).toHaveLength(4);
  });

  it('one takes a medium away while the other prices the next', () => {
    const theirs = { ...base, media: [{ medium: 'floss-loose' }] };
    const yours = { ...base, media: [base.media[0], { medium: 'floss-loose', price: '1 GBP/L' }] };
    const { yoursFirst, conflicts } = mergeBooks({ base, theirs, yours });
    expect(conflicts).toEqual([]);
    expect(yoursFirst.media).toEqual([{ medium: 'floss-loose', price: '1 GBP/L' }]);
  });

  it('price the same medium differently: told by its name, with either price to be had', () => {
    const priced = (price: string) => ({ ...base, media: [{ medium: 'foam-20ppi', price }, base.media[1]] });
    const { yoursFirst, theirsFirst, conflicts } = mergeBooks({
      base,
      theirs: priced('4 GBP/L'),
      yours: priced('5 GBP/L'),
    });
    expect(conflicts).toEqual([
      { path: 'media.foam-20ppi.price', base: '3 GBP/L', theirs: '4 GBP/L', yours: '5 GBP/L' },
    ]);
    expect(yoursFirst).toEqual(priced('5 GBP/L'));
    expect(theirsFirst).toEqual(priced('4 GBP/L'));
  });

  it('take the last part away, and no empty list is left', () => {
    const { media } = base;
    expect(mergeBooks({ base, theirs: base, yours: { media } }).yoursFirst).toEqual({ media });
  });

  it('have a medium listed twice for a while, and nothing of it is lost', () => {
    const yours = { ...base, media: [...base.media, { medium: 'floss-loose', amount: '1 L' }] };
    const theirs = { ...base, parts: [{ part: 'clip', count: 3 }] };
    expect(mergeBooks({ base, theirs, yours }).yoursFirst).toEqual({ ...yours, parts: theirs.parts });
  });
});
