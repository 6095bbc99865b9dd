import { sizes } from '@fettle/engine/families/testing/sizes.ts';
import { type DrawingCase, layoutOf, packed } from './drawingCaseParts.ts';

export { bedsOf, type DrawingCase, layoutOf, media } from './drawingCaseParts.ts';

const splitPacking = packed({
  'left-1': [['coarse-foam', 60]],
  'left-2': [
    ['floss', 15],
    ['rings', 70],
  ],
  'right-1': [['carbon', 40]],
  'right-2': [['gravel', 85]],
});

export const drawingCases = {
  stack: {
    layout: layoutOf('basket-stack-canister', sizes.stack),
    packing: packed({
      'basket-3': [
        ['floss', 12],
        ['carbon', 40],
      ],
      'basket-2': [['rings', 55]],
      'basket-1': [
        ['fine-foam', 25],
        ['coarse-foam', 30],
      ],
    }),
    flows: {
      dutyPoint: { flowM3PerS: 1e-4, headM: 0.7 },
      wayFlowM3PerS: {
        'tube-foot': 1e-4,
        'gap:basket-1': 4e-6,
        'gap:basket-2': 3e-7,
        'gap:basket-3': 3.4e-5,
      },
    },
  },
  six: {
    layout: layoutOf('basket-stack-canister', {
      baskets: 6,
      basketWidth: 0.2,
      basketDepth: 0.2,
      basketHeight: 0.05,
    }),
    packing: packed({
      'basket-6': [
        ['floss', 10],
        ['carbon', 20],
        ['fine-foam', 12],
      ],
      'basket-5': [
        ['gravel', 22],
        ['carrier', 22],
      ],
      'basket-4': [['carrier', 45]],
      'basket-3': [['rings', 45]],
      'basket-2': [
        ['fine-foam', 22],
        ['long', 22],
      ],
      'basket-1': [['coarse-foam', 45]],
    }),
    flows: {
      dutyPoint: { flowM3PerS: 2e-4, headM: 1.2 },
      wayFlowM3PerS: {
        'tube-foot': 2e-4,
        'gap:basket-1': 4e-6,
        'gap:basket-2': 1.2e-5,
        'gap:basket-3': 2e-6,
        'gap:basket-4': 2e-6,
        'gap:basket-5': 2e-6,
        'gap:basket-6': 1.5e-4,
      },
    },
  },
  split: {
    layout: layoutOf('split-housing-canister', sizes.halves),
    packing: splitPacking,
    flows: {
      dutyPoint: { flowM3PerS: 1.5e-4, headM: 0.9 },
      wayFlowM3PerS: {
        'partition-foot': 1.3e-4,
        'partition-top': 2e-5,
        'gap:left-1': 3e-6,
        'gap:left-2': 6e-5,
        'gap:right-1': 1e-5,
        'gap:right-2': 5e-6,
      },
    },
  },
  turned: {
    layout: layoutOf('split-housing-canister', { ...sizes.halves, headTurned: 1 }),
    packing: splitPacking,
  },
  tube: {
    layout: layoutOf('central-tube-canister', sizes.tube),
    packing: packed({
      media: [
        ['fine-foam', 15],
        ['coarse-foam', 20],
        ['rings', 20],
      ],
    }),
    flows: {
      dutyPoint: { flowM3PerS: 1.7e-4, headM: 0.6 },
      wayFlowM3PerS: { 'gap:media': 2e-6, 'tube-foot': 1.2e-5, 'tube-mouth': 1.7e-4 },
    },
  },
  cartridge: {
    layout: layoutOf('cartridge-canister', sizes.cartridge),
    packing: packed({ cartridge: [['floss', 35]] }),
    flows: {
      dutyPoint: { flowM3PerS: 1.2e-4, headM: 0.4 },
      wayFlowM3PerS: { 'gap:cartridge': 1e-6, 'spigot-gap': 2e-5, spigot: 1e-4 },
    },
  },
  hung: {
    layout: layoutOf('hang-on-back', {
      boxWidth: 0.1,
      waterDepth: 0.12,
      slots: 2,
      slotThickness: 0.022,
      weirWidth: 0.09,
      overflowWidth: 0.05,
    }),
    packing: packed({
      'slot-1': [['coarse-foam', 22]],
      'slot-2': [
        ['floss', 8],
        ['carbon', 12],
      ],
    }),
    flows: {
      dutyPoint: { flowM3PerS: 1e-4, headM: 0.1 },
      wayFlowM3PerS: {
        'gap:slot-1': 1.2e-5,
        'gap:slot-2': 3.1e-5,
        'outlet-edge': 9e-5,
        'overflow-lip': 1e-5,
      },
    },
  },
  sump: {
    layout: layoutOf('sump', sizes.sump),
    packing: packed({ sock: [['floss', 3]], 'tray-1': [['coarse-foam', 60]], 'tray-2': [['carrier', 80]] }),
    flows: {
      dutyPoint: { flowM3PerS: 5e-4, headM: 1.6 },
      wayFlowM3PerS: {
        'tank-overflow': 5e-4,
        'sock-rim': 2e-4,
        'first-baffle': 5e-4,
        'gap:tray-1': 1.2e-5,
        'gap:tray-2': 3e-5,
        'under-baffle': 4.9e-4,
        'over-media-baffle': 1e-5,
        'last-baffle': 5e-4,
      },
    },
  },
  tower: {
    layout: layoutOf('trickle-tower', sizes.tower),
    packing: packed({ pad: [['floss', 20]], 'layer-1': [['carrier', 190]], 'layer-2': [['rings', 150]] }),
    flows: {
      dutyPoint: { flowM3PerS: 3e-4, headM: 1.5 },
      wayFlowM3PerS: {
        'tank-overflow': 3e-4,
        'plate-rim': 3e-5,
        'drip-holes': 2.7e-4,
        'gap:layer-1': 3e-5,
        'gap:layer-2': 3e-5,
      },
    },
  },
  internal: {
    layout: layoutOf('internal-box', { ...sizes.internal, upperSlotArea: 0.0002 }),
    packing: packed({ 'chamber-1': [['coarse-foam', 65]], 'chamber-2': [['rings', 30]] }),
    flows: {
      dutyPoint: { flowM3PerS: 1e-4, headM: 0.2 },
      wayFlowM3PerS: {
        'base-slots': 7.5e-5,
        'upper-slots': 2.5e-5,
        'gap:chamber-1': 5e-6,
        'gap:chamber-2': 2e-6,
        'nozzle-mouth': 1e-4,
      },
    },
  },
} as const satisfies Readonly<Record<string, DrawingCase>>;
