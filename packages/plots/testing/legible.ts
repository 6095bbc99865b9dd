import { sizes } from '@fettle/drawing/tokens.ts';
import { expect } from 'vitest';
import type { PlacedLabel } from '../placeLabels.ts';

/** So many labels stand on the sheet, none over another. */
export const expectLegible = (labels: readonly PlacedLabel[], count: number): void => {
  expect(labels).toHaveLength(count);
  for (const [place, { box }] of labels.entries()) {
    expect(box.left).toBeGreaterThanOrEqual(0);
    expect(box.right).toBeLessThanOrEqual(sizes.sheetWidth);
    for (const other of labels.slice(place + 1)) {
      const apart =
        box.right <= other.box.left ||
        other.box.right <= box.left ||
        box.bottom <= other.box.top ||
        other.box.bottom <= box.top;
      expect(apart, `${labels[place]?.says} and ${other.says}`).toBe(true);
    }
  }
};
