import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { outOfDate } from './pictures.ts';

test('a picture that is missing, changed or made by nothing is out of date', () => {
  const folder = mkdtempSync(join(tmpdir(), 'pictures-'));
  const made = ['same', 'changed', 'missing'].map((name) => ({
    name: `${name}.svg`,
    text: `<svg>${name}</svg>`,
  }));
  writeFileSync(join(folder, 'same.svg'), '<svg>same</svg>');
  writeFileSync(join(folder, 'changed.svg'), '<svg>another</svg>');
  writeFileSync(join(folder, 'left-over.svg'), '<svg/>');
  expect(outOfDate(made, folder)).toEqual(['changed.svg', 'left-over.svg', 'missing.svg']);
  rmSync(folder, { recursive: true });
  expect(outOfDate(made, folder)).toEqual(['changed.svg', 'missing.svg', 'same.svg']);
});
