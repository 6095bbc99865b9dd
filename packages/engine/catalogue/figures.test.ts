import { describe, expect, it } from 'vitest';
import type { Doubt, Figure } from '../model/figure.ts';
import { bodyShapes } from './bodyShapes.ts';
import { fish } from './fish.ts';
import { fittings } from './fittings.ts';
import { hoses } from './hoses.ts';
import { media } from './media.ts';
import { stockClasses } from './stock.ts';

const catalogue = { media, fittings, hoses, stockClasses, fish };

const isFigure = (value: object): value is Figure => 'value' in value && 'source' in value;

/** Every figure below an entry, with the way to it. */
const figuresOf = (entry: object, path: string): [path: string, figure: Figure][] =>
  Object.entries(entry).flatMap(([key, value]: [string, unknown]): [string, Figure][] => {
    if (typeof value !== 'object' || value === null) return [];
    const at = `${path}.${key}`;
    return isFigure(value) ? [[at, value]] : figuresOf(value, at);
  });

const all = Object.entries(catalogue).flatMap(([table, entries]) => figuresOf(entries, table));

/** 0 is right for these alone: nothing is left of what is replaced, and a fixed loss has no laminar term. */
const mayBeZero = /\.(bacteriaKept|k1)$/;

const doubtProblem = ({ value, doubt }: Figure): string | undefined => {
  if (doubt === undefined) return value === 0 ? undefined : 'has no doubt';
  return sizeProblem(doubt, value);
};

const sizeProblem = ({ kind, size }: Doubt, value: number): string | undefined => {
  if (kind === 'factor') return size > 1 && size < 20 ? undefined : `factor ${size}`;
  return size > 0 && size < value ? undefined : `± ${size} of ${value}`;
};

const marks: Partial<Record<Figure['source']['kind'], string>> = {
  memory: 'from memory',
  'common-practice': 'common practice, no source',
};

describe('every figure of the catalogue', () => {
  it('is found: several hundred of them', () => {
    expect(all.length).toBeGreaterThan(400);
  });

  it('is finite and above zero', () => {
    const wrong = all.filter(
      ([path, { value }]) =>
        !(Number.isFinite(value) && (value > 0 || (value === 0 && mayBeZero.test(path)))),
    );
    expect(wrong.map(([path]) => path)).toEqual([]);
  });

  it('has a doubt that makes sense', () => {
    const wrong = all.map(([path, figure]) => [path, doubtProblem(figure)]).filter(([, problem]) => problem);
    expect(wrong).toEqual([]);
  });

  it('says where it comes from, with the mark of its kind', () => {
    const wrong = all.filter(
      ([, { source }]) => source.text.trim().length < 8 || !source.text.startsWith(marks[source.kind] ?? ''),
    );
    expect(wrong.map(([path]) => path)).toEqual([]);
  });
});

describe.each(Object.entries(catalogue))('the table of %s', (_, entries) => {
  it('is keyed by the id of each entry', () => {
    const ids = Object.values(entries).map(({ id }: { id: string }) => id);
    expect(ids).toEqual(Object.keys(entries));
  });

  it('has short ids in lower case', () => {
    expect(Object.keys(entries).filter((id) => !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id))).toEqual([]);
  });

  it('gives no name twice', () => {
    const names = Object.values(entries).map(({ name }: { name: string }) => name);
    expect(new Set(names).size).toBe(names.length);
  });
});

describe('body shapes', () => {
  it('weigh more at one length the stouter they are', () => {
    const at10cm = (['eel-like', 'elongated', 'fusiform', 'short-deep'] as const).map(
      (shape) => bodyShapes[shape].a.value * 10 ** bodyShapes[shape].b.value,
    );
    expect(at10cm).toEqual(at10cm.toSorted((one, other) => one - other));
  });
});
