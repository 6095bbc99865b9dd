import { GRAVITY } from '@fettle/engine/laws/constants.ts';
import { areaOfFibres, areaOfSpheres } from '@fettle/engine/laws/hydraulics/area.ts';
import {
  bedResistanceCarmanHollow,
  bedResistanceEisfeldSchnitzlein2001,
  bedResistanceErgun1952,
  bedResistanceFibreDavies1952,
  bedResistanceFoamDietrich2012,
  frictionGroupCarmanHollow,
  pressureGradient,
  pressureGradientCarman1937,
  pressureGradientErdim2015,
} from '@fettle/engine/laws/hydraulics/beds.ts';
import { foamAreaDietrich2012, foamCellPrior, foamStrut } from '@fettle/engine/laws/hydraulics/foam.ts';
import {
  frictionFactorChurchill1977,
  frictionFactorChurchillShape,
  frictionFactorColebrook1939,
  frictionFactorFullyRough,
  frictionFactorHaaland1983,
  frictionFactorSwameeJain1976,
  frictionFactorSwameeJainCubic,
  headLossDarcyWeisbach,
  reynoldsOfBore,
} from '@fettle/engine/laws/hydraulics/friction.ts';
import { velocityInBore } from '@fettle/engine/laws/hydraulics/jet.ts';
import {
  ORIFICE_DISCHARGE_COEFFICIENT,
  orificeFlow,
  orificePressure,
  perforatedPlateK,
} from '@fettle/engine/laws/hydraulics/orifice.ts';
import { frictionFactorSlotChurchill, slotFlow, slotPressure } from '@fettle/engine/laws/hydraulics/slot.ts';
import { bracketedRoot } from '@fettle/engine/numerics/roots.ts';
import { adapter, type Registry } from './adapter.ts';

const boreFlow = { reynolds: '1', relativeRoughness: '1' } as const;
const liquid = { densityKgPerM3: 'kg/m3', viscosityPaS: 'Pa s' } as const;
const orifice = { ...liquid, diameterM: 'm', dischargeCoefficient: '1' } as const;
const slot = { ...liquid, thicknessM: 'm', widthM: 'm', lengthM: 'm', entranceK: '1' } as const;
const grains = { ...liquid, sizeM: 'm', voidage: '1' } as const;
const grainsFlow = { ...grains, velocityMPerS: 'm/s' } as const;
const foam = { cellM: 'm', voidage: '1' } as const;
const bedWithGap = {
  ...grains,
  bedAreaM2: 'm2',
  bedDepthM: 'm',
  thicknessM: 'm',
  widthM: 'm',
  lengthM: 'm',
  entranceK: '1',
  flowM3PerS: 'm3/s',
} as const;

const friction = (compute: (flow: { reynolds: number; relativeRoughness: number }) => number) =>
  adapter({ inputs: boreFlow, defaults: { relativeRoughness: 0 }, result: '1', compute });

const narrowBed = (pieces: 'spheres' | 'cylinders' | 'any') =>
  adapter({
    inputs: { ...grainsFlow, vesselM: 'm' },
    result: 'Pa/m',
    compute: (bed) =>
      pressureGradient(bedResistanceEisfeldSchnitzlein2001({ ...bed, pieces }), bed.velocityMPerS),
  });

const frictionLaws = {
  frictionFactorColebrook1939: friction(frictionFactorColebrook1939),
  frictionFactorChurchill1977: friction(frictionFactorChurchill1977),
  frictionFactorHaaland1983: friction(frictionFactorHaaland1983),
  frictionFactorSwameeJain1976: friction(frictionFactorSwameeJain1976),
  frictionFactorSwameeJainCubic: friction(frictionFactorSwameeJainCubic),
  frictionFactorFullyRough: adapter({
    inputs: { roughnessM: 'm', boreM: 'm' },
    result: '1',
    compute: ({ roughnessM, boreM }) => frictionFactorFullyRough({ relativeRoughness: roughnessM / boreM }),
  }),
  frictionFactorChurchillShape: adapter({
    inputs: { reynolds: '1', laminarConstant: '1' },
    result: '1',
    compute: (flow) => frictionFactorChurchillShape({ ...flow, relativeRoughness: 0 }),
  }),
  reynoldsOfBore: adapter({
    inputs: { ...liquid, flowM3PerS: 'm3/s', boreM: 'm' },
    result: '1',
    compute: (run) =>
      reynoldsOfBore({ ...run, kinematicViscosityM2PerS: run.viscosityPaS / run.densityKgPerM3 }),
  }),
  headLossDarcyWeisbach: adapter({
    inputs: { frictionFactor: '1', lengthM: 'm', boreM: 'm', velocityMPerS: 'm/s', minorK: '1' },
    defaults: { minorK: 0 },
    result: 'm',
    compute: headLossDarcyWeisbach,
  }),
  'headLossDarcyWeisbach.pressureByColebrook': adapter({
    inputs: { ...liquid, flowM3PerS: 'm3/s', boreM: 'm', roughnessM: 'm', lengthM: 'm' },
    result: 'Pa',
    compute: (run) => {
      const kinematicViscosityM2PerS = run.viscosityPaS / run.densityKgPerM3;
      const reynolds = reynoldsOfBore({ ...run, kinematicViscosityM2PerS });
      const relativeRoughness = run.roughnessM / run.boreM;
      const frictionFactor = frictionFactorColebrook1939({ reynolds, relativeRoughness });
      const headM = headLossDarcyWeisbach({ ...run, frictionFactor, velocityMPerS: velocityInBore(run) });
      return headM * run.densityKgPerM3 * GRAVITY;
    },
  }),
} as const satisfies Registry;

