import { Resvg } from '@resvg/resvg-js';
import { fontFiles } from '../fonts.ts';

/**
 * A drawing as a picture of so many pixels across, with the same fonts on every machine.
 *
 * @param svg a whole SVG document
 * @returns the bytes of a PNG file
 */
export const toPng = (svg: string, widthPixels: number): Uint8Array =>
  new Resvg(svg, {
    fitTo: { mode: 'width', value: widthPixels },
    font: { fontFiles: [...fontFiles()], loadSystemFonts: false, defaultFontFamily: 'IBM Plex Sans' },
  })
    .render()
    .asPng();
