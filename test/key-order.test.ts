import { basename } from 'node:path';
import { expect, test } from 'vitest';
import { documentOf, shuffled } from './support/documents.ts';
import { demos, fettle, fileWith } from './support/program.ts';
import { figuresOf } from './support/results.ts';

const names = demos.map((path) => basename(path, '.yaml'));

const figuresIn = async (file: string, ...words: readonly string[]) => {
  const { code, out } = await fettle(...words, file, '--json');
  expect(code).toBe(0);
  return figuresOf(JSON.parse(out));
};

type Figures = ReturnType<typeof figuresOf>;

const expectSame = (one: Figures, other: Figures) => {
  const byPath = (figures: Figures) => new Map(figures.map((figure) => [figure.path, figure]));
  const others = byPath(other);
  expect([...others.keys()].toSorted()).toEqual([...byPath(one).keys()].toSorted());
  for (const { path, value, unit } of one) {
    const there = others.get(path)!;
    expect(there.unit, path).toBe(unit);
    expect(Math.abs(there.value - value), path).toBeLessThanOrEqual(1e-12 * Math.abs(value));
  }
};

test.each(names)('the order of the fields of %s changes no figure', async (name) => {
  const document = documentOf(name);
  const plain = await figuresIn(fileWith(JSON.stringify(document)), 'assess');
  for (const seed of [1, 2]) {
    const text = JSON.stringify(shuffled(document, seed));
    expect(text).not.toBe(JSON.stringify(document));
    expectSame(plain, await figuresIn(fileWith(text), 'assess'));
  }
});

test('nor does it change a plan', async () => {
  const document = documentOf('two-halves');
  const words = ['plan', '--cap', '60', '--budget', '10'];
  expectSame(
    await figuresIn(fileWith(JSON.stringify(document)), ...words),
    await figuresIn(fileWith(JSON.stringify(shuffled(document, 3))), ...words),
  );
});

test('the same document in YAML and in JSON gives the same figures', async () => {
  for (const path of demos)
    expectSame(
      await figuresIn(path, 'assess'),
      await figuresIn(fileWith(JSON.stringify(documentOf(basename(path, '.yaml')))), 'assess'),
    );
});