const openingLaws = {
  orificePressure: adapter({
    inputs: { ...orifice, flowM3PerS: 'm3/s' },
    result: 'Pa',
    compute: orificePressure,
  }),
  orificeFlow: adapter({
    inputs: { ...orifice, headM: 'm' },
    result: 'm3/s',
    compute: (hole) => orificeFlow({ ...hole, pressurePa: hole.headM * hole.densityKgPerM3 * GRAVITY }),
  }),
  ORIFICE_DISCHARGE_COEFFICIENT: adapter({
    inputs: {},
    result: '1',
    compute: () => ORIFICE_DISCHARGE_COEFFICIENT,
  }),
  perforatedPlateK: adapter({ inputs: { openFraction: '1' }, result: '1', compute: perforatedPlateK }),
  frictionFactorSlotChurchill: adapter({
    inputs: { reynolds: '1' },
    result: '1',
    compute: frictionFactorSlotChurchill,
  }),
  slotPressure: adapter({ inputs: { ...slot, flowM3PerS: 'm3/s' }, result: 'Pa', compute: slotPressure }),
  slotFlow: adapter({ inputs: { ...slot, pressurePa: 'Pa' }, result: 'm3/s', compute: slotFlow }),
} as const satisfies Registry;

const bedLaws = {
  pressureGradient: adapter({
    inputs: { linear: '1', quadratic: '1', velocityMPerS: 'm/s' },
    result: 'Pa/m',
    compute: ({ linear, quadratic, velocityMPerS }) =>
      pressureGradient({ linearPaSPerM2: linear, quadraticPaS2PerM3: quadratic }, velocityMPerS),
  }),
  bedResistanceErgun1952: adapter({
    inputs: { ...grainsFlow, sphericity: '1' },
    defaults: { sphericity: 1 },
    result: 'Pa/m',
    compute: (bed) => pressureGradient(bedResistanceErgun1952(bed), bed.velocityMPerS),
  }),
  'bedResistanceErgun1952.head': adapter({
    inputs: { ...grainsFlow, sphericity: '1', depthM: 'm' },
    defaults: { sphericity: 1 },
    result: 'm',
    compute: (bed) =>
      (pressureGradient(bedResistanceErgun1952(bed), bed.velocityMPerS) * bed.depthM) /
      (bed.densityKgPerM3 * GRAVITY),
  }),
  'bedResistanceErgun1952.velocity': adapter({
    inputs: { ...grains, headM: 'm', depthM: 'm' },
    result: 'm/s',
    compute: (bed) => {
      const { linearPaSPerM2: b, quadraticPaS2PerM3: a } = bedResistanceErgun1952(bed);
      const gradient = (bed.headM * bed.densityKgPerM3 * GRAVITY) / bed.depthM;
      return (2 * gradient) / (b + Math.sqrt(b ** 2 + 4 * a * gradient));
    },
  }),
  'bedResistanceErgun1952.viscousVelocity': adapter({
    inputs: { ...grains, headM: 'm', depthM: 'm' },
    result: 'm/s',
    compute: (bed) =>
      (bed.headM * bed.densityKgPerM3 * GRAVITY) / bed.depthM / bedResistanceErgun1952(bed).linearPaSPerM2,
  }),
  'bedResistanceEisfeldSchnitzlein2001.spheres': narrowBed('spheres'),
  'bedResistanceEisfeldSchnitzlein2001.cylinders': narrowBed('cylinders'),
  'bedResistanceEisfeldSchnitzlein2001.any': narrowBed('any'),
  pressureGradientCarman1937: adapter({
    inputs: grainsFlow,
    result: 'Pa/m',
    compute: pressureGradientCarman1937,
  }),
  pressureGradientErdim2015: adapter({
    inputs: grainsFlow,
    result: 'Pa/m',
    compute: pressureGradientErdim2015,
  }),
  bedResistanceCarmanHollow: adapter({
    inputs: { ...liquid, surfacePerM: 'm2/m3', voidage: '1', velocityMPerS: 'm/s' },
    result: 'Pa/m',
    compute: (bed) => pressureGradient(bedResistanceCarmanHollow(bed), bed.velocityMPerS),
  }),
  'frictionGroupCarmanHollow.reynolds': adapter({
    inputs: { massFlowKgPerS: 'kg/s', vesselM: 'm', surfacePerM: 'm2/m3', viscosityPaS: 'Pa s' },
    result: '1',
    compute: (bed) => frictionGroupCarmanHollow(byMass(bed)).reynolds,
  }),
  'frictionGroupCarmanHollow.frictionGroup': adapter({
    inputs: { massFlowKgPerS: 'kg/s', vesselM: 'm', surfacePerM: 'm2/m3', viscosityPaS: 'Pa s' },
    result: '1',
    compute: (bed) => frictionGroupCarmanHollow(byMass(bed)).frictionGroup,
  }),
  bedResistanceFoamDietrich2012: adapter({
    inputs: { ...liquid, ...foam, velocityMPerS: 'm/s' },
    result: 'Pa/m',
    compute: (bed) => pressureGradient(bedResistanceFoamDietrich2012(bed), bed.velocityMPerS),
  }),
  foamAreaDietrich2012: adapter({ inputs: foam, result: '1/m', compute: foamAreaDietrich2012 }),
  foamStrut: adapter({ inputs: foam, result: 'm', compute: foamStrut }),
  'foamCellPrior.resistance': adapter({
    inputs: { ...liquid, poresPerInch: '1', voidage: '1', velocityMPerS: 'm/s' },
    result: 'Pa/m',
    compute: (bed) => {
      const { cellM } = foamCellPrior(bed);
      return pressureGradient(bedResistanceFoamDietrich2012({ ...bed, cellM }), bed.velocityMPerS);
    },
  }),
  'foamCellPrior.cell': adapter({
    inputs: { poresPerInch: '1' },
    result: 'm',
    compute: (grade) => foamCellPrior(grade).cellM,
  }),
  bedResistanceFibreDavies1952: adapter({
    inputs: { fibreM: 'm', solidFraction: '1', viscosityPaS: 'Pa s', velocityMPerS: 'm/s' },
    result: 'Pa/m',
    compute: (pad) => pressureGradient(bedResistanceFibreDavies1952(pad), pad.velocityMPerS),
  }),
  areaOfSpheres: adapter({
    inputs: { sizeM: 'm', voidage: '1', sphericity: '1' },
    defaults: { sphericity: 1 },
    result: '1/m',
    compute: areaOfSpheres,
  }),
  areaOfFibres: adapter({
    inputs: { fibreM: 'm', solidFraction: '1' },
    result: '1/m',
    compute: areaOfFibres,
  }),
  'bedBesideGap.bedFlow': adapter({
    inputs: bedWithGap,
    result: 'm3/s',
    compute: (pair) => bedBesideGap(pair),
  }),
  'bedBesideGap.pressure': adapter({
    inputs: bedWithGap,
    result: 'Pa',
    compute: (pair) => slotPressure({ ...pair, flowM3PerS: pair.flowM3PerS - bedBesideGap(pair) }),
  }),
} as const satisfies Registry;

