import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { describe, expect, test } from 'vitest';
import { demo, demos, fettle, fileWith } from './support/program.ts';
import { breachesOf } from './support/results.ts';

const drum = readFileSync(demo('tall-drum'), 'utf8');
const fadedDrum = (faded: string): string => fileWith(`${drum}\nfaded:\n${faded}`);

describe('why a flow has faded', () => {
  test.each(demos.map((path) => [basename(path), path]))(
    'is told of %s in the published shape, whatever units are asked for',
    async (_name, path) => {
      const { code, out } = await fettle('faded', path, '--json');
      expect(code).toBe(0);
      expect(breachesOf('faded', JSON.parse(out))).toEqual([]);
      expect((await fettle('faded', path, '--json', '--units', 'us')).out).toBe(out);
    },
  );

  test('is sought by what was read, seen and done, and the next question is told', async () => {
    const file = fadedDrum(
      [
        '  flowNow: 380 L/h',
        '  flowBefore: 630 L/h ± 3 %',
        '  sinceCleaned: 6 wk',
        '  signs: { rattle: false, brown-hoses: true }',
        '  done: [{ did: rinse-media, flow: 385 L/h }]',
      ].join('\n'),
    );
    const { out } = await fettle('faded', file);
    expect(out).toMatch(/^60 % of the flow is left: 380 L\/h of 630 L\/h\. Most likely a film has grown/);
    expect(out).toContain('What to ask next\n1. ');
    expect(out).toContain('from memory');
  });

  test('is laid to two causes where they are about as likely', async () => {
    const text = readFileSync(demo('corner-box'), 'utf8');
    const file = fileWith(`${text}faded:\n  flowNow: 319 L/h\n  flowBefore: 350 L/h\n`);
    const { out } = await fettle('faded', file);
    expect(out).toContain('Two causes are about as likely');
    expect(out).not.toContain('Most likely');
  });

  test('is not told where what flows agrees with what is computed, as the assessment says', async () => {
    const { out } = await fettle('faded', demo('corner-box'));
    expect(out).toMatch(/^No fading can be told: 92 % of what is computed flows/);
    expect((await fettle('assess', demo('corner-box'))).out).toMatch(/they\s+agree within their doubts/);
  });

  test('is settled once the flow is back', async () => {
    const done = '  done: [{ did: brush-hoses, flow: 620 L/h }]';
    const { out } = await fettle('faded', fadedDrum(`  flowNow: 400 L/h\n  flowBefore: 630 L/h\n${done}`));
    expect(out).toMatch(/^The flow has come back: 98 % of what it was\. It was most likely this: a film/);
    expect(out).not.toContain('What to ask next');
  });

  test('is not sought where it has not faded', async () => {
    const { out } = await fettle('faded', fadedDrum('  flowNow: 625 L/h\n  flowBefore: 630 L/h'));
    expect(out).toBe('The flow has not faded: 99 % of what it was is left.\n');
  });

  test('is not told where the readings contradict all causes', async () => {
    const { out } = await fettle(
      'faded',
      fadedDrum(
        '  flowNow: 400 L/h ± 2 %\n  flowBefore: 630 L/h ± 2 %\n  done: [{ did: rinse-media, flow: 900 L/h ± 2 % }]',
      ),
    );
    expect(out).toContain('None of these causes');
  });

  test('needs a flow now', async () => {
    const silent = drum.replace(/^tests:\n(?: .*\n|\n)+/m, '');
    const { code, err } = await fettle('faded', fileWith(silent));
    expect(code).toBe(2);
    expect(err).toContain('faded.flowNow: nobody has told the flow now');
  });

  test.each([
    ['  flowNow: -3 L/h', /faded\.flowNow/],
    ['  flowNow: NaN', /faded\.flowNow/],
    ['  flowNow: 380 furlongs', /faded\.flowNow/],
    ['  flowNow: 1e99 L/h', /faded\.flowNow/],
    ['  signs: { hums: true }', /faded\.signs\.hums/],
    ['  signs: { rattle: maybe }', /faded\.signs\.rattle/],
    ['  done: [{ did: kick-it, flow: 380 L/h }]', /faded\.done\[0\]\.did/],
    ['  sinceCleaned: -1 d', /faded\.sinceCleaned/],
  ])('names the field of %s', async (line, field) => {
    const { code, err } = await fettle('faded', fadedDrum(line));
    expect(code).toBe(2);
    expect(err).toMatch(field);
  });
});
