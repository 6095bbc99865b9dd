import { problemsSchema } from '@fettle/workflows/results/problems.ts';
import { describe, expect, test } from 'vitest';
import { documentOf, renamed, stepsOf, twice, without, withValue } from './support/documents.ts';
import { demoWith, type Ended, fettle, fileWith } from './support/program.ts';

const document = documentOf('tall-drum');

/** Sentences of a run, each joined from its wrapped lines. */
const sentencesOf = ({ err }: Ended): readonly string[] =>
  err
    .split(/\n(?! {2})/)
    .filter((text) => text !== '')
    .map((text) => text.replaceAll(/\n {2}/g, ' '));

/** Exit 2, sentences of which one names the field, nothing else written, and the same as JSON. */
const expectRefused = async (text: string | Uint8Array, names: RegExp): Promise<void> => {
  const file = fileWith(text);
  const ended = await fettle('assess', file);
  expect([ended.code, ended.out], ended.err).toEqual([2, '']);
  const sentences = sentencesOf(ended);
  expect(
    sentences.some((sentence) => names.test(sentence)),
    ended.err,
  ).toBe(true);
  for (const sentence of sentences) expect(sentence).toMatch(/\.$/);
  for (const line of ended.err.split('\n')) expect([...line].length, line).toBeLessThanOrEqual(80);
  expect(ended.err).not.toMatch(/\n\s+at |node:|\.ts:\d|\[object/);
  const asJson = await fettle('assess', file, '--json');
  expect([asJson.code, asJson.err]).toEqual([2, '']);
  expect(problemsSchema.parse(JSON.parse(asJson.out)).problems).toHaveLength(sentences.length);
};

const named = (path: string): RegExp => new RegExp(path.replaceAll(/[.[\]]/g, '\\$&'));

/** Fields, a unit of theirs, and whether zero is no value for them. */
const quantities: readonly (readonly [path: string, unit: string, zero: 'refused' | 'allowed'])[] = [
  ['tank.volume', 'L', 'refused'],
  ['tank.temperature', '°C', 'allowed'],
  ['tank.pH', '', 'refused'],
  ['tank.alkalinity', 'dKH', 'allowed'],
  ['tank.feed', 'g/d', 'allowed'],
  ['tank.protein', '%', 'allowed'],
  ['tank.waterChange.share', '%', 'allowed'],
  ['tank.waterChange.every', 'd', 'refused'],
  ['filter.measurements.baskets', '', 'refused'],
  ['filter.measurements.basketWidth', 'mm', 'refused'],
  ['filter.measurements.basketHeight', 'mm', 'refused'],
  ['filter.measurements.floorOpenFraction', '%', 'refused'],
  ['filter.pump.ratedFlow', 'L/h', 'refused'],
  ['filter.pump.shutoffHead', 'm', 'refused'],
  ['filter.pump.power', 'W', 'allowed'],
  ['filter.hoses.intake.length', 'm', 'allowed'],
  ['filter.hoses.intake.bore', 'mm', 'refused'],
  ['filter.hoses.outlet.bore', 'mm', 'refused'],
  ['filter.price', 'GBP', 'allowed'],
  ['filter.life', 'a', 'refused'],
  ['packing.basket-1[0].depth', 'mm', 'refused'],
  ['packing.basket-3[0].depth', 'mm', 'refused'],
  ['tests[0].volume', 'L', 'refused'],
  ['tests[0].times[0]', 's', 'refused'],
  ['tests[1].power', 'W', 'allowed'],
  ['money.tariff', 'GBP/kWh', 'allowed'],
  ['money.labour', 'GBP/h', 'allowed'],
];

/** Values that no quantity of this unit may have, with what is wrong with them. */
const badValues = (unit: string, zero: 'refused' | 'allowed'): readonly (readonly [string, string])[] => {
  const text = (value: string): string => JSON.stringify(`${value} ${unit}`.trim());
  const bad = [
    ['a unit that is none', '"5 blorks"'],
    ['a unit of another kind', '"5 kg"'],
    ['less than nothing', text('-999')],
    ['.nan', '.nan'],
    ['.inf', '.inf'],
    ['-.inf', '-.inf'],
    ['not a number, as text', text('NaN')],
    ['infinite, as text', text('Infinity')],
    ['an absurd size', text('1e30')],
    ['nothing', 'null'],
  ] as const;
  return zero === 'refused' ? [...bad, ['zero', text('0')]] : bad;
};

describe.each(quantities)('%s', (path, unit, zero) => {
  test.each(badValues(unit, zero))('%s', async (_what, yaml) => {
    await expectRefused(withValue(document, path, yaml), named(path));
  });
});

const namedFields = quantities.map(([path]) => path).filter((path) => !path.endsWith(']'));

describe('the name of a field', () => {
  test.each(namedFields)('%s misspelt: the right one is suggested', async (path) => {
    const name = String(stepsOf(path).at(-1));
    await expectRefused(renamed(document, path, `${name}s`), new RegExp(`${name}s.*nearest: ${name}\\b`));
  });

  test.each(namedFields)('%s twice', async (path) => {
    await expectRefused(twice(document, path), named(path));
  });

  test.each([
    'fettle',
    'tank',
    'tank.volume',
    'filter',
    'filter.family',
    'filter.measurements.baskets',
    'filter.measurements.basketWidth',
    'filter.pump',
    'packing.basket-1[0].medium',
    'tests[0].kind',
    'tests[0].volume',
    'money.currency',
  ])('%s missing', async (path) => {
    const text = without(document, path);
    if (path === 'money.currency') expect((await fettle('check', fileWith(text))).code).toBe(0);
    else await expectRefused(text, named(path));
  });
});

describe('what does not go together', () => {
  test('a chamber that is over-full says by how much', async () => {
    await expectRefused(demoWith('tall-drum', ['depth: 55 mm', 'depth: 85 mm']), /basket-2.*85.*58.*27/);
  });

  test('a medium larger than its chamber', async () => {
    const text = demoWith(
      'back-hanger',
      ['ceramic-rings-12mm, depth: 20 mm', 'my-blocks, depth: 20 mm'],
      ['shelf:', 'media: { my-blocks: { like: ceramic-rings-12mm, size: 130 mm } }\nshelf:'],
    );
    await expectRefused(text, /slot-2.*13\.0 cm.*only 22\.0 mm/);
  });

  test('an alteration both permitted and forbidden', async () => {
    const text = withValue(document, 'alterations', '{ permitted: [seal-gaps], forbidden: [seal-gaps] }');
    await expectRefused(text, /alterations.*seal-gaps/);
  });

  test('an alteration named twice', async () => {
    await expectRefused(
      withValue(document, 'alterations', '[seal-gaps, seal-gaps]'),
      /"seal-gaps" a second time/,
    );
  });

  test('an alteration that this family does not know', async () => {
    await expectRefused(withValue(document, 'alterations', '[turn-head]'), /turn-head/);
  });

  test('an alteration without its setting', async () => {
    await expectRefused(withValue(document, 'alterations', '[shorten-hose]'), /shorten-hose/);
  });

  test('a chamber that is not there', async () => {
    await expectRefused(withValue(document, 'packing.basket-9', '[]'), /basket-9/);
  });

  test('an unknown medium, fitting, stage word or family suggests the nearest', async () => {
    await expectRefused(
      demoWith('tall-drum', ['foam-30ppi, depth', 'foam-30pi, depth']),
      /nearest: foam-30ppi/,
    );
    await expectRefused(demoWith('tall-drum', ['[elbow-90]', '[elbow-9]']), /nearest: elbow-90/);
    await expectRefused(demoWith('tall-drum', ['planted: lightly', 'planted: lightlly']), /nearest: lightly/);
    await expectRefused(demoWith('tall-drum', ['basket-stack-canister', 'basket-stack']), /filter\.family/);
  });

  test('two currencies', async () => {
    await expectRefused(
      demoWith('tall-drum', ['0.27 GBP/kWh', '0.27 EUR/kWh']),
      /money\.tariff is in EUR.*GBP/,
    );
  });

  test('promised before it was received', async () => {
    await expectRefused(
      demoWith('tall-drum', ['promised: 2026-11-20', 'promised: 2026-10-20']),
      /job\.promised/,
    );
  });

  test('a curve that rises', async () => {
    const curve = '[{ flow: 0 L/h, head: 1 m }, { flow: 500 L/h, head: 1.2 m }]';
    await expectRefused(withValue(document, 'filter.pump.curve', curve), /filter\.pump\.curve/);
  });

  test('a day that is none', async () => {
    await expectRefused(demoWith('tall-drum', ['2026-11-02', '2026-02-30']), /job\.received.*2026-02-30/);
  });

  test('a figure without a unit, and one with a decimal comma that may be read two ways', async () => {
    await expectRefused(demoWith('tall-drum', ['850 L/h\n', '850\n']), /filter\.pump\.ratedFlow/);
    await expectRefused(
      demoWith('tall-drum', ['ratedFlow: 850 L/h', 'ratedFlow: 1.000 L/h']),
      /filter\.pump\.ratedFlow/,
    );
    await expectRefused(
      demoWith('tall-drum', ['ratedFlow: 850 L/h', 'ratedFlow: 850 gal/h']),
      /filter\.pump\.ratedFlow/,
    );
  });

  test('every problem is told at once, in the order of the text', async () => {
    const text = demoWith(
      'tall-drum',
      ['180 L ± 5 L', '-180 L'],
      ['850 L/h\n', '850 blorks\n'],
      ['0.27 GBP/kWh', '0.27 kg'],
    );
    const { err } = await fettle('claims', fileWith(text));
    const places = ['tank.volume', 'filter.pump.ratedFlow', 'money.tariff'].map((path) => err.indexOf(path));
    expect(places).toEqual(places.toSorted((one, other) => one - other));
    expect(places.every((place) => place >= 0)).toBe(true);
    expect(err).toMatch(/^line \d+: /);
  });
});
