import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readClaims } from './readClaims.ts';

function found(says: string) {
  return readClaims([says])[0]!.quantities.map(({ text, subject }) => `${text}: ${subject}`);
}

describe('quantities in a maker’s statement', () => {
  test.each<[string, readonly string[]]>([
    ['Pump output 900 L/h (238 US gal/h)', ['900 L/h: flow', '238 US gal/h: flow']],
    ['For aquariums up to 250 L / 66 US gal', ['250 L: tank-volume', '66 US gal: tank-volume']],
    ['For tanks of 100–250 L (26–66 US gal)', ['250 L: tank-volume', '66 US gal: tank-volume']],
    ['Head 1.3 m (4.3 ft)', ['1.3 m: head', '4.3 ft: head']],
    ['14 W', ['14 W: power']],
    ['230 V / 50 Hz, 14 W', ['14 W: power']],
    ['Media volume 3 L', ['3 L: media-volume']],
    ['Weight 3.1 kg (6.8 lb)', ['3.1 kg: weight', '6.8 lb: weight']],
    ['real surface 450 m²/L', ['450 m²/L: surface']],
    ['Holds 3 L of media for tanks up to 300 L', ['3 L: media-volume', '300 L: tank-volume']],
    [
      'For tanks up to 250 L (66 US gal), media 3 L',
      ['250 L: tank-volume', '66 US gal: tank-volume', '3 L: media-volume'],
    ],
    ['Output 900 litres per hour', ['900 litres per hour: flow']],
    ['Output 240 gal (US)/h', ['240 gal (US)/h: flow']],
    ['Hose 5/8" (16 mm)', ['5/8": unknown', '16 mm: unknown']],
    ['2 in 1, three stages, type B12 L, 300 m/s', []],
    ['Whisper quiet', []],
    ['', []],
  ])('%s', (says, quantities) => expect(found(says)).toEqual(quantities));

  test('their places point at the words themselves', () => {
    const says = 'Output 900 l/h, lift 1.4 m';
    for (const { start, end, text } of readClaims([says])[0]!.quantities)
      expect(says.slice(start, end)).toBe(text);
  });

  test('what may be meant in two ways has no value', () => {
    const [claim] = readClaims(['Flow 250 gph']);
    expect(claim?.quantities[0]).toMatchObject({ text: '250 gph', subject: 'flow' });
    expect(claim?.quantities[0]).not.toHaveProperty('value');
    expect(claim?.quantities[0]?.asks).toContain('US gal/h or imp gal/h');
    expect(claim?.quantities[0]?.either?.map(({ unit }) => unit)).toEqual(['US gal/h', 'imp gal/h']);
    expect(claim?.quantities[0]?.either?.[0]?.value).toBeCloseTo((250 * 0.003785411784) / 3600, 15);
  });

  test.each([
    ['For aquariums 100 - 300 L', '300 L', 0.1, 0.3],
    ['60 L to 130 L', '130 L', 0.06, 0.13],
    ['60 – 130 L', '130 L', 0.06, 0.13],
    ['300 - 100 L', '100 L', undefined, 0.1],
    ['up to 130 L', '130 L', undefined, 0.13],
  ])('%s is a range where it is one', (says, text, from, value) => {
    const [quantity, ...others] = readClaims([says])[0]!.quantities;
    expect(others).toEqual([]);
    expect(quantity?.text).toBe(text);
    expect([quantity?.from, quantity?.value]).toEqual([from, value]);
  });

  test('conditions are kept apart', () => {
    const [plain, loaded] = readClaims(['Flow 900 L/h', 'Flow 600 L/h with media']);
    expect([plain?.conditions, loaded?.conditions]).toEqual(['', 'with media']);
  });

  test('no statement makes it throw, and every place is inside it', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom(...'0123456789.,/ ()"-–LlhWmgkUSalin²³'), maxLength: 60 }),
        (says) => {
          for (const { start, end, text } of readClaims([says])[0]!.quantities)
            expect(says.slice(start, end)).toBe(text);
        },
      ),
      { numRuns: 1000 },
    );
  });
});
