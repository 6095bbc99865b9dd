import { GRAVITY } from '@fettle/engine/laws/constants.ts';
import { cakePressureRuth1935, filtrationTimeHermia1982 } from '@fettle/engine/laws/dirt/cake.ts';
import { captureCoefficient, filterCoefficientYao1971 } from '@fettle/engine/laws/dirt/capture.ts';
import {
  caughtFractionIwasaki1937,
  depositIwasaki1937,
  fillingBedBohartAdams1920,
} from '@fettle/engine/laws/dirt/cleanBed.ts';
import {
  crowdingHappel1958,
  diffusionContactYao1971,
  interceptionLee1982,
  interceptionTufenkjiElimelech2004,
  interceptionYao1971,
  settlingContactYao1971,
  settlingVelocityStokes1851,
  singleCollectorTufenkjiElimelech2004,
} from '@fettle/engine/laws/dirt/collector.ts';
import { nitrogenReturned, solidsDecayRate, solidsLeft } from '@fettle/engine/laws/dirt/decay.ts';
import { solidsMade } from '@fettle/engine/laws/dirt/production.ts';
import {
  depositFactorMaysHunt2005,
  resistanceRatioKozeny1927,
  resistanceRatioMaysHunt2005,
} from '@fettle/engine/laws/dirt/resistance.ts';
import { solidsSizeClasses } from '@fettle/engine/laws/dirt/sizes.ts';
import {
  fibreSpacing,
  strainedFraction,
  strainingCoefficient,
  throatOfFibres,
  throatOfFoam,
  throatOfGrains,
  throatOfHollowPieces,
} from '@fettle/engine/laws/dirt/straining.ts';
import { adapter, type Registry } from './adapter.ts';

const particle = { sizeM: 'm', excessDensityKgPerM3: 'kg/m3', viscosityPaS: 'Pa s' } as const;
const interception = {
  sizeM: 'm',
  collectorM: 'm',
  voidage: '1',
  viscosityPaS: 'Pa s',
  velocityMPerS: 'm/s',
  hamakerJ: 'J',
} as const;
const collection = { ...interception, excessDensityKgPerM3: 'kg/m3', temperatureK: 'K' } as const;
const evenBed = { filterCoefficientPerM: '1/m', depthM: 'm' } as const;
const pad = { fibreM: 'm', solidFraction: '1' } as const;
const classes = { count: '1', place: '1', smallestM: 'm', largestM: 'm', exponent: '1' } as const;
const printed = { source: { kind: 'published', text: 'input of the case' } } as const;

const sizeClass = (solids: Readonly<Record<keyof typeof classes, number>>) =>
  solidsSizeClasses(solids)[solids.place - 1]!;

const sizeLaws = {
  'solidsSizeClasses.massFraction': adapter({
    inputs: classes,
    result: '1',
    compute: (solids) => sizeClass(solids).massFraction,
  }),
  'solidsSizeClasses.size': adapter({
    inputs: classes,
    result: 'm',
    compute: (solids) => sizeClass(solids).sizeM,
  }),
  solidsMade: adapter({
    inputs: { feedKgPerS: 'kg/s', solidsPerFeedRatio: '1' },
    defaults: { solidsPerFeedRatio: 0.25 },
    result: 'kg/s',
    compute: solidsMade,
  }),
} as const satisfies Registry;

