import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const rooms = fileURLToPath(new URL('../packages/engine/laws/', import.meta.url));

const paths = readdirSync(rooms, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && entry.name.endsWith('.ts') && !entry.name.endsWith('.test.ts'))
  .map((entry) => join(entry.parentPath, entry.name));

const modules = await Promise.all(paths.map((path): Promise<Record<string, unknown>> => import(path)));
const exported = modules.flatMap((module) => Object.entries(module));
const laws = new Set(exported.filter(([, value]) => typeof value === 'function').map(([name]) => name));
const ranges = exported.filter(([name]) => name.endsWith('Range'));

const bounds = (range: unknown): { least: number; most: number }[] =>
  Object.values(typeof range === 'object' && range !== null ? range : {});

test('there are ranges', () => {
  expect(ranges.length).toBeGreaterThan(30);
});

test.each(ranges)('%s holds at least one pair of bounds, the least below the most', (_name, range) => {
  expect(bounds(range).length).toBeGreaterThan(0);
  for (const { least, most } of bounds(range)) expect(least).toBeLessThan(most);
});

test('each range has the name of a law or of a group of laws', () => {
  const groups = [
    'affinityRange',
    'carbonDioxideRange',
    'solidsDecayRange',
    'foamDietrich2012Range',
    'tanksInSeriesRange',
  ];
  const strangers = ranges
    .map(([name]) => name)
    .filter((name) => !laws.has(name.replace(/Range$/, '')) && !groups.includes(name));
  expect(strangers).toEqual([]);
});
