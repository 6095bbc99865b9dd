import { media } from '../catalogue/media.ts';
import {
  bedResistanceEisfeldSchnitzlein2001,
  bedResistanceEisfeldSchnitzlein2001Range,
  bedResistanceErgun1952,
  bedResistanceErgun1952Range,
  bedResistanceFoamDietrich2012,
  type GrainsFlow,
  pressureGradient,
  pressureGradientCarman1937,
  pressureGradientCarman1937Range,
  pressureGradientErdim2015,
  pressureGradientErdim2015Range,
} from '../laws/hydraulics/beds.ts';
import { foamAreaDietrich2012, foamDietrich2012Range } from '../laws/hydraulics/foam.ts';
import type { ValidRange } from '../laws/range.ts';
import { choiceOr, entry, optional, quantity, temperature } from './inputs.ts';
import { outsideOf } from './outside.ts';
import { reckoning } from './reckoning.ts';
import { freshWater, outsideOfWater } from './waterProperties.ts';

const velocity = quantity('velocity', {
  label: 'velocity in front of the bed, flow over area',
  example: '1 cm/s',
  least: '0 m/s',
});
const depth = quantity('length', { label: 'depth along the flow', example: '10 cm', least: '0 m' });
const openShare = (example: string) =>
  quantity('fraction', {
    label: 'voidage, the share that is open',
    example,
    above: '0 %',
    most: '99.9 %',
  });
const pressureResult = { label: 'pressure lost', unit: 'Pa', dimension: 'pressure' } as const;

const sources = {
  ergun: 'Ergun 1952, Chem. Eng. Prog. 48, 89–94',
  carman: 'Carman 1937, Trans. Inst. Chem. Eng. 15, 150–166',
  erdim: 'Erdim, Akgiray & Demir 2015, Powder Technol. 283, 488–504',
  eisfeld: 'Eisfeld & Schnitzlein 2001, Chem. Eng. Sci. 56, 4321–4329',
} as const;

type Law = keyof typeof sources;

const ranges: Readonly<Record<Law, ValidRange>> = {
  ergun: bedResistanceErgun1952Range,
  carman: pressureGradientCarman1937Range,
  erdim: pressureGradientErdim2015Range,
  eisfeld: bedResistanceEisfeldSchnitzlein2001Range,
};

type Shape = 'spheres' | 'cylinders' | 'any';

interface Bed extends GrainsFlow {
  readonly vesselM: number | undefined;
  readonly shape: Shape;
}

/** Pressure gradient by the law, Pa/m; `undefined` where the law needs a vessel and none is given. */
const gradientBy = (law: Law, bed: Bed): number | undefined => {
  const { vesselM, shape: pieces } = bed;
  switch (law) {
    case 'ergun':
      return pressureGradient(bedResistanceErgun1952(bed), bed.velocityMPerS);
    case 'carman':
      return pressureGradientCarman1937(bed);
    case 'erdim':
      return pressureGradientErdim2015(bed);
    case 'eisfeld':
      return vesselM === undefined
        ? undefined
        : pressureGradient(
            bedResistanceEisfeldSchnitzlein2001({ ...bed, vesselM, pieces }),
            bed.velocityMPerS,
          );
  }
};

const told = (bed: Bed) => ({
  reynolds: {
    label: 'Reynolds number',
    value: (bed.densityKgPerM3 * bed.velocityMPerS * bed.sizeM) / (bed.viscosityPaS * (1 - bed.voidage)),
  },
  voidage: { label: 'voidage', value: bed.voidage, dimension: 'fraction' as const },
  ...(bed.vesselM === undefined
    ? {}
    : { vesselOverSize: { label: 'width of the vessel in pieces', value: bed.vesselM / bed.sizeM } }),
});

const notesOn = (law: Law, bed: Bed): string[] => {
  const across = bed.vesselM === undefined ? undefined : bed.vesselM / bed.sizeM;
  const wall = 'so the wall changes the loss; law=eisfeld counts it';
  return law !== 'eisfeld' && across !== undefined && across < 30
    ? [`The bed is only ${Number(across.toPrecision(2))} pieces wide, ${wall}.`]
    : [];
};