const collectorLaws = {
  settlingVelocityStokes1851: adapter({
    inputs: particle,
    result: 'm/s',
    compute: settlingVelocityStokes1851,
  }),
  'settlingVelocityStokes1851.basin': adapter({
    inputs: { ...particle, flowM3PerS: 'm3/s', areaM2: 'm2' },
    result: '1',
    compute: ({ flowM3PerS, areaM2, ...sphere }) =>
      (settlingVelocityStokes1851(sphere) * areaM2) / flowM3PerS,
  }),
  interceptionYao1971: adapter({
    inputs: { sizeM: 'm', collectorM: 'm' },
    result: '1',
    compute: interceptionYao1971,
  }),
  settlingContactYao1971: adapter({
    inputs: { ...particle, velocityMPerS: 'm/s' },
    result: '1',
    compute: settlingContactYao1971,
  }),
  diffusionContactYao1971: adapter({
    inputs: { sizeM: 'm', collectorM: 'm', viscosityPaS: 'Pa s', velocityMPerS: 'm/s', temperatureK: 'K' },
    result: '1',
    compute: diffusionContactYao1971,
  }),
  crowdingHappel1958: adapter({ inputs: { voidage: '1' }, result: '1', compute: crowdingHappel1958 }),
  interceptionTufenkjiElimelech2004: adapter({
    inputs: interception,
    result: '1',
    compute: interceptionTufenkjiElimelech2004,
  }),
  'singleCollectorTufenkjiElimelech2004.diffusion': adapter({
    inputs: collection,
    result: '1',
    compute: (pair) => singleCollectorTufenkjiElimelech2004(pair).diffusion,
  }),
  'singleCollectorTufenkjiElimelech2004.settling': adapter({
    inputs: collection,
    result: '1',
    compute: (pair) => singleCollectorTufenkjiElimelech2004(pair).settling,
  }),
  interceptionLee1982: adapter({ inputs: { ...pad, sizeM: 'm' }, result: '1', compute: interceptionLee1982 }),
} as const satisfies Registry;

const captureLaws = {
  throatOfGrains: adapter({ inputs: { sizeM: 'm' }, result: 'm', compute: throatOfGrains }),
  throatOfHollowPieces: adapter({
    inputs: { surfacePerM: 'm2/m3', voidage: '1' },
    result: 'm',
    compute: throatOfHollowPieces,
  }),
  throatOfFoam: adapter({ inputs: { cellM: 'm' }, result: 'm', compute: throatOfFoam }),
  fibreSpacing: adapter({ inputs: pad, result: 'm', compute: fibreSpacing }),
  throatOfFibres: adapter({ inputs: pad, result: 'm', compute: throatOfFibres }),
  strainedFraction: adapter({
    inputs: { sizeM: 'm', throatM: 'm' },
    result: '1',
    compute: strainedFraction,
  }),
  strainingCoefficient: adapter({
    inputs: { sizeM: 'm', throatM: 'm', layerM: 'm' },
    result: '1/m',
    compute: strainingCoefficient,
  }),
  filterCoefficientYao1971: adapter({
    inputs: { collectorM: 'm', voidage: '1', contactEfficiency: '1', stickingFraction: '1' },
    result: '1/m',
    compute: filterCoefficientYao1971,
  }),
  'captureCoefficient.foam': adapter({
    inputs: { cellM: 'm', voidage: '1', sizeM: 'm', viscosityPaS: 'Pa s' },
    result: '1/m',
    compute: ({ cellM, voidage, ...solids }) =>
      captureCoefficient({
        ...solids,
        resistance: {
          law: 'foam',
          cellM: { ...printed, value: cellM },
          voidage: { ...printed, value: voidage },
        },
      }).steadyPerM,
  }),
  'captureCoefficient.hollow': adapter({
    inputs: { surfacePerM: 'm2/m3', voidage: '1', layerM: 'm', sizeM: 'm', viscosityPaS: 'Pa s' },
    result: '1/m',
    compute: ({ surfacePerM, voidage, layerM, ...solids }) =>
      captureCoefficient({
        ...solids,
        resistance: {
          law: 'hollow',
          sizeM: { ...printed, value: layerM },
          voidage: { ...printed, value: voidage },
          surfacePerM: { ...printed, value: surfacePerM },
        },
      }).steadyPerM,
  }),
  'captureCoefficient.fibre': adapter({
    inputs: { ...pad, sizeM: 'm', viscosityPaS: 'Pa s' },
    result: '1/m',
    compute: ({ fibreM, solidFraction, ...solids }) =>
      captureCoefficient({
        ...solids,
        resistance: {
          law: 'fibre',
          fibreM: { ...printed, value: fibreM },
          solidFraction: { ...printed, value: solidFraction },
        },
      }).steadyPerM,
  }),
} as const satisfies Registry;

