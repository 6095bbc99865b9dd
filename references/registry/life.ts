import { ammoniumChlorideDose, nitriteChlorideDose } from '@fettle/engine/laws/life/dosing.ts';
import {
  alkalinityForNitrification,
  ammoniaFromFeed,
  ammoniaFromNitrogenBalance,
  oxygenForNitrification,
} from '@fettle/engine/laws/life/feed.ts';
import {
  ammoniumDiffusivity,
  filmTransferWilsonGeankoplis1966,
} from '@fettle/engine/laws/life/filmTransfer.ts';
import {
  AMMONIUM_SLOPE_VELOCITY_M_PER_S,
  KINETICS_REFERENCE_K,
  nitrificationFlux,
  organicCarbonFactor,
  oxygenFactor,
  pHFactor,
  temperatureFactor,
} from '@fettle/engine/laws/life/nitrification.ts';
import { fishRespirationClarkeJohnston1999, oxygenLasts } from '@fettle/engine/laws/life/respiration.ts';
import { mediaVolumeForLoad, mediaVolumeForVolumetricRate } from '@fettle/engine/laws/life/sizing.ts';
import { bodyMassLeCren1951, fishFeed } from '@fettle/engine/laws/life/stock.ts';
import { adapter, type Registry } from './adapter.ts';

const OXYGEN_MOLAR_MASS = 31.9988e-3;

const loadLaws = {
  ammoniaFromFeed: adapter({
    inputs: { feedKgPerS: 'kg/s', proteinFraction: '1' },
    result: 'kg/s',
    compute: ammoniaFromFeed,
  }),
  'ammoniaFromNitrogenBalance.asAmmonia': adapter({
    inputs: { feedKgPerS: 'kg/s', proteinFraction: '1', excretedFraction: '1', ammoniaPerNitrogen: '1' },
    result: 'kg/s',
    compute: (tank) => tank.ammoniaPerNitrogen * ammoniaFromNitrogenBalance(tank),
  }),
  oxygenForNitrification: adapter({
    inputs: { nitrogenKgPerS: 'kg/s' },
    result: 'kg/s',
    compute: oxygenForNitrification,
  }),
  alkalinityForNitrification: adapter({
    inputs: { nitrogenKgPerS: 'kg/s' },
    result: 'kg/s',
    compute: alkalinityForNitrification,
  }),
  fishFeed: adapter({ inputs: { massKg: 'kg', temperatureK: 'K' }, result: 'kg/s', compute: fishFeed }),
  bodyMassLeCren1951: adapter({
    inputs: { lengthM: 'm', massAtOneCmKg: 'kg', exponent: '1' },
    result: 'kg',
    compute: bodyMassLeCren1951,
  }),
  ammoniumChlorideDose: adapter({
    inputs: { volumeM3: 'm3', riseKgNPerM3: 'kg/m3' },
    result: 'kg',
    compute: ammoniumChlorideDose,
  }),
  nitriteChlorideDose: adapter({
    inputs: { volumeM3: 'm3', nitriteKgNPerM3: 'kg/m3', chlorideKgPerM3: 'kg/m3' },
    result: 'kg',
    compute: (dose) => nitriteChlorideDose(dose),
  }),
} satisfies Registry;