/** Density drops out of Carman's groups once the mass flow is given; any value serves. */
const byMass = (bed: {
  massFlowKgPerS: number;
  vesselM: number;
  surfacePerM: number;
  viscosityPaS: number;
}) => ({
  densityKgPerM3: 1,
  viscosityPaS: bed.viscosityPaS,
  surfacePerM: bed.surfacePerM,
  velocityMPerS: velocityInBore({ flowM3PerS: bed.massFlowKgPerS, boreM: bed.vesselM }),
});

/** Flow through the bed where bed and gap take the same pressure and together the whole flow. */
const bedBesideGap = (
  pair: Parameters<typeof bedResistanceErgun1952>[0] &
    Omit<Parameters<typeof slotPressure>[0], 'flowM3PerS'> & {
      readonly bedAreaM2: number;
      readonly bedDepthM: number;
      readonly flowM3PerS: number;
    },
): number => {
  const bed = bedResistanceErgun1952(pair);
  const excess = (bedFlow: number): number =>
    pressureGradient(bed, bedFlow / pair.bedAreaM2) * pair.bedDepthM -
    slotPressure({ ...pair, flowM3PerS: pair.flowM3PerS - bedFlow });
  return bracketedRoot(excess, { low: 0, high: pair.flowM3PerS });
};

export const hydraulicsLaws = {
  ...frictionLaws,
  ...openingLaws,
  ...bedLaws,
} as const satisfies Registry;
