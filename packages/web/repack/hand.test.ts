import type { BedPlace, SectionPlaces } from '@fettle/drawing/sectionPlaces.ts';
import type { Chamber } from '@fettle/engine/families/layout.ts';
import { describe, expect, test } from 'vitest';
import { depthToPut, landingOf, neighbourOf, positionAt, pulledDepthM } from './hand.ts';

const chamberOf = (id: string, flow: Chamber['flow'] = 'up'): Chamber => ({
  id,
  label: id,
  holds: [],
  from: 'a',
  to: 'b',
  areaM2: 0.02,
  depthM: 0.06,
  flow,
  listedInWaterOrder: false,
  gap: { thicknessM: 0.001, widthM: 0.1, lengthM: 0.06 },
  floorOpenFraction: 0.4,
  widthM: 0.16,
  box: { x: 0, y: 0, width: 0.16, height: 0.06 },
});

const [high, low] = [chamberOf('high'), chamberOf('low')];

/** Two baskets, the high one with a bed of 50 mm, the low one with beds of 30 and 20 mm; 1 mm of sheet is 1 mm. */
const bed = (chamber: Chamber, place: number, box: { y: number; height: number }): BedPlace => ({
  chamber,
  place,
  tag: `M${place}`,
  name: `${chamber.id} ${place}`,
  medium: 'foam',
  depthM: box.height / 1000,
  box: { x: 0, width: 160, ...box },
});

const places: SectionPlaces = {
  scale: 1000,
  chambers: [
    { chamber: high, box: { x: 0, y: 0, width: 160, height: 60 } },
    { chamber: low, box: { x: 0, y: 70, width: 160, height: 60 } },
  ],
  beds: [
    bed(high, 0, { y: 10, height: 50 }),
    bed(low, 0, { y: 80, height: 30 }),
    bed(low, 1, { y: 110, height: 20 }),
  ],
  ways: [],
  dimensions: [],
};
const [top, middle, bottom] = places.beds as [BedPlace, BedPlace, BedPlace];

describe('a bed in the hand', () => {
  test.each([
    [
      { x: 80, y: 5 },
      { chamber: 'high', place: 0 },
    ],
    [
      { x: 80, y: 55 },
      { chamber: 'high', place: 1 },
    ],
    [
      { x: 80, y: 85 },
      { chamber: 'low', place: 0 },
    ],
    [
      { x: 80, y: 105 },
      { chamber: 'low', place: 1 },
    ],
    [
      { x: 80, y: 129 },
      { chamber: 'low', place: 2 },
    ],
    [{ x: 80, y: 65 }, undefined],
    [{ x: 170, y: 5 }, undefined],
  ])('let go at %j of the drawing comes to %j', (point, position) => {
    expect(positionAt(point, places)).toEqual(position);
  });

  test('has room where the chamber has its depth free', () => {
    expect(landingOf(bed(low, 1, { y: 110, height: 10 }), { chamber: 'high', place: 0 }, places)).toEqual({
      how: 'moves',
      to: { chamber: 'high', place: 0 },
    });
  });

  test('changes places with the bed it is let go on, where each fits into the other’s chamber', () => {
    const thick = { ...bottom, depthM: 0.045 };
    const alone = { ...places, beds: [top, thick] };
    expect(landingOf(thick, { chamber: 'high', place: 0 }, alone)).toEqual({ how: 'swaps', with: top });
  });

  test('stays where there is no room, and that is told with what is free', () => {
    expect(landingOf(middle, { chamber: 'high', place: 0 }, places)).toMatchObject({
      how: 'stays',
      chamber: high,
    });
  });

  test('goes by the keys through its chamber, then into the next one', () => {
    expect(neighbourOf(middle, places, 1)).toEqual({ chamber: 'low', place: 2 });
    expect(neighbourOf(middle, places, -1)).toEqual({ chamber: 'high', place: 1 });
    expect(neighbourOf(top, places, 1)).toEqual({ chamber: 'low', place: 0 });
    expect(neighbourOf(top, places, -1)).toBeUndefined();
    expect(neighbourOf(bottom, places, 1)).toBeUndefined();
  });

  test('is pulled to whole millimetres, no deeper than there is room and never to nothing', () => {
    expect(pulledDepthM(middle, places.beds, 0.0044)).toBeCloseTo(0.034, 12);
    expect(pulledDepthM(middle, places.beds, 1)).toBeCloseTo(0.04, 12);
    expect(pulledDepthM(middle, places.beds, -1)).toBeCloseTo(0.001, 12);
  });

  test('that was pulled as deep as there is room stays so while it is pulled on', () => {
    const drawn = places.beds.map((bed) => (bed === middle ? { ...bed, depthM: 0.04 } : bed));
    expect(pulledDepthM(middle, drawn, 1)).toBeCloseTo(0.04, 12);
  });

  test('is put in as deep as usual, or as there is room; where there is none, not at all', () => {
    expect(depthToPut(low, places.beds)).toBeCloseTo(0.01, 12);
    expect(depthToPut(low, [])).toBeCloseTo(0.03, 12);
    expect(depthToPut(high, [{ ...top, depthM: 0.06 }])).toBeUndefined();
  });
});
