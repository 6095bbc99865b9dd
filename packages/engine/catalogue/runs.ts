import type { Figure } from '../model/figure.ts';
import { fromMemory, times } from './figureOf.ts';

/** Roughness of a film in a hose over its thickness, 1. */
export const filmRoughnessRatio: Figure = fromMemory(
  1,
  times(3),
  'slime waves with the water; thin films of less than a tenth of a millimetre are smoother than they are thick',
);

/** Head that a pump takes that stands still, at its free flow, over the head that it gives at rest when it runs, 1. */
export const standingPumpLoss: Figure = fromMemory(
  1,
  times(3),
  'water finds its way round the vanes of a magnet-driven impeller that does not turn; measure it',
);

/** Holes of a spray bar: their bore, m, and their area together over that of the hose's bore, 1. */
export const sprayBarHoleM: Figure = fromMemory(0.003, times(1.5), 'holes of 2 to 4 mm; measure them');
export const sprayBarOpenRatio: Figure = fromMemory(0.9, times(1.5), 'as the loss of a spray bar is taken');

/** Mouth of a narrowed nozzle over the bore of its hose, 1. */
export const nozzleBoreRatio: Figure = fromMemory(0.7, times(1.2), 'as the loss of a nozzle is taken');

/** Current that weak swimmers stand for long, m/s. */
export const weakSwimmersStand: Figure = fromMemory(
  0.1,
  times(2),
  'long-finned and still-water fish of about 5 cm hold about two body lengths a second for hours; fry and shrimp less',
);
