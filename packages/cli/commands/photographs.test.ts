import { plainPicture } from '@fettle/store/photographs/testing/pictures.ts';
import { describe, expect, test } from 'vitest';
import { commandBench } from '../testing/commandBench.ts';
import { addPhotographs } from './photographs.ts';

const { told, json, problems, inRecords } = commandBench(addPhotographs, 'photographs');

/** Attaches a picture to job 1 and gives its id. */
const attached = (name: string): Promise<string> =>
  inRecords(async (store) => {
    const bytes = await plainPicture(40, 30, 1).png().toBuffer();
    const added = await store.attachments.add({ job: 1, bytes, name, by: 'anna', caption: 'the gap' });
    if (!added.ok) throw new Error(added.says);
    return added.attachment.id;
  });

const kept = () => inRecords((store) => store.attachments.list(1));

describe('photographs by command', () => {
  test('are listed with id, name, size, day and what they show', async () => {
    expect(await told('1')).toContain('has no photographs yet: fettle attach 1');
    const id = await attached('gap.png');
    expect(await told('1')).toMatch(
      new RegExp(`^Job 1: 1 photograph.* ${id} gap\\.png, 40 × 30, 1 kB, added \\d{4}-.* by anna: the gap$`),
    );
    expect((await json('1')).photographs).toEqual(await kept());
  });

  test('are captioned in words, or in none, and the log says so', async () => {
    const id = await attached('gap.png');
    expect(await told('1', 'caption', id, 'the', 'gap,', 'closed')).toBe(
      'gap.png is captioned now: the gap, closed',
    );
    expect((await kept()).map(({ caption }) => caption)).toEqual(['the gap, closed']);
    expect(await told('1', 'caption', id, '')).toBe('gap.png has no caption now.');
    const [deed] = await inRecords((store) => store.deeds.list({ job: 1 }));
    expect([deed?.what, deed?.about]).toEqual(['picture-captioned', id]);
  });

  test('are taken off one by one, and the log says so', async () => {
    const [first, second] = [await attached('a.png'), await attached('b.png')];
    expect(await told('1', 'remove', first)).toContain('a.png is off job 1');
    expect((await kept()).map(({ id }) => id)).toEqual([second]);
    const [deed] = await inRecords((store) => store.deeds.list({ job: 1 }));
    expect([deed?.what, deed?.about]).toEqual(['picture-removed', first]);
    expect((await problems('1', 'remove', first)).map(({ code }) => code)).toEqual(['no-such-photograph']);
  });

  test.each([
    ['no id', ['1', 'remove'], 'command-line-photographs', /needs the id/],
    ['no text', ['1', 'caption', 'abc'], 'command-line-photographs', /needs a text/],
    ['two at once', ['1', 'remove', 'abc', 'def'], 'command-line-photographs', /one photograph alone/],
    ['an id of nothing', ['1', 'caption', 'abc', 'x'], 'no-such-photograph', /no photograph abc/],
    [
      'a caption without end',
      ['1', 'caption', 'abc', 'x'.repeat(501)],
      'too-long',
      /501 characters; at most 500/,
    ],
    ['a job that is not there', ['7'], 'no-such-job', /no job 7/],
  ] as const)('with %s are refused', async (_what, words, code, says) => {
    const [problem] = await problems(...words);
    expect([problem?.code, problem?.says]).toEqual([code, expect.stringMatching(says)]);
  });
});
