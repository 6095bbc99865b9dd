import type { Measurements } from '../../model/model.ts';

/** Invented filters of each kind by their measurements, SI: the same in every test that needs one. */
export const sizes = {
  stack: { baskets: 3, basketWidth: 0.16, basketDepth: 0.16, basketHeight: 0.06 },
  halves: { innerWidth: 0.222, innerDepth: 0.15, innerHeight: 0.225, traysPerSide: 2 },
  tube: { housingBore: 0.188, mediaDiameter: 0.16, mediaLength: 0.21, tubeDiameter: 0.04 },
  cartridge: { housingBore: 0.13, mediaDiameter: 0.108, mediaLength: 0.18, tubeDiameter: 0.034 },
  internal: { innerWidth: 0.061, innerDepth: 0.041, innerHeight: 0.156, chambers: 2, slotArea: 0.0006 },
  sump: {
    boxDepth: 0.3,
    boxHeight: 0.4,
    sockSection: 0.16,
    mediaSection: 0.28,
    returnSection: 0.22,
    firstBaffle: 0.29,
    baffleFoot: 0.03,
    mediaBaffle: 0.275,
    lastBaffle: 0.22,
    returnLevel: 0.19,
    lift: 1.2,
    sockRim: 0.345,
    sockLength: 0.2,
    mediaHeight: 0.18,
  },
  tower: {
    boxDepth: 0.3,
    boxHeight: 0.35,
    boxLength: 0.52,
    returnLevel: 0.15,
    lift: 1.1,
    towerLength: 0.24,
    towerDepth: 0.24,
    towerHeight: 0.42,
    layers: 2,
    plateRim: 0.06,
    holes: 160,
  },
} as const satisfies Readonly<Record<string, Measurements>>;