const bedLaws = {
  caughtFractionIwasaki1937: adapter({ inputs: evenBed, result: '1', compute: caughtFractionIwasaki1937 }),
  depositIwasaki1937: adapter({
    inputs: { ...evenBed, velocityMPerS: 'm/s', inletKgPerM3: 'kg/m3', timeS: 's' },
    result: 'kg/m3',
    compute: depositIwasaki1937,
  }),
  'fillingBedBohartAdams1920.passed': adapter({
    inputs: { ...evenBed, suppliedOverFull: '1' },
    result: '1',
    compute: (bed) => fillingBedBohartAdams1920(bed).passedFraction,
  }),
  'fillingBedBohartAdams1920.filled': adapter({
    inputs: { ...evenBed, suppliedOverFull: '1' },
    result: '1',
    compute: (bed) => fillingBedBohartAdams1920(bed).filledFraction,
  }),
  resistanceRatioMaysHunt2005: adapter({
    inputs: { depositFraction: '1', depositFactor: '1' },
    result: '1',
    compute: resistanceRatioMaysHunt2005,
  }),
  'resistanceRatioMaysHunt2005.head': adapter({
    inputs: { cleanHeadM: 'm', voidage: '1', poreShare: '1', depositFactor: '1' },
    result: 'm',
    compute: ({ cleanHeadM, voidage, poreShare, depositFactor }) =>
      cleanHeadM * resistanceRatioMaysHunt2005({ depositFraction: voidage * poreShare, depositFactor }),
  }),
  depositFactorMaysHunt2005: adapter({
    inputs: { cleanHeadM: 'm', headM: 'm', voidage: '1', poreShare: '1' },
    result: '1',
    compute: ({ cleanHeadM, headM, voidage, poreShare }) =>
      depositFactorMaysHunt2005({
        resistanceRatio: headM / cleanHeadM,
        depositFraction: voidage * poreShare,
      }),
  }),
  resistanceRatioKozeny1927: adapter({
    inputs: { voidage: '1', poreShare: '1' },
    result: '1',
    compute: ({ voidage, poreShare }) =>
      resistanceRatioKozeny1927({ voidage, depositFraction: voidage * poreShare }),
  }),
  'resistanceRatioKozeny1927.head': adapter({
    inputs: { cleanHeadM: 'm', voidage: '1', poreShare: '1' },
    result: 'm',
    compute: ({ cleanHeadM, voidage, poreShare }) =>
      cleanHeadM * resistanceRatioKozeny1927({ voidage, depositFraction: voidage * poreShare }),
  }),
  'cakePressureRuth1935.head': adapter({
    inputs: {
      resistanceMPerKg: 'm/kg',
      viscosityPaS: 'Pa s',
      densityKgPerM3: 'kg/m3',
      cakeKgPerM2: 'kg/m2',
      velocityMPerS: 'm/s',
    },
    result: 'm',
    compute: (cake) => cakePressureRuth1935(cake) / (cake.densityKgPerM3 * GRAVITY),
  }),
  filtrationTimeHermia1982: adapter({
    inputs: {
      resistanceMPerKg: 'm/kg',
      viscosityPaS: 'Pa s',
      solidsKgPerM3: 'kg/m3',
      mediumResistancePerM: '1/m',
      pressurePa: 'Pa',
      filtrateM3: 'm3',
      areaM2: 'm2',
    },
    result: 's',
    compute: ({ filtrateM3, areaM2, ...run }) =>
      filtrationTimeHermia1982({ ...run, filtrateM: filtrateM3 / areaM2 }),
  }),
  solidsDecayRate: adapter({
    inputs: { temperatureK: 'K', warmPerS: '1/s' },
    result: '1/s',
    compute: solidsDecayRate,
  }),
  solidsLeft: adapter({
    inputs: { caughtKgPerS: 'kg/s', decayPerS: '1/s', timeS: 's', startKg: 'kg' },
    defaults: { startKg: 0 },
    result: 'kg',
    compute: solidsLeft,
  }),
  nitrogenReturned: adapter({
    inputs: { solidsKg: 'kg', decayPerS: '1/s', nitrogenRatio: '1' },
    result: 'kg/s',
    compute: nitrogenReturned,
  }),
} as const satisfies Registry;

export const dirtLaws = {
  ...sizeLaws,
  ...collectorLaws,
  ...captureLaws,
  ...bedLaws,
} as const satisfies Registry;
