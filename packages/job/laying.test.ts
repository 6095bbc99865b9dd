import { media } from '@fettle/engine/catalogue/media.ts';
import { describe, expect, it } from 'vitest';
import { readJob } from './read.ts';

const jobWith = (bed: string, more = '') => `fettle: 1
tank: { volume: 100 L }
filter:
  family: basket-stack-canister
  measurements: { baskets: 2, basketWidth: 160 mm, basketDepth: 150 mm, basketHeight: 60 mm }
  pump: { ratedFlow: 900 L/h }
${more}packing:
  basket-1: [${bed}]
`;

const layingOf = (bed: string) => {
  const reading = readJob(jobWith(bed));
  if (!reading.ok) throw new Error(reading.problems.map(({ says }) => says).join(' '));
  return reading.model.packing['basket-1']?.[0]?.laying;
};

describe('how a bed lies', () => {
  it('is not said of a bed that lies loose from wall to wall', () => {
    expect(layingOf('{ medium: foam-20ppi, depth: 40 mm }')).toBeUndefined();
  });

  it('is pressed by as much as it was deeper and cut larger', () => {
    const pressed = layingOf('{ medium: foam-20ppi, depth: 40 mm, pressedFrom: 60 mm, oversize: 1 mm }');
    expect(pressed?.pressedRatio).toBeCloseTo((1.5 * 162 * 152) / (160 * 150), 12);
  });

  it('is pressed by its mass in its room, without which a mass says how deep it lies', () => {
    const density = media['floss-loose']!.bulkDensityKgPerM3.value;
    const pressed = layingOf('{ medium: floss-loose, depth: 30 mm, mass: 20 g }');
    expect(pressed?.pressedRatio).toBeCloseTo(0.02 / (density * 0.16 * 0.15 * 0.03), 9);
    expect(layingOf('{ medium: floss-loose, mass: 5 g }')).toBeUndefined();
  });

  it('is mixed, cut small and in a bag', () => {
    expect(
      layingOf(
        '{ medium: gravel-4mm, depth: 40 mm, cutGap: 2 mm, mixed: { medium: lava-15mm, share: 30 % }, bag: { open: 40 %, corners: 5 mm } }',
      ),
    ).toEqual({
      cutGapM: 0.002,
      mixed: { medium: 'lava-15mm', share: 0.3 },
      bag: { openFraction: 0.4, cornerRadiusM: 0.005 },
    });
  });
});

describe('what cannot be', () => {
  it.each([
    ['{ medium: gravel-4mm, depth: 40 mm, pressedFrom: 50 mm }', 'does-not-give-way', 'pressedFrom'],
    ['{ medium: gravel-4mm, depth: 40 mm, mass: 500 g }', 'one-of-fields', ''],
    ['{ medium: foam-20ppi, depth: 40 mm, pressedFrom: 30 mm }', 'pressed-from-less', 'pressedFrom'],
    ['{ medium: foam-20ppi, depth: 40 mm, mass: 50 g, oversize: 1 mm }', 'said-two-ways', 'oversize'],
    ['{ medium: foam-20ppi, depth: 40 mm, cutGap: 1 mm, oversize: 1 mm }', 'said-two-ways', 'oversize'],
    ['{ medium: foam-20ppi, depth: 40 mm, cutGap: 70 mm }', 'gap-leaves-nothing', 'cutGap'],
    [
      '{ medium: foam-20ppi, depth: 40 mm, mixed: { medium: lava-15mm, share: 20 % } }',
      'cannot-be-mixed',
      'mixed.medium',
    ],
    [
      '{ medium: gravel-4mm, depth: 40 mm, mixed: { medium: lava-15m, share: 20 % } }',
      'unknown-medium',
      'mixed.medium',
    ],
  ])('%s is told as %s', (bed, code, field) => {
    const reading = readJob(jobWith(bed));
    const problems = reading.ok ? [] : reading.problems;
    expect(problems.map((one) => one.code)).toEqual([code]);
    expect(problems[0]?.path).toBe(`packing.basket-1[0]${field === '' ? '' : `.${field}`}`);
    expect(problems[0]?.says).toMatch(/^packing\.basket-1\[0\].*\.$/);
  });

  it('a slot past a chamber that is not there is told with the nearest', () => {
    const slots = '  slots: [{ past: basket-3, at: end-cap, thickness: 1 mm }]\n';
    const reading = readJob(jobWith('{ medium: foam-20ppi, depth: 40 mm }', slots));
    expect(reading.ok ? [] : reading.problems.map(({ code, path }) => [code, path])).toEqual([
      ['unknown-chamber', 'filter.slots[0].past'],
    ]);
  });

  it('a slot of which only the thickness is said goes all round and is as long as a lip is wide', () => {
    const slots = '  slots: [{ past: basket-2, at: tray-lip, thickness: 1 mm }]\n';
    const reading = readJob(jobWith('{ medium: foam-20ppi, depth: 40 mm }', slots));
    expect(reading.ok && reading.model.filter.otherSlots).toEqual([
      { id: '1', chamber: 'basket-2', at: 'tray-lip', thicknessM: 0.001, widthM: 0.62, lengthM: 0.003 },
    ]);
  });
});
