import { describe, expect, it } from 'vitest';
import { demoDocument, demoSource, sourceOf } from '../testing/sources.ts';
import { cutList } from './cutList.ts';

const coversOf = (source: Parameters<typeof cutList>[0]) =>
  cutList(source).flatMap((cut) => (cut.kind === 'cover' ? [cut] : []));

describe('covers for slots past the media', () => {
  it('lap over slots of the area that was measured, as wide as the narrower inside of the box', () => {
    // Inside 74 by 66 mm with 0.8 mm of gap all round: 64.4 mm; slots of 1.6 cm² over 54.4 mm are 2.94 mm high.
    const [cover] = coversOf(demoSource('corner-box', 'planned'));
    expect(cover?.lengthM).toBeCloseTo(0.0644, 9);
    expect(cover!.slots.acrossM * cover!.slots.otherM).toBeCloseTo(1.6e-4, 12);
    expect(cover?.widthM).toBeCloseTo(0.01294, 5);
  });

  it('are cut only where they are asked for and there are slots', () => {
    const document = demoDocument('corner-box');
    const { packing } = document;
    const closed = { ...document.filter.measurements, upperSlotArea: '0 cm2' };
    const without = { ...document, filter: { ...document.filter, measurements: closed } };
    expect(coversOf(sourceOf({ ...document, planned: { packing } }))).toEqual([]);
    expect(coversOf(sourceOf({ ...without, planned: { packing, made: ['close-upper-slots'] } }))).toEqual([]);
  });
});
