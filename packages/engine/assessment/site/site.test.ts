import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Model } from '../../model/model.ts';
import type { Placing } from '../../model/placing.ts';
import { assess } from '../assess.ts';
import { findingsOf } from '../findings/find.ts';
import { solvedClean } from '../testing/compiled.ts';
import { hangOnBack, hose, internalBox, pump, stackCanister, sump, withFilter } from '../testing/models.ts';
import { jetsOf } from './jets.ts';
import { pressuresOf } from './pressures.ts';
import type { PartPressure, Spill } from './site.ts';
import { siteOf } from './siteOf.ts';
import { spillsOf } from './spills.ts';

const placing: Placing = {
  humpM: 0.12,
  lidDepthM: 1,
  intakeDepthM: 0.35,
  returnDepthM: 0.05,
};
const placed = (change: Partial<Placing> = {}, model = stackCanister()): Model => {
  const { tank } = model;
  const there = withFilter(model, { placing: { ...placing, ...change } });
  return { ...there, tank: { ...tank, surfaceM2: 0.45 } };
};
const pressures = (model: Model): Record<string, PartPressure> =>
  Object.fromEntries(pressuresOf(solvedClean(model)).map((part) => [part.part, part]));
const spills = (model: Model): Record<string, Spill> =>
  Object.fromEntries(spillsOf(solvedClean(model)).map((spill) => [spill.cause, spill]));
const codes = (model: Model): string[] => siteOf(solvedClean(model)).siteWarnings.map(({ code }) => code);

describe('the leak side', () => {
  it('of a canister a metre below the tank lets water out at about 9.8 kPa, and its humps draw air in', () => {
    const at = pressures(placed());
    // 997 kg/m³ at 25 °C: a metre of water is 9.78 kPa, less what the intake takes.
    expect(at.housing!.gaugePa).toBeGreaterThan(5000);
    expect(at.housing!.gaugePa).toBeLessThan(9780);
    expect(at.housing!.leaks).toBe('water-out');
    expect(at['intake-hump']!.leaks).toBe('air-in');
    expect(at['intake-hump']!.gaugePa).toBeLessThan(-0.12 * 9780);
  });

  it('of parts in order falls along the intake and rises in the pump by its head', () => {
    const model = placed();
    const at = pressures(model);
    const head = assess(model).dutyPoint.headM;
    expect(at['pump-inlet']!.gaugePa).toBeLessThanOrEqual(at.housing!.gaugePa + 1e-6);
    expect(at['pump-outlet']!.gaugePa - at['pump-inlet']!.gaugePa).toBeCloseTo(head * 997.05 * 9.80665, -1);
  });

  it('stands still where nothing is measured, nothing flows, or the box hangs open on the tank', () => {
    expect(pressuresOf(solvedClean(stackCanister()))).toEqual([]);
    const stuck = withFilter(placed(), { outletLiftM: 5 });
    expect(pressuresOf(solvedClean(stuck))).toEqual([]);
    expect(Object.keys(pressures(placed({}, hangOnBack())))).toEqual(['intake-hump']);
    expect(pressuresOf(solvedClean(placed({}, internalBox())))).toEqual([]);
  });

  it('sinks with a blocked intake until air comes out of the water, and with a hump of ten metres until it boils', () => {
    const choked = withFilter(placed({ lidDepthM: 0.1 }), {
      intake: hose({ extraK: 4000 }),
      pump: pump(3, 900, 20),
    });
    expect(codes(choked)).toContain('air-comes-out');
    expect(codes(placed({ humpM: 9.5 }))).toContain('water-near-boiling');
    expect(codes(placed())).toEqual([]);
  });
});

