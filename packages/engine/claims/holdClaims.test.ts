import { describe, expect, test } from 'vitest';
import { holdClaims } from './holdClaims.ts';
import type { Computed, Holding } from './holding.ts';
import { readClaims } from './readClaims.ts';

const litrePerHour = 1e-3 / 3600;

function hold(lines: readonly string[], computed: Computed = {}): readonly Holding[] {
  return holdClaims({ claims: readClaims(lines), computed });
}

describe('a statement against itself', () => {
  test.each([
    ['Pump output 900 L/h (238 US gal/h)', 'agrees', 'same within rounding'],
    ['Pump output 900 L/h (198 US gal/h)', 'contradicts-itself', 'imperial gallon'],
    ['Pump output 900 L/h (238 imp gal/h)', 'contradicts-itself', 'US gallon'],
    ['Pump output 900 L/h (283 US gal/h)', 'contradicts-itself', 'changed places'],
    ['Weight 3.1 kg (68 lb)', 'contradicts-itself', 'lost or added'],
    ['Head 1.3 m (1.3 ft)', 'contradicts-itself', 'not converted'],
    ['For tanks of 100-250 L (26-55 US gal)', 'contradicts-itself', 'imperial gallon'],
    ['Pump output 900 L/h (238 gph)', 'not-checked', '238 US gal/h is meant'],
    ['Pump output 900 L/h (300 gph)', 'contradicts-itself', 'No single slip'],
    ['Pump output 1,000 L/h (264 US gal/h)', 'not-checked', '1000 L/h is meant'],
    ['Weight 3.1 kg', 'not-checked', 'nothing measured'],
    ['Whisper quiet', 'not-checked', 'No quantity'],
    ['Flow 250 gph', 'not-checked', 'US gal/h or imp gal/h'],
  ])('%s: %s', (says, verdict, detail) => {
    const holdings = hold([says]);
    expect(holdings).toHaveLength(1);
    expect(holdings[0]).toMatchObject({ says, verdict });
    expect(holdings[0]?.detail).toContain(detail);
  });
});

describe('two statements on one subject', () => {
  test('must say the same', () => {
    expect(hold(['Flow 900 L/h', 'Pump output 950 L/h'])[1]).toMatchObject({
      verdict: 'contradicts-itself',
      says: 'Pump output 950 L/h',
    });
    expect(hold(['Flow 900 L/h', 'Pump output 238 US gal/h'])[1]).toMatchObject({ verdict: 'agrees' });
  });

  test('about the pump and about the filter are two figures', () => {
    expect(hold(['Pump output 900 L/h', 'Filter flow 600 L/h'])[1]).toMatchObject({ verdict: 'not-checked' });
  });

  test('under different conditions are two figures', () => {
    expect(hold(['Flow 900 L/h', 'Flow 600 L/h with media'])[1]).toMatchObject({ verdict: 'not-checked' });
  });
});

