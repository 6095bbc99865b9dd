import { describe, expect, it } from 'vitest';
import { demoDocument, demoSource, sourceOf } from '../testing/sources.ts';
import { writeUpDocument } from '../writeUp.ts';

const paragraphOf = (source: Parameters<typeof writeUpDocument>[0], id: string): string => {
  const block = writeUpDocument(source, { name: 'sheet', theme: 'print' }).blocks.find(
    (one) => one.id === id,
  );
  return block?.kind === 'paragraph' ? block.text : '';
};

describe('what is said of figures', () => {
  it('quotes the plate on watts only where the job states them', () => {
    const { filter, ...document } = demoDocument('tall-drum');
    const { power: _, ...pump } = filter.pump;
    expect(paragraphOf(demoSource('tall-drum'), 'measured-how')).toContain('the plate says 13.0 W');
    const silent = paragraphOf(sourceOf({ ...document, filter: { ...filter, pump } }), 'measured-how');
    expect(silent).toContain('At the plug it draws 12.6 ± 0.5 W.');
    expect(silent).not.toContain('plate');
  });

  it('says of a plan what would be, not what is', () => {
    expect(paragraphOf(demoSource('tall-drum', 'planned'), 'water-path')).toMatch(
      /As planned .* of the water would miss the mechanical media\.$/,
    );
    expect(paragraphOf(demoSource('tall-drum', 'left'), 'water-path')).toMatch(/Now, and clean, .*misses/);
    expect(paragraphOf(demoSource('tall-drum'), 'water-path')).not.toContain('Now');
  });
});

describe('the key figures', () => {
  it('hold a computed clean flow against the clean one packed as before, not against the one that was timed', () => {
    const { blocks } = writeUpDocument(demoSource('tall-drum', 'planned'), { name: 'sheet', theme: 'print' });
    const figures = blocks.flatMap((block) => (block.kind === 'figures' ? block.figures : []));
    for (const { note } of figures) expect(note).toMatch(/^cleaned, packed as before: /);
  });
});
