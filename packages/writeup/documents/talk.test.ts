import { describe, expect, it } from 'vitest';
import { newWriter } from '../parts/writer.ts';
import { descriptionText } from '../talk/description.ts';
import { clockText, speakingTimeS, wordCount } from '../talk/speaking.ts';
import { talkSections } from '../talk/talk.ts';
import { demoDocument, demoNames, demoSource, sourceOf } from '../testing/sources.ts';
import { english } from '../texts/english/english.ts';
import { writeUpDocument } from '../writeUp.ts';

describe('the talking sheet', () => {
  it.each(demoNames)('%s: adds up what each part takes, at 130 words a minute', (name) => {
    const source = demoSource(name, 'left');
    const { blocks } = writeUpDocument(source, { name: 'talk', theme: 'print' });
    const plan = blocks.find(({ id }) => id === 'talk-plan');
    if (plan?.kind !== 'table') throw new Error('no running order');
    const words = talkSections(newWriter(source, english)).flatMap(({ facts }) => facts);
    const sum = words.reduce((total, fact) => total + wordCount(fact), 0);
    expect(plan.foot?.at(-1)).toBe(clockText((sum / 130) * 60));
    expect(plan.rows[0]?.[0]).toBe('0:00');
    expect(plan.rows.length).toBe(talkSections(newWriter(source, english)).length);
  });

  it('follows the order of the work, and leaves out what was not done', () => {
    const ids = (source: Parameters<typeof newWriter>[0]): readonly string[] =>
      talkSections(newWriter(source, english)).map(({ id }) => id);
    const left = ids(demoSource('tall-drum', 'left'));
    expect(left.indexOf('talk-as-found')).toBeLessThan(left.indexOf('talk-changed'));
    expect(left.indexOf('talk-changed')).toBeLessThan(left.indexOf('talk-leak'));
    const found = ids(demoSource('tall-drum'));
    for (const id of ['talk-changed', 'talk-packed', 'talk-leak', 'talk-as-left'])
      expect(found).not.toContain(id);
    expect(ids(demoSource('corner-box', 'left'))).not.toContain('talk-leak');
  });

  it('counts words and time as a speaker does', () => {
    expect(wordCount('It gives 310 ± 11 L/h – three runs.')).toBe(7);
    expect(speakingTimeS(65)).toBe(30);
    expect([clockText(0), clockText(59.6), clockText(3725)]).toEqual(['0:00', '1:00', '1:02:05']);
  });
});

describe('the text under a recording', () => {
  it('has parts with prices, conditions, chapters by their times, and nothing of the owner', () => {
    const document = {
      ...demoDocument('back-hanger'),
      owner: { name: 'A. Keeper', contact: 'keeper@example.org', place: 'the old harbour' },
      planned: { packing: { 'slot-1': [{ medium: 'foam-30ppi', depth: '20 mm' }], 'slot-2': [] } },
      writeUp: {
        chapters: [
          { at: '65 s', says: 'Opened' },
          { at: '0 s', says: 'As it came' },
        ],
      },
    };
    const text = descriptionText(newWriter(sourceOf(document), english));
    expect(text).toMatch(/- \d+ mL \(\d+ US fl oz\) of 30 ppi foam, \d+\.\d\d EUR/);
    expect(text).toContain('pH 7.6');
    expect(text).toContain('0:00 As it came\n1:05 Opened');
    expect(text).not.toMatch(/Keeper|keeper@|old harbour/);
  });
});