const exampleBed = {
  size: '0.8 mm',
  voidage: '0.4',
  velocity: '1 mm/s',
  depth: '1 m',
  density: '1000 kg/m3',
  viscosity: '1 mPa.s',
};

const bedExample = (law: Law, printed: string, more: Readonly<Record<string, string>> = {}) => ({
  source: `${sources[law]}, as in the tests of the open library fluids 1.3.1`,
  seen: 'secondary' as const,
  inputs: { law, ...exampleBed, ...more },
  expected: { pressure: printed },
});

export const bedLoss = reckoning({
  name: 'bed-loss',
  says: 'Pressure that a bed of solid pieces takes from the water through it.',
  formula:
    'Ergun: Δp/L = 150 µ(1−ε)²U/(ε³d²) + 1.75 ρ(1−ε)U²/(ε³d); Carman 180 + 2.871 Re^0.9 and Erdim 160 + 2.81 Re^0.904 in place of 150 + 1.75 Re; Eisfeld with the wall',
  inputs: {
    law: choiceOr(['ergun', 'carman', 'erdim', 'eisfeld'], { label: 'law of the bed', otherwise: 'ergun' }),
    size: quantity('length', { label: 'diameter of a piece', example: '8 mm', above: '0 mm' }),
    voidage: openShare('40 %'),
    velocity,
    depth,
    density: optional(
      quantity('density', {
        label: 'density; that of water at the temperature when left out',
        example: '998 kg/m3',
        above: '0 kg/m3',
      }),
    ),
    viscosity: optional(
      quantity('viscosity', {
        label: 'viscosity; that of water at the temperature when left out',
        example: '1 mPa.s',
        above: '0 Pa.s',
      }),
    ),
    vessel: optional(
      quantity('length', {
        label: 'width of the vessel, for law=eisfeld',
        example: '15 cm',
        above: '0 mm',
      }),
    ),
    shape: choiceOr(['spheres', 'cylinders', 'any'], {
      label: 'shape of the pieces, for law=eisfeld',
      otherwise: 'spheres',
    }),
    temperature,
  },
  results: { pressure: pressureResult },
  source: sources.ergun,
  compute: (values) => {
    const { law } = values;
    const water = freshWater(values.temperature);
    const bed: Bed = {
      sizeM: values.size,
      voidage: values.voidage,
      velocityMPerS: values.velocity,
      densityKgPerM3: values.density ?? water.densityKgPerM3,
      viscosityPaS: values.viscosity ?? water.viscosityPaS,
      vesselM: values.vessel,
      shape: values.shape,
    };
    const gradient = gradientBy(law, bed);
    if (gradient === undefined) {
      const says = 'The key vessel (width of the vessel) is missing: law=eisfeld counts the wall.';
      const allowed = 'a length above 0, for example vessel="15 cm"';
      return { ok: false, problems: [{ code: 'missing-key', path: 'vessel', says, allowed }] };
    }
    const given = values.density !== undefined && values.viscosity !== undefined;
    const outside = [
      ...(given ? [] : outsideOfWater(values.temperature)),
      ...outsideOf(ranges[law], told(bed)),
    ];
    return {
      answers: { pressure: gradient * values.depth },
      outside,
      notes: notesOn(law, bed),
      source: sources[law],
    };
  },
  examples: [
    bedExample('ergun', '1338.87 Pa'),
    bedExample('carman', '1614.72 Pa'),
    bedExample('erdim', '1438.28 Pa'),
    bedExample('eisfeld', '1621.41 Pa', { vessel: '10 mm', shape: 'spheres' }),
  ],
});