describe('water on the floor', () => {
  it('is the surface times the depth of the intake: 0.45 m² by 35 cm is 157.5 L', () => {
    const off = spills(placed())['intake-hose-off']!;
    expect(off.volumeM3).toBeCloseTo(0.1575, 12);
    expect(off.endedBy).toBe('mouth');
    expect(off.timeS! * off.flowM3PerS!).toBeCloseTo(off.volumeM3, 12);
  });

  it('ends at the air hole: 0.45 m² by 3 cm is 13.5 L', () => {
    const off = spills(placed({ intakeHoleM: 0.03 }))['intake-hose-off']!;
    expect(off.volumeM3).toBeCloseTo(0.0135, 12);
    expect(off.endedBy).toBe('hole');
    const below = spills(placed({ intakeHoleM: 0.5 }))['intake-hose-off']!;
    expect(below.endedBy).toBe('mouth');
  });

  it('of the planning rule of sumps, 3 cm of rise over 0.7 m², is 21 L, and more where the return lies deeper', () => {
    const model = placed({ surfaceRiseM: 0.03, returnDepthM: 0.02, spareM3: 0.04 });
    const at = (returnDepthM: number, returnHoleM?: number): Spill => {
      const over = { ...model.filter.placing!, returnDepthM, ...(returnHoleM ? { returnHoleM } : {}) };
      const there = { ...withFilter(model, { placing: over }), tank: { ...model.tank, surfaceM2: 0.7 } };
      return spills(there)['power-fails']!;
    };
    expect(at(0.02)).toMatchObject({ volumeM3: 0.7 * 0.03, endedBy: 'edge', spareM3: 0.04 });
    expect(at(0.3)).toMatchObject({ volumeM3: 0.7 * 0.3, endedBy: 'mouth' });
    expect(at(0.3, 0.04)).toMatchObject({ volumeM3: 0.7 * 0.04, endedBy: 'hole' });
  });

  it('of a sump is held against the room above its running levels, and is a finding where it is more', () => {
    const over = (returnDepthM: number): Model => placed({ returnDepthM }, sump());
    const deep = spills(over(0.3))['power-fails']!;
    const { gravityFed } = assess(over(0.3)).layout;
    const { wallHeightM, sections } = gravityFed!;
    const whole = sections.reduce((sum, { areaM2 }) => sum + areaM2 * wallHeightM, 0);
    const atRest = sections.reduce((sum, section) => sum + section.areaM2 * section.restLevelM, 0);
    expect(deep.spareM3!).toBeGreaterThan(0);
    expect(deep.spareM3!).toBeLessThanOrEqual(whole - atRest);
    const found = (model: Model): boolean =>
      findingsOf(model, assess(model)).some(({ id }) => id === 'spills-over');
    expect(deep.volumeM3).toBeGreaterThan(deep.spareM3!);
    expect(found(over(0.3))).toBe(true);
    // With a return that ends at the surface only what stands over the edge of the overflow comes down.
    const shallow = spills(over(0))['power-fails']!;
    expect(shallow.endedBy).toBe('edge');
    expect(shallow.fallM).toBeGreaterThan(0.002);
    expect(shallow.fallM).toBeLessThan(0.05);
    expect(found(over(0))).toBe(false);
  });

  it('runs faster the deeper the floor, by less than a free fall would', () => {
    const flow = (lidDepthM: number): number => spills(placed({ lidDepthM }))['intake-hose-off']!.flowM3PerS!;
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 2, noNaN: true }), (depth) => {
        const free = Math.sqrt(2 * 9.80665 * depth) * Math.PI * 0.008 ** 2;
        expect(flow(depth)).toBeLessThan(free);
        expect(flow(depth)).toBeLessThan(flow(1.1 * depth));
      }),
      { numRuns: 20, seed: 3 },
    );
  });

  it('is a finding with its cautions where it is more than there is room for, and none where a tray takes it', () => {
    const found = (model: Model): string[] =>
      findingsOf(model, assess(model)).flatMap(({ id, says, cure }) =>
        id === 'spills-over' ? [says, cure] : [],
      );
    const text = found(placed()).join(' ');
    expect(text).toMatch(/157|158/);
    expect(text).toMatch(/air hole/);
    expect(text).toMatch(/check valve is a second line only/);
    expect(found(placed({ spareM3: 1 }))).toEqual([]);
  });
});

