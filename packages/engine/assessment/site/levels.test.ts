import { describe, expect, it } from 'vitest';
import type { Model } from '../../model/model.ts';
import type { Placing } from '../../model/placing.ts';
import { solvedClean } from '../testing/compiled.ts';
import { stackCanister, sump, withFilter } from '../testing/models.ts';
import { siteOf } from './siteOf.ts';

const placing: Placing = { humpM: 0.12, lidDepthM: 1, intakeDepthM: 0.35, returnDepthM: 0.02 };
const placed = (change: Partial<Placing> = {}): Model => {
  const model = sump();
  const there = withFilter(model, { placing: { ...placing, ...change } });
  return { ...there, tank: { ...model.tank, surfaceM2: 0.45 } };
};

const look = (model: Model) => {
  const compiled = solvedClean(model);
  const { site } = siteOf(compiled);
  const { sections, wallHeightM } = compiled.layout.gravityFed!;
  return { box: site.box!, spills: site.spills, sections, wallHeightM };
};

describe('levels in an open box', () => {
  it('come down with the water: running, no section stands lower than the one behind it', () => {
    const { box, sections } = look(placed());
    const running = sections.map(({ space }) => box.levels.find((level) => level.space === space)!.runningM);
    expect(running).toEqual(running.toSorted((one, other) => other - one));
  });

  it('stopped, hold exactly what ran down from the tank and no less', () => {
    const { box, spills, sections } = look(placed());
    const down = spills.find(({ cause }) => cause === 'power-fails')!.volumeM3;
    const gained = sections.reduce((sum, { space, areaM2 }) => {
      const level = box.levels.find((one) => one.space === space)!;
      return sum + areaM2 * (level.stoppedM! - level.runningM);
    }, 0);
    expect(box.roomStoppedM3).toBeGreaterThan(0);
    expect(gained).toBeCloseTo(down, 9);
    expect(box.roomStoppedM3).toBeCloseTo(box.roomM3 - down, 12);
  });

  it('stand at the walls where more comes down than fits', () => {
    const { box, sections, wallHeightM } = look(placed({ returnDepthM: 0.5 }));
    for (const { space } of sections)
      expect(box.levels.find((one) => one.space === space)!.stoppedM).toBe(wallHeightM);
    expect(box.roomStoppedM3).toBeLessThan(0);
  });

  it('tell only the running ones where nobody measured what runs down', () => {
    const { box } = look(sump());
    expect(box.levels.some(({ stoppedM }) => stoppedM !== undefined)).toBe(false);
    expect(box).not.toHaveProperty('roomStoppedM3');
  });

  it('are none in a canister, nor where the pump lifts nothing', () => {
    expect(siteOf(solvedClean(stackCanister())).site).not.toHaveProperty('box');
    expect(siteOf(solvedClean(withFilter(sump(), { outletLiftM: 50 }))).site).not.toHaveProperty('box');
  });
});