describe('a statement against ours', () => {
  const computed: Computed = {
    flowM3PerS: 540 * litrePerHour,
    ratedFlowM3PerS: 905 * litrePerHour,
    shutoffHeadM: 1.1,
    powerW: 15.2,
    powerMeasured: true,
    mediaVolumeM3: 0.0028,
    servedM3: { light: 0.3, normal: 0.18, heavy: 0.09 },
  };

  test('of flow agrees as far as ours may be off, and says so', () => {
    const within = (says: string, flowDoubtRatio: number) =>
      holdClaims({ claims: readClaims([says]), computed: { ...computed, flowDoubtRatio } })[0]!;
    expect(within('Flow 615 L/h', 0.15)).toMatchObject({ verdict: 'agrees' });
    expect(within('Flow 615 L/h', 0.15).detail).toMatch(/15(\.0)? % either way/);
    expect(within('Flow 615 L/h', 0).verdict).toBe('differs-from-ours');
    expect(within('Flow 625 L/h', 0.15).verdict).toBe('differs-from-ours');
    expect(within('Flow 625 L/h', 0.35).verdict).toBe('agrees');
  });

  test.each([
    ['Flow 900 L/h', 'differs-from-ours', 0.6],
    ['Flow 590 L/h', 'agrees', 540 / 590],
    ['For tanks up to 250 L', 'differs-from-ours', 0.72],
    ['For tanks up to 150 L', 'agrees', 1.2],
    ['Head 1.3 m', 'differs-from-ours', 1.1 / 1.3],
    ['14 W', 'agrees', 15.2 / 14],
    ['Media volume 3 L', 'agrees', 2.8 / 3],
    ['Real surface 450 m2/L', 'differs-from-ours', 3 / 450],
    ['1200 m2 of surface for bacteria', 'differs-from-ours', 3 / (1200 / 2.8)],
  ])('%s: %s', (says, verdict, ratio) => {
    const [holding] = hold([says], computed);
    expect(holding).toMatchObject({ says, verdict });
    expect(holding?.ratio).toBeCloseTo(ratio, 12);
  });

  test('the sentence gives ours in both systems and the share of the claim', () => {
    expect(hold(['Flow 900 L/h'], computed)[0]?.detail).toBe(
      'At the tank it is 540 L/h (143 US gal/h), 0.600 of the claim. ' +
        'The pump alone, at no head, gives 905 L/h (239 US gal/h).',
    );
    expect(hold(['14 W'], computed)[0]?.detail).toMatch(/^Measured at the plug it is 15.2 W/);
    expect(hold(['14 W'], { powerW: 15.2 })[0]?.detail).toMatch(/^We reckon with 15.2 W/);
  });

  test('without a flow at the tank the pump’s own is taken', () => {
    expect(hold(['Flow 900 L/h'], { ratedFlowM3PerS: 905 * litrePerHour })[0]).toMatchObject({
      verdict: 'agrees',
    });
  });

  test.each([
    ['For aquariums 100 - 300 L', 'agrees', 0.6, 'inside the range, 40 % of the way up'],
    ['60 to 130 L tanks', 'agrees', 180 / 130, 'above the range, 1.38 of its upper end'],
    ['For tanks from 250 L to 400 L', 'differs-from-ours', 0.45, 'below the range, 0.720 of its lower end'],
    ['For tanks of 190 to 400 L', 'agrees', 0.45, 'below the range, 0.947 of its lower end'],
    [
      'For tanks of 20-60 US gal',
      'agrees',
      0.18 / (60 * 0.003785411784),
      'inside the range, 69 % of the way up',
    ],
  ])('a range of tanks, %s: %s', (says, verdict, ratio, where) => {
    const [holding] = hold([says], computed);
    expect(holding).toMatchObject({ subject: 'tank-volume', verdict });
    expect(holding?.ratio).toBeCloseTo(ratio, 12);
    expect(holding?.detail).toContain(where);
  });

  test.each(['Pump output 905 L/h', 'Output 905 L/h', 'Motor: 905 L/h', 'Pump output 239 US gal/h'])(
    '%s is what the job takes as its rated flow, so the tank does not contradict it',
    (says) => {
      const [holding] = hold([says], computed);
      expect(holding?.verdict).toBe('not-checked');
      expect(holding?.detail).toContain("takes as the pump's rated flow");
      expect(holding?.detail).toContain('it is 540 L/h (143 US gal/h), 0.59');
    },
  );

  test('a statement about the pump alone is held against the pump alone', () => {
    const [more] = hold(['Pump output 1200 L/h'], computed);
    expect(more).toMatchObject({ verdict: 'differs-from-ours' });
    expect(more?.ratio).toBeCloseTo(905 / 1200, 12);
    expect(more?.detail).toContain('At the tank, after the head of hoses, lift and media, it is 540 L/h');
    expect(hold(['Pump output 950 L/h'], computed)[0]).toMatchObject({ verdict: 'agrees' });
    expect(hold(['Pump output 905 L/h'], { ...computed, ratedFlowMeasured: true })[0]).toMatchObject({
      verdict: 'agrees',
      ratio: 1,
    });
    expect(hold(['Pump output 900 L/h'], { flowM3PerS: 540 * litrePerHour })[0]?.detail).toBe(
      'The pump alone was not measured. At the tank, after the head of hoses, lift and media, ' +
        'it is 540 L/h (143 US gal/h), 0.600 of that.',
    );
  });

  test.each(['Filter flow 905 L/h', 'Circulation 905 L/h', 'Pump output 905 L/h with media', '905 L/h'])(
    '%s is held against the flow at the tank',
    (says) => expect(hold([says], computed)[0]).toMatchObject({ verdict: 'differs-from-ours' }),
  );

  test('the pump and the filter in one statement are two figures', () => {
    const held = hold(['Pump output 1200 L/h, filter flow 550 L/h'], computed);
    expect(held.map(({ verdict }) => verdict)).toEqual(['differs-from-ours', 'agrees']);
    expect(held.map(({ ratio }) => ratio?.toPrecision(3))).toEqual(['0.754', '0.982']);
  });

  test('a gallon that is not named is worked out both ways', () => {
    const [small] = hold(['For tanks up to 30 gallons'], computed);
    expect(small).toMatchObject({ verdict: 'agrees' });
    expect(small?.detail).toMatch(
      /does not say which unit is meant\. In US gal it says 114 L.*1\.59 of the claim.* In imp gal it says 136 L.*1\.32 of the claim/,
    );
    expect(hold(['For tanks up to 60 gallons'], computed)[0]).toMatchObject({ verdict: 'differs-from-ours' });
    expect(hold(['For tanks up to 50 gallons'], computed)[0]).toMatchObject({ verdict: 'not-checked' });
    expect(hold(['For tanks of 30 to 60 gallons'], computed)[0]?.detail).toMatch(
      /inside the range, 59 % of the way up.*inside the range, 32 % of the way up/,
    );
    expect(hold(['For tanks up to 50 gallons (189 L)'], computed).map(({ verdict }) => verdict)).toEqual([
      'not-checked',
      'agrees',
    ]);
  });

  test('a surface that only gas can reach is explained, one that bacteria can use is not', () => {
    expect(hold(['Surface 450 m2/L'])[0]?.detail).toMatch(/150 times the 3 m2\/L.*gas adsorption/);
    expect(hold(['Surface 2 m2/L'])[0]).toMatchObject({ verdict: 'not-checked' });
    expect(hold(['Surface 2 m2/L'])[0]?.detail).not.toContain('gas');
    expect(hold(['Surface 200 m2/g'])[0]?.detail).toContain('gas adsorption');
  });

  test('a pair that agrees is still held against ours', () => {
    expect(hold(['Flow 900 L/h (238 US gal/h)'], computed).map(({ verdict }) => verdict)).toEqual([
      'agrees',
      'differs-from-ours',
    ]);
  });
});