export const foamLoss = reckoning({
  name: 'foam-loss',
  says: 'Pressure that clean open-cell foam takes from the water through it.',
  formula: 'Δp/L = 110 µU/(ε d_h²) + 1.45 ρU²/(ε² d_h), d_h = 4ε/a, a = 10.33 √(1−ε)/d_c',
  inputs: {
    cell: quantity('length', {
      label: 'diameter of the cells, counted under a ruler',
      example: '2.9 mm',
      above: '0 mm',
    }),
    voidage: openShare('97 %'),
    velocity,
    depth,
    temperature,
  },
  results: { pressure: { ...pressureResult, digits: 3 } },
  source: 'Dietrich 2012, Chem. Eng. Sci. 74, 192–199; constants from memory',
  compute: (values) => {
    const water = freshWater(values.temperature);
    const foam = { cellM: values.cell, voidage: values.voidage };
    const gradient = pressureGradient(bedResistanceFoamDietrich2012({ ...foam, ...water }), values.velocity);
    const hydraulicM = (4 * foam.voidage) / foamAreaDietrich2012(foam);
    const reynolds =
      (water.densityKgPerM3 * values.velocity * hydraulicM) / (foam.voidage * water.viscosityPaS);
    const outside = outsideOf(foamDietrich2012Range, {
      cellM: { label: 'cell', value: values.cell, dimension: 'length' },
      voidage: { label: 'voidage', value: values.voidage, dimension: 'fraction' },
      // Where nothing moves there is nothing to be outside of.
      ...(reynolds > 0 ? { reynolds: { label: 'Reynolds number', value: reynolds } } : {}),
    });
    return {
      answers: { pressure: gradient * values.depth },
      outside: [...outsideOfWater(values.temperature), ...outside],
    };
  },
  examples: [
    {
      source:
        'published air test of graded open-cell foam, 1964, turned into water: 130 to 160 Pa/m at 20 ppi, 20 mm/s and voidage 0.97',
      seen: 'secondary',
      inputs: { cell: '2.94 mm', voidage: '97 %', velocity: '20 mm/s', depth: '1 m', temperature: '20 °C' },
      expected: { pressure: '145 Pa' },
      wider: { share: 0.11, because: 'It is published as a range; 145 is its middle.' },
    },
    {
      source:
        'Dietrich 2012, Chem. Eng. Sci. 74, 192–199, its equation with µ 1.0016 mPa·s and ρ 998.207 kg/m3',
      seen: 'formula',
      inputs: { cell: '1.74 mm', voidage: '97 %', velocity: '10 mm/s', depth: '10 cm', temperature: '20 °C' },
      expected: { pressure: '12.05 Pa' },
    },
  ],
});

export const bedArea = reckoning({
  name: 'bed-area',
  says: 'Area open to nitrifying bacteria in a volume of a medium of the catalogue.',
  formula: 'A = a·V',
  inputs: {
    medium: entry(media, {
      label: 'medium',
      example: 'foam-20ppi',
      takes: 'the id of a medium of the catalogue',
    }),
    volume: quantity('volume', { label: 'volume of the bed', example: '1.5 L', least: '0 L' }),
  },
  results: {
    area: { label: 'area', unit: 'm2', dimension: 'area', digits: 3 },
    low: { label: 'low end of its doubt (95 %)', unit: 'm2', dimension: 'area', digits: 2 },
    high: { label: 'high end of its doubt (95 %)', unit: 'm2', dimension: 'area', digits: 2 },
  },
  source: 'the catalogue of media, each figure with its own source',
  compute: ({ medium, volume }) => {
    const { value, doubt, source } = medium.areaPerM;
    const low = doubt?.kind === 'factor' ? value / doubt.size : Math.max(0, value - (doubt?.size ?? 0));
    const high = doubt?.kind === 'factor' ? value * doubt.size : value + (doubt?.size ?? 0);
    return {
      answers: { area: value * volume, low: low * volume, high: high * volume },
      source: source.text,
    };
  },
  examples: [
    {
      source: 'geometry: grains of 1.5 mm with 40 % voidage have 6·0.6/0.0015 = 2400 m2/m3',
      seen: 'formula',
      inputs: { medium: 'sand-coarse', volume: '1 L' },
      expected: { area: '2.400 m2' },
    },
  ],
});
