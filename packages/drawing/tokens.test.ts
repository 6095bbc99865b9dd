import { describe, expect, it } from 'vitest';
import { palettes, sizes, themes } from './tokens.ts';

/** Relative luminance and contrast ratio as WCAG 2.2 defines them (W3C Recommendation, 2023). */
function luminance(hex: string): number {
  const [red, green, blue] = [1, 3, 5]
    .map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * (red ?? 0) + 0.7152 * (green ?? 0) + 0.0722 * (blue ?? 0);
}

function contrast(one: string, other: string): number {
  const [dark, light] = [luminance(one), luminance(other)].toSorted((a, b) => a - b);
  return ((light ?? 0) + 0.05) / ((dark ?? 0) + 0.05);
}

describe.each(themes)('%s inks on their paper', (theme) => {
  const palette = palettes[theme];

  it('reach 4.5 to 1 for words', () => {
    for (const ink of [palette.ink, palette.softInk, palette.fault]) {
      expect(contrast(ink, palette.paper)).toBeGreaterThanOrEqual(4.5);
    }
  });

  it('reach 3 to 1 for ribbons and the arrows on them', () => {
    expect(contrast(palette.water, palette.paper)).toBeGreaterThanOrEqual(3);
  });

  it('reach 3 to 1 for arrows and hatching over the tint of water, and 4.5 to 1 for outlines', () => {
    expect(contrast(palette.water, palette.waterTint)).toBeGreaterThanOrEqual(3);
    expect(contrast(palette.hatch, palette.waterTint)).toBeGreaterThanOrEqual(3);
    expect(contrast(palette.hatch, palette.paper)).toBeGreaterThanOrEqual(3);
    expect(contrast(palette.ink, palette.waterTint)).toBeGreaterThanOrEqual(4.5);
  });

  it('set the arrows of water off from the hatching behind them', () => {
    expect(contrast(palette.water, palette.waterTint)).toBeGreaterThan(
      contrast(palette.hatch, palette.waterTint),
    );
  });
});

describe('sizes', () => {
  it('keep words 11 pixels high on a telephone 390 pixels wide with margins of 16', () => {
    expect((sizes.text * (390 - 32)) / sizes.sheetWidth).toBeGreaterThanOrEqual(11);
  });

  it('print in one colour without any hue', () => {
    for (const colour of Object.values(palettes.print)) {
      expect(new Set(colour.slice(1).match(/../g)).size).toBe(1);
    }
  });
});
