import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bedShapes, chamberVolume, depthsOfVolumes } from './bedShape.ts';
import type { Chamber } from './layout.ts';

const plane: Chamber = {
  id: 'one',
  holds: [],
  label: 'one',
  from: 'before',
  to: 'behind',
  areaM2: 0.02,
  depthM: 0.05,
  flow: 'right',
  listedInWaterOrder: true,
  gap: { thicknessM: 0, widthM: 1, lengthM: 0.05 },
  floorOpenFraction: 0.4,
  widthM: 0.1,
  box: { x: 0, y: 0, width: 0.05, height: 0.2 },
};

/** Media between a tube of 30 mm and a wall of 130 mm, 200 mm long. */
const round: Chamber = {
  ...plane,
  areaM2: Math.PI * 0.2 * (0.015 + 0.065),
  ring: { innerRadiusM: 0.015, lengthM: 0.2 },
};

const layers = fc.array(fc.double({ min: 1e-4, max: 0.01, noNaN: true }), { minLength: 1, maxLength: 5 });

describe('beds about a tube', () => {
  it('fill together what the chamber holds', () => {
    const beds = [{ depthM: 0.02 }, { depthM: 0.03 }];
    const volume = bedShapes(round, beds).reduce((sum, { volumeM3 }) => sum + volumeM3, 0);
    // π(65² − 15²) mm² × 200 mm
    expect(volume).toBeCloseTo(Math.PI * (0.065 ** 2 - 0.015 ** 2) * 0.2, 12);
    expect(chamberVolume(round)).toBeCloseTo(volume, 12);
  });

  it('lie on the tube, the last that the water meets innermost', () => {
    const [outer, inner] = bedShapes(round, [{ depthM: 0.01 }, { depthM: 0.02 }]);
    expect(inner!.ring!.innerRadiusM).toBeCloseTo(0.015, 12);
    expect(inner!.ring!.outerRadiusM).toBeCloseTo(0.035, 12);
    expect(outer!.ring!.innerRadiusM).toBeCloseTo(0.035, 12);
    expect(outer!.faceAreaM2).toBeCloseTo(2 * Math.PI * 0.045 * 0.2, 12);
  });

  it('have depths that give back their volumes, however many there are', () => {
    fc.assert(
      fc.property(layers, fc.constantFrom(plane, round), (depths, chamber) => {
        const volumes = bedShapes(
          chamber,
          depths.map((depthM) => ({ depthM })),
        ).map(({ volumeM3 }) => volumeM3);
        depthsOfVolumes(chamber, volumes).forEach((depthM, place) => {
          expect(depthM / depths[place]!).toBeCloseTo(1, 9);
        });
      }),
    );
  });
});

describe('beds between plane faces', () => {
  it('are as wide behind as in front', () => {
    expect(bedShapes(plane, [{ depthM: 0.02 }])).toEqual([{ volumeM3: 0.0004, faceAreaM2: 0.02 }]);
  });
});