describe('air in the hoses', () => {
  it('is carried down by a usual flow and stays with a trickle', () => {
    expect(codes(stackCanister())).not.toContain('air-stays-in-hose');
    const trickle = withFilter(stackCanister(), { pump: pump(1, 60, 3), intake: hose({ boreM: 0.025 }) });
    expect(codes(trickle)).toContain('air-stays-in-hose');
  });

  it('is harder to carry down where the hose slopes gently over the floor', () => {
    const slow = withFilter(stackCanister(), { pump: pump(0.6, 200, 5) });
    expect(codes(slow)).not.toContain('air-stays-in-hose');
    const sloping = withFilter(slow, { intake: hose({ fallSlope: 0.1 }) });
    expect(codes(sloping)).toContain('air-stays-in-hose');
  });

  it('keeps a pump above the water from filling its hose', () => {
    expect(codes(placed({ lidDepthM: -0.2 }))).toContain('pump-above-water');
  });
});

describe('limits of the laws', () => {
  it.each([
    ['coil-outside-law', { coil: { turns: 1, diameterM: 0.08 } }],
    ['tap-outside-law', { tapOpenFraction: 0.2 }],
  ] as const)('%s is told', (code, change) => {
    expect(codes(withFilter(stackCanister(), { outlet: hose(change) }))).toContain(code);
  });

  it('a dimmed pump with little of its rated flow is told, one at full speed is not', () => {
    const choked = (speedRatio: number): string[] =>
      assess(
        withFilter(stackCanister(), {
          outlet: hose({ extraK: 900 }),
          pump: { ...pump(1.35, 850, 13), speedRatio },
        }),
      ).warnings.map(({ code }) => code);
    expect(choked(0.6)).toContain('pump-flow-outside-affinity');
    expect(choked(1)).not.toContain('pump-flow-outside-affinity');
  });

  it('water that runs back through a weaker second pump is told', () => {
    const weak = { pump: pump(0.3, 200, 3), place: 'beside', running: true } as const;
    const steep = withFilter(stackCanister(), { outlet: hose({ extraK: 200 }), secondPump: weak });
    expect(codes(steep)).toContain('water-runs-back');
    const held = { ...weak, checkValveHeadM: 0.02 };
    expect(codes(withFilter(steep, { secondPump: held }))).not.toContain('water-runs-back');
  });
});

describe('the jet of an outlet', () => {
  const jets = (fittings: readonly string[], model = placed()) =>
    jetsOf(solvedClean(withFilter(model, { outlet: hose({ fittings }) })));

  it('reaches less far from a spray bar and farther from a nozzle than from a plain end', () => {
    const reach = (fittings: readonly string[]): number => jets(fittings)[0]!.reachM;
    expect(reach(['spray-bar'])).toBeLessThan(0.5 * reach([]));
    expect(reach(['nozzle-jet'])).toBeGreaterThan(reach([]));
  });

  it('is none from a free outlet, and one for each of several', () => {
    expect(jetsOf(solvedClean(withFilter(placed(), { outletLiftM: 0.05 })))).toEqual([]);
    const branch = { run: hose({ lengthM: 0.3 }), liftM: 0 };
    const two = withFilter(placed(), { outletBranches: [branch, branch] });
    expect(jetsOf(solvedClean(two)).map(({ outlet }) => outlet)).toEqual(['outlet-1', 'outlet-2']);
  });

  it('is a finding where it sweeps the whole tank faster than its weakest swimmers stand', () => {
    const sweeps = (stands: number): boolean => {
      const model = placed();
      const there = { ...model, tank: { ...model.tank, standsCurrentMPerS: stands } };
      return findingsOf(there, assess(there)).some(({ id }) => id === 'jet-sweeps-tank');
    };
    expect(sweeps(0.02)).toBe(true);
    expect(sweeps(0.5)).toBe(false);
  });
});
