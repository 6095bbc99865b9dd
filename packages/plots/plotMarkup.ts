import { sizes } from '@fettle/drawing/tokens.ts';
import type { ReactElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';

/** A plot as an SVG document that says how large it is, as drawings do: for paper, and for pages that stand by themselves. */
export const plotMarkup = (plot: ReactElement): string => {
  const svg = renderToStaticMarkup(plot);
  const height = /viewBox="0 0 [\d.]+ ([\d.]+)"/.exec(svg)?.[1] ?? '';
  const size = `width="${sizes.sheetWidth}mm" height="${height}mm" style="max-width:100%;height:auto"`;
  return svg.replace('<svg ', `<svg ${size} `);
};
