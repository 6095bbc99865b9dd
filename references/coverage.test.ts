import { readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { loadCases } from './cases.ts';
import { laws } from './laws.ts';

const rooms = fileURLToPath(new URL('../packages/engine/laws/', import.meta.url));

const files = readdirSync(rooms, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && entry.name.endsWith('.ts') && !entry.name.endsWith('.test.ts'))
  .map((entry) => join(entry.parentPath, entry.name));

const exportedLaws = async (path: string): Promise<string[]> => {
  const module: Record<string, unknown> = await import(path);
  return Object.entries(module)
    .filter(([, value]) => typeof value === 'function')
    .map(([name]) => name);
};

const found = await Promise.all(
  files.map(async (path) => ({ room: dirname(path.slice(rooms.length)), names: await exportedLaws(path) })),
);
const cases = loadCases();

/** Laws that no entry is named after, because the entry of another law ends in them. */
const reachedBy: Readonly<Record<string, string>> = {
  pressureGradient: 'bedResistanceErgun1952',
  pumpHeadPowerForm: 'pumpPowerForm',
  morrillIndex: 'summariseRoutes',
};

const lawOf = (key: string): string => key.split('.')[0]!;
const countOf = (name: string): number =>
  cases.filter((each) => lawOf(each.law) === (reachedBy[name] ?? name)).length;

describe.each([...new Set(found.map((each) => each.room))].filter((room) => room !== '.'))(
  'laws/%s',
  (room) => {
    const names = found.filter((each) => each.room === room).flatMap((each) => each.names);

    test('has laws', () => {
      expect(names.length).toBeGreaterThan(0);
    });

    test.each(names)('%s has at least two cases', (name) => {
      expect(countOf(name)).toBeGreaterThanOrEqual(2);
    });
  },
);

test('every entry of the registry is used', () => {
  const used = new Set(cases.map((each) => each.law));
  expect(Object.keys(laws).filter((key) => !used.has(key))).toEqual([]);
});
