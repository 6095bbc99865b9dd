import { pressedFoam, solidFractionOfMass } from '@fettle/engine/laws/hydraulics/compression.ts';
import { cornerWay } from '@fettle/engine/laws/hydraulics/corner.ts';
import {
  sizeOfMixtureSauter1928,
  voidageOfMixtureWestman1936,
} from '@fettle/engine/laws/hydraulics/mixture.ts';
import { adapter, type Registry } from './adapter.ts';

const mixture = {
  coarseM: 'm',
  coarseVoidage: '1',
  fineM: 'm',
  fineVoidage: '1',
  coarseShare: '1',
} as const;

const mixtureOf = (two: Readonly<Record<keyof typeof mixture, number>>) => ({
  coarse: { sizeM: two.coarseM, voidage: two.coarseVoidage },
  fine: { sizeM: two.fineM, voidage: two.fineVoidage },
  coarseShare: two.coarseShare,
});

export const packingLaws = {
  'pressedFoam.cell': adapter({
    inputs: { cellM: 'm', voidage: '1', pressedRatio: '1' },
    result: 'm',
    compute: (foam) => pressedFoam(foam).cellM,
  }),
  'pressedFoam.voidage': adapter({
    inputs: { cellM: 'm', voidage: '1', pressedRatio: '1' },
    result: '1',
    compute: (foam) => pressedFoam(foam).voidage,
  }),
  solidFractionOfMass: adapter({
    inputs: { massKg: 'kg', roomM3: 'm3', fibreDensityKgPerM3: 'kg/m3' },
    result: '1',
    compute: solidFractionOfMass,
  }),
  'cornerWay.area': adapter({
    inputs: { radiusM: 'm' },
    result: 'm2',
    compute: (bag) => cornerWay(bag).areaM2,
  }),
  'cornerWay.diameter': adapter({
    inputs: { radiusM: 'm' },
    result: 'm',
    compute: (bag) => cornerWay(bag).hydraulicDiameterM,
  }),
  voidageOfMixtureWestman1936: adapter({
    inputs: mixture,
    result: '1',
    compute: (two) => voidageOfMixtureWestman1936(mixtureOf(two)),
  }),
  'voidageOfMixtureWestman1936.solid': adapter({
    inputs: mixture,
    result: '1',
    compute: (two) => 1 - voidageOfMixtureWestman1936(mixtureOf(two)),
  }),
  sizeOfMixtureSauter1928: adapter({
    inputs: mixture,
    result: 'm',
    compute: (two) => sizeOfMixtureSauter1928(mixtureOf(two)),
  }),
} as const satisfies Registry;
