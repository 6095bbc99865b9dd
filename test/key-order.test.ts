import { basename } from 'node:path';
import { expect, test } from 'vitest';
import { documentOf, shuffled } from './support/documents.ts';
import { demos, fettle, fileWith } from './support/program.ts';
import { figuresOf } from './support/results.ts';

const names = demos.map((path) => basename(path, '.yaml'));

const figuresIn = (file: string, ...words: readonly string[]) => {
  const { code, out } = fettle(...words, file, '--json');
  expect(code).toBe(0);
  return figuresOf(JSON.parse(out));
};

const expectSame = (one: ReturnType<typeof figuresIn>, other: ReturnType<typeof figuresIn>) => {
  const byPath = (figures: typeof one) => new Map(figures.map((figure) => [figure.path, figure]));
  const others = byPath(other);
  expect([...others.keys()].toSorted()).toEqual([...byPath(one).keys()].toSorted());
  for (const { path, value, unit } of one) {
    const there = others.get(path)!;
    expect(there.unit, path).toBe(unit);
    expect(Math.abs(there.value - value), path).toBeLessThanOrEqual(1e-12 * Math.abs(value));
  }
};

test.each(names)('the order of the fields of %s changes no figure', (name) => {
  const document = documentOf(name);
  const plain = figuresIn(fileWith(JSON.stringify(document)), 'assess');
  for (const seed of [1, 2]) {
    const text = JSON.stringify(shuffled(document, seed));
    expect(text).not.toBe(JSON.stringify(document));
    expectSame(plain, figuresIn(fileWith(text), 'assess'));
  }
});

test('nor does it change a plan', () => {
  const document = documentOf('two-halves');
  const words = ['plan', '--cap', '60', '--budget', '10'];
  expectSame(
    figuresIn(fileWith(JSON.stringify(document)), ...words),
    figuresIn(fileWith(JSON.stringify(shuffled(document, 3))), ...words),
  );
});

test('the same document in YAML and in JSON gives the same figures', () => {
  for (const path of demos)
    expectSame(
      figuresIn(path, 'assess'),
      figuresIn(fileWith(JSON.stringify(documentOf(basename(path, '.yaml')))), 'assess'),
    );
});
