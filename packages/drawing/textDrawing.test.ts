import { describe, expect, it } from 'vitest';
import { describeWaterPath } from './describeWaterPath.ts';
import { folded } from './folding.ts';
import { columnsOf, plainText } from './plainText.ts';
import { bedsOf, type DrawingCase, drawingCases, media } from './testing/drawingCases.ts';
import { beforeAfterText, type TextToDraw, textDrawing } from './textDrawing.ts';

function drawn(one: DrawingCase, more: Partial<TextToDraw> = {}): string {
  const assessment = one.flows ? { assessment: one.flows } : {};
  return textDrawing({ ...one, ...assessment, media, units: 'metric', ...more });
}

const cases = Object.entries(drawingCases);

describe.each(cases)('water path of %s in a terminal', (_, one) => {
  it.each([40, 60, 80])('keeps to %d columns', (width) => {
    for (const line of drawn(one, { width, caption: 'As found '.repeat(12) }).split('\n')) {
      expect(columnsOf(line), line).toBeLessThanOrEqual(width);
    }
  });

  it('is plain ASCII where asked for', () => {
    expect(drawn(one, { ascii: true })).toMatch(/^[ -~\n]+$/);
  });

  it('names all beds in the order in which the water meets them', () => {
    const numbers = [...drawn(one).matchAll(/│ [MBC](\d+) /g)].map((found) => Number(found[1]));
    expect(numbers).toEqual(numbers.map((__, index) => index + 1));
    expect(numbers.length).toBe(Object.values(one.packing).flat().length);
  });
});

describe('text drawing', () => {
  it('shows slots from the pump to the tank with what spills', () => {
    expect(drawn(drawingCases.hung, { ascii: true, width: 60, caption: 'As found' })).toBe(
      `As found

  from the tank
  |
  v
  pump
  |
  |--> 10 % spills over the overflow lip into the tank
  |
  v
+- slot 1 (pump's side), across ---------------------------+
| M1  coarse foam                                    22 mm |
+-------------------------------- 78 % through, 12 % past -+
  |
  v
+- slot 2, across -----------------------------------------+
| M2  polyester floss                                 8 mm |
| C3  granular carbon                                12 mm |
+-------------------------------- 59 % through, 31 % past -+
  |
  v
  to the tank

M mechanical, C chemical; numbered as the water meets them.
Shares are of the whole flow.
`,
    );
  });

  it('shows where the slot over the partition leaves and joins', () => {
    const lines = drawn(drawingCases.split).replaceAll('\u00a0', ' ').split('\n');
    const leaves = lines.findIndex((line) => line.includes('13 % leaves by the slot over the partition'));
    const joins = lines.findIndex((line) => line.includes('13 % joins from the slot over the partition'));
    const first = lines.findIndex((line) => line.includes('left tray 1'));
    const last = lines.findIndex((line) => line.includes('right tray 1'));
    expect([leaves, first, last, joins]).toEqual([leaves, first, last, joins].toSorted((a, b) => a - b));
    expect(leaves).toBeGreaterThan(0);
  });

  it('says that a chamber is empty and leaves shares out where none are reckoned', () => {
    const says = drawn({ layout: drawingCases.stack.layout, packing: {} });
    expect(says.match(/│ empty /g)).toHaveLength(3);
    expect(says).not.toContain('%');
  });

  it('lets no name move the cursor or turn the writing', () => {
    const packing = { 'basket-1': bedsOf('basket-1', [['\u001b[2Jfoam\r\n\u202emaof', 30]]) };
    const says = drawn({ layout: drawingCases.stack.layout, packing });
    for (const sign of ['\u001b', '\r', '\u202e']) expect(says).not.toContain(sign);
    expect(says).toContain('foam');
  });

  it('sets before over after', () => {
    const { split, turned } = drawingCases;
    const says = beforeAfterText({
      before: { ...split, assessment: split.flows, caption: 'As found' },
      after: { ...turned, caption: 'Planned' },
      media,
      units: 'us',
    });
    expect(says.indexOf('As found')).toBe(0);
    expect(says.indexOf('Planned')).toBeGreaterThan(says.indexOf('to the tank'));
    expect(says).toContain('2.36 in');
  });
});

describe('plain text', () => {
  it.each([
    ['Kohle, körnig', 'Kohle, kornig'],
    ['club’s', "club's"],
    ['泡沫', '??'],
    ['60\u00a0mm', '60 mm'],
  ])('writes %s in ASCII as %s', (given, written) => {
    expect(plainText(given, true)).toBe(written);
  });

  it('folds words that are longer than the line and counts wide signs twice', () => {
    expect(folded('abcdef gh', { most: 4, measure: columnsOf })).toEqual(['abcd', 'ef', 'gh']);
    expect(folded('泡沫泡沫', { most: 4, measure: columnsOf })).toEqual(['泡沫', '泡沫']);
    expect(columnsOf('泡e\u0301')).toBe(3);
  });
});

describe('water path in one sentence', () => {
  it('names chambers, beds and what misses them', () => {
    const { internal } = drawingCases;
    const says = describeWaterPath({ ...internal, assessment: internal.flows, media, units: 'metric' });
    expect(says.replaceAll('\u00a0', ' ')).toBe(
      'The water runs from the tank up through chamber 1 (lowest) (65 mm of coarse foam, mechanical), then up through chamber 2 (30 mm of sintered rings, biological), and to the pump and back to the tank; of the flow 5 % goes past chamber 1 (lowest), 2 % goes past chamber 2, 25 % goes through the slots past the media.',
    );
  });
});
