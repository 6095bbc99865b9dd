import { dirtFigures } from '../laws/dirt/constants.ts';
import { lifeFigures } from '../laws/life/constants.ts';
import type { Figure } from '../model/figure.ts';

const DAY_S = 86_400;

/** Figures of the assessment itself, beside those of the laws, with doubt and source. */
const assessmentFigures = {
  nitriteSlopeRatio: {
    value: 1,
    doubt: { kind: 'factor', size: 2 },
    source: { kind: 'memory', text: 'slope of nitrite against that of ammonia: no bed was measured' },
  },
  leastAlkalinityKgPerM3: {
    value: 0.02,
    doubt: { kind: 'factor', size: 2 },
    source: {
      kind: 'memory',
      text: 'alkalinity as CaCO3 below which bacteria run short of carbonate; half-saturations of 0.5 mmol/L and less are in use',
    },
  },
  recoveryS: {
    value: 12 * DAY_S,
    doubt: { kind: 'factor', size: 2 },
    source: {
      kind: 'memory',
      text: 'time in which bacteria thinned by a cleaning make up the greater part of the loss: a third of the four to six weeks in which a new filter ripens',
    },
  },
  carbonSteepness: {
    value: 3,
    doubt: { kind: 'factor', size: 1.7 },
    source: {
      kind: 'secondary',
      text: 'about 70 % less at C/N 1–2 with sugar or plant extract (Zhu & Chen 2001; Ling & Chen 2005); the form is ours',
    },
  },
  bedLawRatio: {
    value: 1,
    doubt: { kind: 'factor', size: 1.3 },
    source: { kind: 'memory', text: 'what laws of packed beds are off where their figures are known' },
  },
  airLiftFlowRatio: {
    value: 1,
    doubt: { kind: 'factor', size: 1.7 },
    source: {
      kind: 'memory',
      text: 'water of an air-lift against its law: measured in short tubes it gave up to 1.7 times as much as was measured (Goharzadeh 2014, references/goharzadeh-2014)',
    },
  },
  fittingLawRatio: {
    value: 1,
    doubt: { kind: 'factor', size: 1.3 },
    source: { kind: 'memory', text: 'loss of fittings and barbs against tabled ones' },
  },
} as const satisfies Readonly<Record<string, Figure>>;

/**
 * Every constant of the models that is not sure, with doubt and source: of life, of dirt, of the assessment.
 * A doubt that is a factor or a half-width at 95 % is that of one filter and tank, alike for all its beds.
 */
export const constantFigures = {
  tanPerProteinRatio: lifeFigures.tanPerProteinRatio,
  oxygenPerNitrogenRatio: lifeFigures.oxygenPerNitrogenRatio,
  alkalinityPerNitrogenRatio: lifeFigures.alkalinityPerNitrogenRatio,
  ammoniumSlopeMPerS: lifeFigures.ammoniumSlopeMPerS,
  fluxCeilingKgNPerM2PerS: lifeFigures.fluxCeilingKgNPerM2PerS,
  ammoniaTemperatureTheta: lifeFigures.ammoniaTemperatureTheta,
  nitriteTemperatureTheta: lifeFigures.nitriteTemperatureTheta,
  oxygenHalfSaturationKgPerM3: lifeFigures.oxygenHalfSaturationKgPerM3,
  solidsPerFeedRatio: dirtFigures.solidsPerFeedRatio,
  sizeExponent: dirtFigures.sizeExponent,
  depositDryDensityKgPerM3: dirtFigures.depositDryDensityKgPerM3,
  excessDensityKgPerM3: dirtFigures.excessDensityKgPerM3,
  stickingFraction: dirtFigures.stickingFraction,
  cakeResistanceMPerKg: dirtFigures.cakeResistanceMPerKg,
  solidsNitrogenRatio: dirtFigures.solidsNitrogenRatio,
  solidsDecayPerS: dirtFigures.solidsDecayPerS,
  decayingFraction: dirtFigures.decayingFraction,
  carbonPerSolidsRatio: dirtFigures.carbonPerSolidsRatio,
  carbonAvailableFraction: dirtFigures.carbonAvailableFraction,
  oxygenPerSolidsRatio: dirtFigures.oxygenPerSolidsRatio,
  ...assessmentFigures,
} as const satisfies Readonly<Record<string, Figure>>;

export type ConstantName = keyof typeof constantFigures;

/** The value of every constant that is not sure, in SI. */
export type Constants = Readonly<Record<ConstantName, number>>;

export const constantNames = Object.keys(constantFigures) as readonly ConstantName[];

/** The constants as they are taken where nothing is drawn: each at its most likely value. */
export const usualConstants: Constants = Object.fromEntries(
  constantNames.map((name) => [name, constantFigures[name].value]),
) as Record<ConstantName, number>;
