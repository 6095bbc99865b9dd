import type { Box } from '@fettle/engine/families/layout.ts';
import { describe, expect, test } from 'vitest';
import { sectionDrawing } from './sectionDrawing.ts';
import { sectionPlaces } from './sectionPlaces.ts';
import { media } from './testing/drawingCases.ts';
import { cases } from './testing/drawingReading.ts';

const overlap = (one: Box, other: Box): boolean =>
  one.x < other.x + other.width &&
  other.x < one.x + one.width &&
  one.y < other.y + other.height &&
  other.y < one.y + one.height;

describe('places on a section drawing', () => {
  test.each(cases)('%s: every bed lies inside its chamber, and every chamber on the sheet', (_, one) => {
    const drawn = { ...one, media, units: 'metric' as const };
    const places = sectionPlaces(drawn);
    const height = Number(
      /viewBox="0 0 100 ([\d.]+)"/.exec(sectionDrawing({ ...drawn, theme: 'light' }))?.[1],
    );
    for (const { box } of places.chambers) {
      expect(Math.min(box.x, box.y)).toBeGreaterThan(0);
      expect(box.x + box.width).toBeLessThan(100);
      expect(box.y + box.height).toBeLessThan(height);
    }
    for (const { chamber, box, place } of places.beds) {
      const around = places.chambers.find((each) => each.chamber.id === chamber.id)?.box;
      expect(around).toBeDefined();
      if (around === undefined) continue;
      expect(box.x).toBeGreaterThanOrEqual(around.x - 1e-9);
      expect(box.y + box.height).toBeLessThanOrEqual(around.y + around.height + 1e-9);
      expect(drawn.packing[chamber.id]?.[place]?.medium).toBeDefined();
    }
  });

  test.each(cases)(
    '%s: every dimension stands on the sheet, clear of every bed, and none on another',
    (_, one) => {
      const { beds, dimensions } = sectionPlaces({ ...one, media, units: 'metric' });
      expect(dimensions.length).toBeGreaterThan(0);
      for (const { box } of dimensions) {
        expect(box.x).toBeGreaterThanOrEqual(0);
        expect(box.x + box.width).toBeLessThanOrEqual(100);
        for (const bed of beds) expect(overlap(box, bed.box)).toBe(false);
      }
      for (const [index, { box }] of dimensions.entries())
        for (const other of dimensions.slice(index + 1)) expect(overlap(box, other.box)).toBe(false);
    },
  );
});
