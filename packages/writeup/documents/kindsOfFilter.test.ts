import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { readJob } from '@fettle/job/read.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { describe, expect, it } from 'vitest';
import type { Block } from '../content/document.ts';
import { cutList } from '../cuts/cutList.ts';
import { sourceOf } from '../testing/sources.ts';
import { type DocumentName, writeUpDocument } from '../writeUp.ts';

const demo = (name: string): JobDocument => {
  const read = readJob(readFileSync(resolve(import.meta.dirname, `../../../demo/${name}.yaml`)));
  if (!read.ok) throw new Error(`the demo ${name} does not read`);
  return read.document;
};

const blocksOf = (document: JobDocument, name: DocumentName): readonly Block[] =>
  writeUpDocument(sourceOf(document), { name, theme: 'print' }).blocks;

const stepsIn = (blocks: readonly Block[]): readonly string[] =>
  blocks.flatMap((block) => (block.kind === 'steps' ? block.items : []));

const idsIn = (blocks: readonly Block[]): readonly string[] => blocks.map(({ id }) => id);

/** The round drum with its sleeves the other way round, of which the outer one has to be cut anew. */
const turned: JobDocument = {
  ...demo('round-drum'),
  planned: {
    packing: {
      media: [
        { medium: 'foam-20ppi', depth: '20 mm' },
        { medium: 'foam-45ppi', depth: '15 mm' },
        { medium: 'ceramic-rings-12mm', depth: '25 mm' },
      ],
    },
    made: ['trim-sleeve'],
  },
};

