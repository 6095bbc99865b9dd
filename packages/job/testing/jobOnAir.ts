/** A job whose filter is driven by air, of which a canister has nothing to say. */
export const jobOnAir = {
  fettle: 1,
  tank: { volume: '60 L', feed: '0.3 g/d' },
  filter: {
    family: 'sponge-filter',
    measurements: {
      spongeThickness: '35 mm',
      coreDiameter: '25 mm',
      spongeHeight: '120 mm',
      tubeBore: '16 mm',
      tubeRise: '220 mm',
      airDepth: '230 mm',
    },
    pump: { airFlow: '60 L/h', power: '3 W' },
  },
  packing: { sponge: [{ medium: 'foam-30ppi', fill: '100 %' }] },
} as const;
