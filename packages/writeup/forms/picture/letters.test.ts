import { textWidth } from '@fettle/drawing/textWidth.ts';
import { fontFamily } from '@fettle/drawing/tokens.ts';
import { Resvg } from '@resvg/resvg-js';
import { describe, expect, it } from 'vitest';
import { demoNames, demoSource } from '../../testing/sources.ts';
import { languages } from '../../texts/languages.ts';
import { writeUpDocument } from '../../writeUp.ts';
import { fontFiles } from '../fonts.ts';

const size = 100;

/** Width of words as they are drawn, over their size, by the picture's own fonts. */
const drawnWidth = (markup: string, isBold: boolean): number => {
  const weight = isBold ? 'bold' : 'normal';
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="9000" height="200"><text y="${size}" font-size="${size}" font-weight="${weight}" font-family="${fontFamily}">${markup}</text></svg>`;
  const font = { fontFiles: [...fontFiles()], loadSystemFonts: false };
  return (new Resvg(svg, { font }).getBBox()?.width ?? 0) / size;
};

const signs: Readonly<Record<string, string>> = { '&lt;': '<', '&gt;': '>', '&#39;': "'", '&amp;': '&' };

describe('letters on drawings, in the face of the text round them', () => {
  it.each(demoNames)('%s: no words are wider than the room that the drawing keeps for them', (name) => {
    const drawings = Object.values(languages).flatMap((language) =>
      (['build', 'cards'] as const).flatMap((document) =>
        Object.values(
          writeUpDocument(demoSource(name, 'planned'), { name: document, theme: 'print', language }).drawings,
        ),
      ),
    );
    const words = new Map(
      drawings.flatMap((svg) =>
        [...svg.matchAll(/<text([^>]*)>([^<]+)<\/text>/g)].map(
          ([, attributes = '', markup = '']) => [markup, attributes.includes('bold')] as const,
        ),
      ),
    );
    expect(words.size).toBeGreaterThan(20);
    for (const [markup, isBold] of words) {
      const plain = markup.replace(/&[#\w]+;/g, (sign) => signs[sign] ?? sign);
      expect(drawnWidth(markup, isBold), plain).toBeLessThanOrEqual(
        textWidth(plain, { size: 1, bold: isBold }),
      );
    }
  });
});