describe('a filter with its media about a tube', () => {
  it('is packed from the tube outward', () => {
    const [step] = stepsIn(blocksOf(turned, 'build')).filter((text) => text.startsWith('Pack '));
    expect(step).toMatch(/from the tube outward: .*ceramic rings.*45 ppi foam.*20 ppi foam/);
  });

  it('has its sleeves cut as strips as long as their middles are round: by hand, the tube being 40 mm wide', () => {
    const [outer, inner] = cutList(sourceOf(turned)).flatMap((cut) => (cut.kind === 'pad' ? [cut] : []));
    expect(outer?.chamber.acrossM).toBeCloseTo(2 * Math.PI * 0.07, 9);
    expect(inner?.chamber.acrossM).toBeCloseTo(2 * Math.PI * 0.0525, 9);
    expect(outer?.chamber.otherM).toBeCloseTo(0.21, 9);
  });

  it('tells of each layer the volume of its own ring', () => {
    const table = blocksOf(turned, 'sheet').find(({ id }) => id === 'media-table');
    // π (80² − 60²), (60² − 45²) and (45² − 20²) mm² by 210 mm.
    const told = table?.kind === 'table' ? table.rows.map((row) => row[4]?.replace(/ \(.*/, '')) : [];
    expect(told.map((text) => text?.replace(/\s/g, ' '))).toEqual(['1.85 L', '1.04 L', '1.07 L']);
  });

  it('has a sleeve that stays cut longer before anything is altered, with its caution and the knife laid out', () => {
    const found = demo('round-drum');
    const blocks = blocksOf(
      { ...found, planned: { packing: found.packing ?? {}, made: ['trim-sleeve'] } },
      'build',
    );
    const cut = idsIn(blocks).indexOf('heading-build-ready');
    expect(cut).toBeGreaterThan(0);
    expect(cut).toBeLessThan(idsIn(blocks).indexOf('heading-build-alter'));
    expect(stepsIn(blocks.slice(cut, cut + 4)).join(' ')).toContain('Cut the foam sleeve');
    expect(idsIn(blocks)).toContain('caution-blade');
    expect(JSON.stringify(blocks.find(({ id }) => id === 'build-tools-list'))).toContain('Sharp knife');
  });
});

describe('a sump', () => {
  it('is tested for leaks, and warned of what runs back and what runs down', () => {
    const blocks = blocksOf(demo('under-stairs'), 'build');
    expect(stepsIn(blocks).join(' ')).toContain(
      'fill the box as high as the water stands in it with the pump off',
    );
    expect(idsIn(blocks)).toEqual(expect.arrayContaining(['caution-siphon-break', 'caution-sump']));
  });

  it('has its sock hung in its ring and changed whole, not packed, cut or pressed out', () => {
    const sump = demo('under-stairs');
    const packed = { ...sump.packing, sock: [{ medium: 'sock-felt', depth: '2 mm' }] };
    const source = sourceOf({ ...sump, planned: { packing: packed, made: [] } });
    expect(cutList(source)).toEqual([]);
    expect(stepsIn(blocksOf(sump, 'build')).join(' ')).toContain('Hang sock in its ring');
    const beds = blocksOf(sump, 'care').find(({ id }) => id === 'care-beds');
    expect(beds?.kind === 'table' ? beds.rows[0]?.[1] : '').toContain('change for a clean one');
  });

  it('has its siphon hole looked at every month, and is not drained by the test of its flow', () => {
    const blocks = blocksOf(demo('under-stairs'), 'care');
    expect(JSON.stringify(blocks.find(({ id }) => id === 'care-calendar'))).toContain(
      'Air holes in the tubes',
    );
    expect(JSON.stringify(blocks.find(({ id }) => id === 'care-jug'))).toContain('without drawing air');
  });
});

describe('water that runs out', () => {
  const careOf = (
    name: 'under-stairs' | 'round-drum',
    made: { readonly change: string; readonly depth: string }[],
  ) => {
    const found = demo(name);
    const blocks = blocksOf({ ...found, planned: { packing: found.packing ?? {}, made } }, 'care');
    return JSON.stringify(blocks.find(({ id }) => id === 'care-spills')).replace(/\s/g, ' ');
  };

  it('of a sump is told with the room for it, and is less once the return has an air hole', () => {
    expect(careOf('under-stairs', [])).toMatch(/power fails, 130 L .* room for 35 L/);
    expect(careOf('under-stairs', [{ change: 'siphon-hole', depth: '2 cm' }])).toMatch(/power fails, 2\d L/);
  });

  it('of a canister is told for each hose', () => {
    expect(careOf('round-drum', [])).toMatch(/intake hose comes off, up to 130 L/);
    expect(careOf('round-drum', [{ change: 'siphon-hole', depth: '3 cm' }])).toMatch(
      /intake hose comes off, up to 12 L/,
    );
  });
});

describe('a filter driven by air', () => {
  it('is told of the air line and its check valve, and nothing of a rotor or of running dry', () => {
    for (const name of ['build', 'care'] as const) {
      const blocks = blocksOf(demo('bubbling-sponge'), name);
      expect(idsIn(blocks), name).toContain('caution-air-line');
      expect(JSON.stringify(blocks), name).not.toMatch(/[Rr]otor|run dry|[Ss]trainer/);
    }
  });
});

describe('a filter that is built into the tank', () => {
  it.each(['pane-to-pane', 'under-the-gravel'])(
    '%s: is not lifted out of the water, and is touched by thirds',
    (name) => {
      for (const document of ['build', 'care'] as const) {
        const said = stepsIn(blocksOf(demo(name), document)).join(' ');
        expect(said, document).toContain('at most a third');
        expect(said, document).not.toMatch(/bag or bowl under the filter|lift it out/);
      }
    },
  );
});

const saidIn = (name: string, document: DocumentName): string => {
  const blocks = blocksOf(demo(name), document);
  const lists = blocks.flatMap((block) => (block.kind === 'list' ? block.items : []));
  const rows = blocks.flatMap((block) => (block.kind === 'table' ? block.rows.flat() : []));
  return [...stepsIn(blocks), ...lists, ...rows].join(' ');
};

describe('what does not apply to a kind is not asked of it', () => {
  it.each(['bubbling-sponge', 'pane-to-pane', 'under-the-gravel', 'tumbling-carriers'])(
    '%s, driven by air: no shaft is listened to, and no housing looked at',
    (name) => {
      expect(saidIn(name, 'build')).not.toMatch(/worn shaft|housing/);
      expect(saidIn(name, 'care')).not.toContain('It rattles');
    },
  );

  it.each(['pane-to-pane', 'under-the-gravel'])(
    '%s, built in: nothing is unpacked, packed or swished',
    (name) => {
      expect(saidIn(name, 'build')).not.toMatch(/Lift the media out|Pack |swished/);
      expect(saidIn(name, 'care')).toContain('draw its dirt off with a hose');
      expect(saidIn(name, 'care')).not.toContain('than the others');
    },
  );

  it('a column of sand is filled from below and not tipped', () => {
    expect(saidIn('sand-column', 'build')).toContain('Fill it slowly from below');
    expect(`${saidIn('sand-column', 'build')} ${saidIn('sand-column', 'care')}`).not.toContain('tip it');
  });

  it('a sump stands full for its leak test, and its sheet tells the level in each part', () => {
    expect(saidIn('under-stairs', 'build')).toContain('Leave it so for 30 minutes');
    const levels = blocksOf(demo('under-stairs'), 'sheet').find(({ id }) => id === 'levels');
    expect(levels?.kind === 'table' && levels.rows.map(([place]) => place)).toEqual([
      'inside of the sock',
      'section with the sock',
      'space above the media',
      'bubble trap',
      'section with the pump',
    ]);
  });

  it('a foam sleeve is cut longer though the pad round it is new, too', () => {
    const found = demo('side-cartridge');
    const planned = { packing: found.packing ?? {}, made: ['trim-sleeve'] };
    const said = stepsIn(blocksOf({ ...found, planned }, 'build')).join(' ');
    expect(said).toContain('Cut the foam sleeve');
  });
});