const bacteriaLaws = {
  temperatureFactor: adapter({
    inputs: { temperatureK: 'K', theta: '1', referenceK: 'K' },
    result: '1',
    compute: temperatureFactor,
  }),
  'temperatureFactor.rateAfterRise': adapter({
    inputs: { rate: '1', theta: '1', rise: 'K' },
    result: '1',
    compute: ({ rate, theta, rise }) =>
      rate * temperatureFactor({ temperatureK: rise, theta, referenceK: 0 }),
  }),
  pHFactor: adapter({ inputs: { pH: '1' }, result: '1', compute: pHFactor }),
  organicCarbonFactor: adapter({
    inputs: { carbonToNitrogenRatio: '1' },
    result: '1',
    compute: ({ carbonToNitrogenRatio }) => organicCarbonFactor({ carbonToNitrogenRatio }),
  }),
  AMMONIUM_SLOPE_VELOCITY_M_PER_S: adapter({
    inputs: {},
    result: 'm/s',
    compute: () => AMMONIUM_SLOPE_VELOCITY_M_PER_S,
  }),
  KINETICS_REFERENCE_K: adapter({ inputs: {}, result: 'K', compute: () => KINETICS_REFERENCE_K }),
  oxygenFactor: adapter({ inputs: { oxygenKgPerM3: 'kg/m3' }, result: '1', compute: oxygenFactor }),
  nitrificationFlux: adapter({
    inputs: {
      slopeMPerS: 'm/s',
      nitrogenKgPerM3: 'kg/m3',
      oxygenKgPerM3: 'kg/m3',
      oxygenPerNitrogenRatio: '1',
      ceilingKgNPerM2PerS: 'kg/m2/s',
    },
    result: 'kg/m2/s',
    compute: nitrificationFlux,
  }),
  filmTransferWilsonGeankoplis1966: adapter({
    inputs: {
      velocityMPerS: 'm/s',
      sizeM: 'm',
      voidage: '1',
      densityKgPerM3: 'kg/m3',
      viscosityPaS: 'Pa.s',
      diffusivityM2PerS: 'm2/s',
    },
    result: 'm/s',
    compute: filmTransferWilsonGeankoplis1966,
  }),
  ammoniumDiffusivity: adapter({
    inputs: { temperatureK: 'K', viscosityPaS: 'Pa.s' },
    result: 'm2/s',
    compute: ammoniumDiffusivity,
  }),
  mediaVolumeForLoad: adapter({
    inputs: { loadKgPerS: 'kg/s', areaRateKgPerM2PerS: 'kg/m2/s', areaPerM: 'm2/m3' },
    result: 'm3',
    compute: mediaVolumeForLoad,
  }),
  'mediaVolumeForLoad.area': adapter({
    inputs: { loadKgPerS: 'kg/s', areaRateKgPerM2PerS: 'kg/m2/s', areaPerM: 'm2/m3' },
    result: 'm2',
    compute: (load) => mediaVolumeForLoad(load) * load.areaPerM,
  }),
  mediaVolumeForVolumetricRate: adapter({
    inputs: { loadKgPerS: 'kg/s', volumeRateKgPerM3PerS: 'kg/m3/s' },
    result: 'm3',
    compute: mediaVolumeForVolumetricRate,
  }),
} satisfies Registry;

const twoTemperatures = { warmK: 'K', coldK: 'K', massKg: 'kg' } as const;

const warmOverCold = (fish: { warmK: number; coldK: number; massKg: number }): number =>
  fishRespirationClarkeJohnston1999({ ...fish, temperatureK: fish.warmK }) /
  fishRespirationClarkeJohnston1999({ ...fish, temperatureK: fish.coldK });

const breathLaws = {
  'fishRespirationClarkeJohnston1999.moles': adapter({
    inputs: { temperatureK: 'K', massKg: 'kg' },
    result: 'mol/s',
    compute: (fish) => fishRespirationClarkeJohnston1999(fish) / OXYGEN_MOLAR_MASS,
  }),
  'fishRespirationClarkeJohnston1999.warmOverCold': adapter({
    inputs: twoTemperatures,
    result: '1',
    compute: warmOverCold,
  }),
  'fishRespirationClarkeJohnston1999.perTenKelvin': adapter({
    inputs: twoTemperatures,
    result: '1',
    compute: (fish) => warmOverCold(fish) ** (10 / (fish.warmK - fish.coldK)),
  }),
  oxygenLasts: adapter({
    inputs: { volumeM3: 'm3', startKgPerM3: 'kg/m3', endKgPerM3: 'kg/m3', respirationKgPerS: 'kg/s' },
    result: 's',
    compute: oxygenLasts,
  }),
} satisfies Registry;

export const lifeLaws = { ...loadLaws, ...bacteriaLaws, ...breathLaws } satisfies Registry;
