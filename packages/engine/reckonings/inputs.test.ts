import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exampleOf, type Pair, reckon } from './reckon.ts';
import type { Input } from './reckoning.ts';
import { reckonings } from './reckonings.ts';
import { pairs, problems } from './testing/worked.ts';

const all = Object.values(reckonings);

const without = (given: readonly Pair[], key: string): Pair[] => given.filter((pair) => pair.key !== key);

/** The whole example with one key's text in place of its own. */
const withText = (name: string, key: string, text: string): Pair[] => [
  ...without(exampleOf(reckonings[name]!), key),
  { key, text },
];

const everyInput = all.flatMap(({ name, inputs }) =>
  Object.entries(inputs).map(([key, input]) => ({ name, key, input })),
);
const isQuantity = ({ words, takes }: Input<unknown>): boolean =>
  words === undefined && !/^the id|^a number with its unit$|^a unit of/.test(takes);
const quantities = everyInput.filter(({ input }) => isQuantity(input));
const positive = quantities.filter(({ input }) => /more than 0/.test(input.takes));

describe('every reckoning', () => {
  test.each(all)('$name works with its own examples of inputs, the optional ones too', ({ name, inputs }) => {
    expect(problems(name, exampleOf(reckonings[name]!))).toEqual([]);
    const whole = Object.entries(inputs).flatMap(([key, { example }]) =>
      example.map((text) => ({ key, text })),
    );
    expect(problems(name, whole)).toEqual([]);
  });

  test.each(all)(
    '$name answers with a value for every result it declares, in its unit',
    ({ name, inputs, results }) => {
      const whole = Object.entries(inputs).flatMap(([key, { example }]) =>
        example.map((text) => ({ key, text })),
      );
      const reckoned = reckon(name, whole);
      if (!reckoned.ok) throw new Error(JSON.stringify(reckoned.problems));
      const named = Object.keys(results).filter((key) => !/^doubt/.test(key) || name === 'timed-flow');
      expect(Object.keys(reckoned.results)).toEqual(named);
      for (const [key, result] of Object.entries(reckoned.results))
        if (typeof result === 'object') {
          expect(Number.isFinite(result.value)).toBe(true);
          if (results[key]?.unit !== undefined) expect(result.unit).toBe(results[key].unit);
        }
    },
  );

  test.each(all)('$name says its sources and what it is in one sentence', ({ says, source, formula }) => {
    expect(says).toMatch(/^[A-Z].*[^.]\.$/);
    expect(source).not.toBe('');
    expect(formula).not.toBe('');
  });
});

