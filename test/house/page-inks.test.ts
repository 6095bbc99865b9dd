import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { palettes, themes } from '@fettle/drawing/tokens.ts';
import { describe, expect, test } from 'vitest';
import { projectRoot } from '../../scripts/sources.ts';

const css = readFileSync(resolve(projectRoot, 'packages/web/look/tokens.css'), 'utf8');

/** What the page's variables are by day, by night and in print. */
const blocks = [...css.matchAll(/:root \{([^}]*)\}/g)].map(([, block = '']) => block);

describe('the inks of drawings in the workbench', () => {
  test.each(themes.map((theme, index) => [theme, index] as const))(
    '%s: are those of the drawing itself',
    (theme, index) => {
      const drawn = [...(blocks[index] ?? '').matchAll(/--drawn-(\w+): (#[0-9a-f]{6});/g)];
      expect(Object.fromEntries(drawn.map(([, name, value]) => [name, value]))).toEqual(palettes[theme]);
    },
  );

  test('are all that a drawing asks for', () => {
    const asked = Object.values(palettes.page).map((ink) => /^var\(--drawn-(\w+)\)$/.exec(ink)?.[1]);
    expect(asked).toEqual(Object.keys(palettes.light));
  });
});
