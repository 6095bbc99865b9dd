import { describe, expect, test } from 'vitest';
import { readQuantity } from './readQuantity.ts';

describe('a doubt that leaves nothing of its figure', () => {
  test.each(['5 L ± 1e30 L', '5 L ± 20000 %', '5 L ×/÷ 5000'])('is refused: %s', (text) => {
    expect(readQuantity(text, 'volume')).toMatchObject({ ok: false, code: 'bad-doubt' });
  });

  test.each(['5 L ± 6 L', '5 L ×/÷ 20', '0 L ± 1 L'])('may be wide: %s', (text) => {
    expect(readQuantity(text, 'volume')).toMatchObject({ ok: true });
  });
});

describe('a doubt of a figure that cannot be below 0', () => {
  test.each([
    ['150 L ± 200 %', { least: 0 }],
    ['150 L ± 100 %', { above: 0 }],
    ['150 L +/- 150 L', { above: 0 }],
    ['0.3 L ± 100 %', { least: 1e-6 }],
  ])('is smaller than the figure: %s is refused', (text, allowed) => {
    const reading = readQuantity(text, 'volume', allowed);
    expect(reading).toMatchObject({ ok: false, code: 'bad-doubt' });
    expect(reading.ok ? '' : reading.says).toMatch(/larg.* figure, .* L, .*; allowed: .*100 %/);
  });

  test.each(['150 L ± 99 %', '150 L ×/÷ 20', '0 L ± 1 L', '0.25 L ± 0.25 L'])('may be wide: %s', (text) => {
    expect(readQuantity(text, 'volume', { least: 0 })).toMatchObject({ ok: true });
  });

  test('may be larger where the figure can be on either side of 0', () => {
    expect(readQuantity('1 K ± 2 K', 'temperature-difference', { least: -5 })).toMatchObject({ ok: true });
    expect(readQuantity('1 °C ± 2 °C', 'temperature', { least: 273.15 })).toMatchObject({ ok: true });
  });
});
