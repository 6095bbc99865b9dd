import { describe, expect, it } from 'vitest';
import { demoDocument, demoSource, sourceOf } from '../testing/sources.ts';
import { type DocumentName, writeUpDocument } from '../writeUp.ts';

const itemsOf = (
  source: ReturnType<typeof demoSource>,
  name: DocumentName,
  id: string,
): readonly string[] => {
  const block = writeUpDocument(source, { name, theme: 'print' }).blocks.find((one) => one.id === id);
  return block?.kind === 'list' ? block.items : [];
};

describe('what remains after a change', () => {
  it('is every fault of the new packing, each in one line', () => {
    const source = demoSource('everything-wrong', 'planned');
    const faults = source.after!.findings.filter(({ severity }) => /grave|marked|slight/.test(severity));
    expect(faults.length).toBeGreaterThan(1);
    const items = itemsOf(source, 'sheet', 'faults-left');
    expect(items).toHaveLength(faults.length);
    for (const [at, { effect }] of faults.entries())
      expect(items[at]?.includes('Curing it alone')).toBe(effect !== undefined);
  });

  it('is told of media: what is good is kept, what is used up is thrown away', () => {
    const { packing, ...document } = demoDocument('tall-drum');
    const over = itemsOf(sourceOf({ ...document, packing, planned: { packing: {} } }), 'build', 'left-over');
    expect(over.find((item) => item.includes('loose floss'))).toContain('into the bin');
    expect(over.filter((item) => item.includes('keep it wet')).length).toBe(over.length - 1);
    expect(itemsOf(demoSource('tall-drum'), 'build', 'left-over')).toEqual([]);
  });
});

describe('how figures are known', () => {
  it('is said once in a note, and marked where it was said again and again', () => {
    const { blocks } = writeUpDocument(demoSource('everything-wrong'), { name: 'sheet', theme: 'print' });
    const text = JSON.stringify(blocks);
    expect(text.match(/known in the trade, not looked up/gi)).toHaveLength(1);
    expect(text.split('†').length).toBeGreaterThan(3);
  });
});
