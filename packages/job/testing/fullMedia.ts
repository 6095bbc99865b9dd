/** Media of the technician's own, with every field that a medium can have. */
export const fullMedia = {
  'my-rings': {
    like: 'ceramic-rings-12mm',
    name: 'short ceramic rings',
    stage: 'biological',
    form: 'rings',
    size: '14 mm',
    voidage: '63 %',
    surface: '380 m2/m3',
    area: '150 ×/÷ 2 m2/m3',
    density: '520 g/L',
    depositFactor: '17 ×/÷ 3',
    care: 'rinse',
    bacteriaKept: '70 ± 10 %',
    life: '4 a',
    price: '6 GBP/L',
    cautions: ['Chips easily.'],
  },
  'my-foam': { like: 'foam-20ppi', cell: '2.9 ± 0.2 mm', voidage: '96 %' },
  'my-floss': { like: 'floss-loose', fibre: '0.03 mm', solid: '1.5 %' },
} as const;
