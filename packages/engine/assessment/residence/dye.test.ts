import { describe, expect, it } from 'vitest';
import type { DyeTest, Model } from '../../model/model.ts';
import { assess } from '../assess.ts';
import { findingsOf } from '../findings/find.ts';
import { stackCanister } from '../testing/models.ts';
import { compareDye } from './dye.ts';
import { residenceOf } from './residence.ts';

const model = stackCanister();
const { whole, flowM3PerS } = residenceOf(model)!;

/** What a perfect pulse through the filter would read, later or earlier by a factor. */
const pulse = (factor = 1, change: Partial<DyeTest> = {}): DyeTest => ({
  id: 'pulse',
  state: 'cleaned-original',
  flowM3PerS,
  samples: whole.points
    .filter(({ timeS }) => timeS < 3 * whole.meanS)
    .map(({ timeS, densityPerS }) => ({ timeS: timeS * factor, concentration: 1000 * densityPerS })),
  readingDoubt: 1,
  timeDoubtS: 0.5,
  ...change,
});
const withTest = (test: DyeTest): Model => ({ ...model, dyeTests: [test] });
const ids = (test: DyeTest): string[] => {
  const tested = withTest(test);
  return findingsOf(tested, assess(tested)).map(({ id }) => id);
};

describe('a dye test', () => {
  it('of the filter that is on the map gives its figures back within their doubts', () => {
    const [one] = compareDye(withTest(pulse()));
    const { measured, doubt, computed, isCutOff } = one!;
    expect(isCutOff).toBe(false);
    for (const key of ['t10S', 't50S', 't90S', 'meanS'] as const)
      expect(Math.abs(measured[key] - computed![key])).toBeLessThan(doubt[key] + 0.02 * computed![key]);
    expect(ids(pulse())).not.toContain('dye-early');
    expect(ids(pulse())).not.toContain('dye-dead-room');
  });

  it('that returns to its vessel gives the same once what came back is taken off', () => {
    const waterM3 = 0.03;
    const read = pulse().samples;
    // Each turn sends what the vessel holds through the filter again; three turns are enough for so much water.
    const at = (curve: readonly { timeS: number; concentration: number }[], timeS: number): number => {
      const next = curve.findIndex((sample) => sample.timeS >= timeS);
      return timeS < 0 || next < 0 ? 0 : curve[next]!.concentration;
    };
    let seen = read;
    for (let turn = 0; turn < 4; turn += 1) {
      const step = read[1]!.timeS;
      let held = 0;
      const vessel = seen.map(({ timeS, concentration }) => {
        held += (flowM3PerS / waterM3) * step * (concentration - held);
        return { timeS, concentration: held };
      });
      seen = read.map(({ timeS, concentration }) => ({
        timeS,
        concentration:
          concentration +
          read.reduce(
            (sum, one) => sum + (one.concentration / 1000) * at(vessel, timeS - one.timeS) * step,
            0,
          ),
      }));
    }
    const [single] = compareDye(withTest(pulse()));
    const [back] = compareDye(withTest(pulse(1, { samples: seen, returnsToM3: waterM3 })));
    const [blind] = compareDye(withTest(pulse(1, { samples: seen })));
    expect(back!.measured.meanS / single!.measured.meanS).toBeCloseTo(1, 1);
    expect(blind!.measured.meanS / single!.measured.meanS).toBeGreaterThan(1.2);
  });

  it('whose first tenth comes too soon tells of a way that is not on the map', () => {
    const early = pulse().samples.map(({ timeS, concentration }) => ({
      timeS,
      concentration: concentration + (timeS > 3 && timeS < 8 ? 30 : 0),
    }));
    expect(ids(pulse(1, { samples: early }))).toContain('dye-early');
  });

  it('that leaves too soon on the whole tells of room that stands still', () => {
    const found = ids(pulse(0.6));
    expect(found).toContain('dye-dead-room');
    const [one] = compareDye(withTest(pulse(0.6)));
    expect(one!.deadShare).toBeCloseTo(0.4, 1);
  });

  it('that was broken off says so, and calls no room dead', () => {
    const short = pulse(0.6, { samples: pulse(0.6).samples.filter(({ timeS }) => timeS < 0.6 * whole.t50S) });
    expect(compareDye(withTest(short))[0]!.isCutOff).toBe(true);
    expect(ids(short)).not.toContain('dye-dead-room');
  });

  it('has wider doubts where readings and clock are worse', () => {
    const [good] = compareDye(withTest(pulse()));
    const [poor] = compareDye(withTest(pulse(1, { readingDoubt: 5, timeDoubtS: 2 })));
    for (const key of ['t10S', 't50S', 't90S', 'meanS', 'varianceS2'] as const)
      expect(poor!.doubt[key]).toBeGreaterThan(good!.doubt[key]);
  });

  it('in which nothing was read is left out', () => {
    expect(compareDye(withTest(pulse(1, { samples: [] })))).toEqual([]);
  });
});
