import * as z from 'zod';
import { quantity } from './fields.ts';

const height = (says: string, example: string, bounds: { readonly least: string; readonly most: string }) =>
  quantity({ dimension: 'length', says, example, ...bounds }).optional();

const depths = { least: '0 cm', most: '5 m' } as const;

/** How the filter stands about the tank. */
export const placingSchema = z.strictObject({
  hump: height("highest point of the hoses above the tank's surface", '12 cm', depths),
  lidDepth: height("lid of the filter below the tank's surface; below 0 where it stands higher", '0.9 m', {
    least: '-5 m',
    most: '10 m',
  }),
  intakeDepth: height('mouth of the intake below the surface', '35 cm', depths),
  intakeHole: height('air hole in the intake below the surface', '3 cm', depths),
  returnDepth: height('mouth of the return below the surface; 0 where it is free', '5 cm', depths),
  returnHole: height('air hole in the return below the surface', '1 cm', depths),
  surfaceRise: height(
    'rise of the surface above the edge that it runs over into a sump, while the pump runs',
    '3 cm',
    { least: '0 cm', most: '50 cm' },
  ),
  spareVolume: quantity({
    dimension: 'volume',
    says: 'water that sump or tray can take up',
    example: '15 L',
    least: '0 L',
    most: '10 m3',
  }).optional(),
});