describe('bad inputs are problems at their key', () => {
  test.each(quantities)('$name: $key that is no number', ({ name, key }) => {
    for (const text of ['NaN', 'Infinity', 'a lot', '', '-', '1e999']) {
      const found = problems(name, withText(name, key, text));
      expect(
        found.map(({ path }) => path),
        text,
      ).toEqual([key]);
    }
  });

  test.each(quantities)('$name: $key in a unit of another kind', ({ name, key }) => {
    const found = problems(name, withText(name, key, '5 mol'));
    expect(found.map(({ path }) => path)).toEqual([key]);
    expect(problems(name, withText(name, key, '3 m4')).map(({ path }) => path)).toEqual([key]);
  });

  test.each(quantities.filter(({ input }) => /0/.test(input.takes)))(
    '$name: $key below nought',
    ({ name, key, input }) => {
      const text = input.example[0]!.replace(/^/, '-');
      const found = problems(name, withText(name, key, text));
      expect(found.map(({ path, code }) => [path, /^(below-least|not-above)$/.test(code)])).toEqual([
        [key, true],
      ]);
    },
  );

  test.each(positive)('$name: $key of nothing', ({ name, key, input }) => {
    const text = input.example[0]!.replace(/^[\d.]+/, '0');
    expect(problems(name, withText(name, key, text)).map(({ path, code }) => [path, code])).toEqual([
      [key, 'not-above'],
    ]);
  });

  test.each(everyInput.filter(({ input }) => input.required))('$name: $key missing', ({ name, key }) => {
    const found = problems(name, without(exampleOf(reckonings[name]!), key));
    expect(found.map(({ path, code }) => [path, code])).toEqual([[key, 'missing-key']]);
    expect(found[0]!.allowed).toContain(`${key}="`);
  });

  test.each(everyInput)('$name: $key misspelt', ({ name, key, input }) => {
    const misspelt = `${key}x`;
    const given = [...without(exampleOf(reckonings[name]!), key), { key: misspelt, text: input.example[0]! }];
    const unknown = problems(name, given).find(({ code }) => code === 'unknown-key');
    expect(unknown?.path).toBe(misspelt);
    if (key.length > 1) expect(unknown?.says).toContain(`perhaps ${key}`);
  });

  test.each(everyInput.filter(({ input }) => !input.repeats))(
    '$name: $key given twice',
    ({ name, key, input }) => {
      const text = input.example[0]!;
      const given = [...without(exampleOf(reckonings[name]!), key), { key, text }, { key, text }];
      expect(problems(name, given).map(({ path, code }) => [path, code])).toEqual([[key, 'duplicate-key']]);
    },
  );

  test.each(everyInput.filter(({ input }) => !isQuantity(input)))(
    '$name: $key with an odd word',
    ({ name, key }) => {
      const found = problems(name, withText(name, key, 'humbug'));
      expect(found.length).toBe(1);
      expect(found[0]!.allowed).not.toBe('');
    },
  );

  test('a name that is not known names the nearest', () => {
    const [problem] = problems('hose-los', []);
    expect(problem).toMatchObject({ code: 'unknown-reckoning', path: '' });
    expect(problem?.says).toContain('perhaps hose-loss');
    expect(problems('constructor', [])[0]?.code).toBe('unknown-reckoning');
  });

  test('a medium that is named by its beginning, or nearly, names the nearest', () => {
    const said = (medium: string) => problems('bed-area', pairs(`medium=${medium}`, 'volume=1 L'))[0]?.says;
    expect(said('sintered-glass-rings')).toContain('perhaps sintered-glass-rings-15mm');
    expect(said('foam-20pi')).toContain('perhaps foam-20ppi');
  });

  test('all problems are told at once', () => {
    const found = problems('hose-loss', pairs('flow=-1 L/h', 'bore=12 kg', 'lenght=2 m'));
    expect(found.map(({ path, code }) => `${path} ${code}`)).toEqual([
      'lenght unknown-key',
      'flow below-least',
      'bore wrong-dimension',
    ]);
  });

  test.each([
    ['below absolute zero', 'water-density', 'temperature=-300 °C', 'below-absolute-zero'],
    ['a share above the whole', 'bed-loss', 'voidage=140 %', 'above-most'],
    ['pH past the scale', 'ammonia-criteria', 'pH=70', 'above-most'],
    ['a bare gallon', 'turnover', 'volume=40 gal', 'ambiguous-unit'],
    ['nitrogen counted as chalk', 'challenge-dose', 'target=2 mg/L CaCO3', 'unknown-basis'],
    ['a fitting that is not on the shelf', 'fitting-loss', 'fitting=elbow-91', 'unknown-word'],
  ])('%s', (_what, name, text, code) => {
    const [pair] = pairs(text);
    expect(problems(name, withText(name, pair!.key, pair!.text)).map((problem) => problem.code)).toEqual([
      code,
    ]);
  });

  test('the wall law needs the vessel', () => {
    const given = [...exampleOf(reckonings['bed-loss']!), ...pairs('law=eisfeld')];
    expect(problems('bed-loss', given).map(({ path, code }) => [path, code])).toEqual([
      ['vessel', 'missing-key'],
    ]);
  });

  test('so far outside that the law breaks down is a problem, not a value', () => {
    const found = problems('oxygen-saturation', pairs('temperature=90 °C', 'pressure=0.5 atm'));
    expect(found.map(({ code }) => code)).toEqual(['no-answer']);
  });
});

describe('whatever is written', () => {
  const number = fc.oneof(
    fc.double({ noNaN: true, noDefaultInfinity: true }).map(String),
    fc.integer({ min: -3, max: 3 }).map((power) => `1e${10 * power}`),
    fc.constantFrom('0', '-0', '1', '1.000', '1e308', '1e-308'),
  );
  const textFor = (input: Input<unknown>) => {
    const unit = input.example[0]!.replace(/^[\d.]+( ± [\d.]+)?/, '');
    const words = input.words ?? input.example;
    return fc.oneof(
      number.map((each) => each + unit),
      fc.constantFrom(...words),
      fc.string(),
    );
  };

  test.each(all)('$name answers with numbers or says what is wrong', ({ name, inputs }) => {
    const given = fc.record(
      Object.fromEntries(Object.entries(inputs).map(([key, input]) => [key, textFor(input)])),
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(given, (texts) => {
        const reckoned = reckon(
          name,
          Object.entries(texts).map(([key, text]) => ({ key, text: text ?? '' })),
        );
        if (!reckoned.ok) {
          expect(reckoned.problems.length).toBeGreaterThan(0);
          for (const { says } of reckoned.problems) expect(says).not.toBe('');
          return;
        }
        for (const result of Object.values(reckoned.results))
          if (typeof result === 'object') expect(Number.isFinite(result.value)).toBe(true);
      }),
      { seed: 1, numRuns: 400 },
    );
  });
});
