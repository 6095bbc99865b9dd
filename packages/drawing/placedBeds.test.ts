import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { placedBeds, stagesNote } from './placedBeds.ts';
import { bedsOf, drawingCases, media } from './testing/drawingCases.ts';

describe('beds in place', () => {
  it('are numbered as rising water meets them, though listed from the top', () => {
    const tags = placedBeds({ ...drawingCases.stack, media }).map((placed) => `${placed.tag} ${placed.name}`);
    expect(tags).toEqual([
      'M1 coarse foam',
      'M2 fine foam',
      'B3 sintered rings',
      'C4 granular carbon',
      'M5 polyester floss',
    ]);
  });

  it('are met the other way round when the head is turned, and lie where they lay', () => {
    const asBuilt = placedBeds({ ...drawingCases.split, media });
    const turned = placedBeds({ ...drawingCases.turned, media });
    expect(turned.map((placed) => placed.bed.id)).toEqual(
      asBuilt.map((placed) => placed.bed.id).toReversed(),
    );
    for (const placed of turned) {
      expect(placed.box).toEqual(asBuilt.find((one) => one.bed.id === placed.bed.id)?.box);
    }
  });

  it('lie on the floor of an upright chamber and on the side of the pump in a slot', () => {
    const [lowest] = placedBeds({ ...drawingCases.stack, media });
    expect(lowest?.box.y).toBe(lowest?.chamber.box.y);
    const second = placedBeds({ ...drawingCases.hung, media }).find(
      (placed) => placed.chamber.id === 'slot-2',
    );
    expect(second?.name).toBe('polyester floss');
    expect(second?.box.x).toBe(second?.chamber.box.x);
  });

  it('never reach out of their chamber, however much is packed', () => {
    const { layout } = drawingCases.stack;
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 200, noNaN: true }), { maxLength: 5 }), (depths) => {
        const packing = {
          'basket-2': bedsOf(
            'basket-2',
            depths.map((depth) => ['rings', depth] as const),
          ),
        };
        for (const { box, chamber } of placedBeds({ layout, packing, media })) {
          expect(box.y).toBeGreaterThanOrEqual(chamber.box.y - 1e-12);
          expect(box.y + box.height).toBeLessThanOrEqual(chamber.box.y + chamber.box.height + 1e-12);
        }
      }),
    );
  });

  it('of a medium that is not on the shelf keep its id and a question mark', () => {
    const packing = { 'basket-1': bedsOf('basket-1', [['constructor', 20]]) };
    expect(placedBeds({ layout: drawingCases.stack.layout, packing, media })).toMatchObject([
      { tag: '?1', name: 'constructor', medium: undefined },
    ]);
  });

  it('explain only the letters that occur', () => {
    const says = stagesNote(placedBeds({ ...drawingCases.hung, media }));
    expect(says).toBe('M mechanical, C chemical; numbered as the water meets them');
    expect(stagesNote([])).toBe('');
  });
});
