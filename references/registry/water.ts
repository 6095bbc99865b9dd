import { ICE_POINT_K } from '@fettle/engine/laws/constants.ts';
import {
  unionizedAmmoniaFraction,
  unionizedAmmoniaFractionBell2007,
  unionizedAmmoniaFractionEmerson1975,
  unionizedAmmoniaFractionKhoo1977,
} from '@fettle/engine/laws/water/ammonia.ts';
import {
  activityCoefficientDavies,
  bicarbonateConstantPlummerBusenberg1982,
  carbonDioxideKgPerM3,
  carbonicAcidConstantPlummerBusenberg1982,
} from '@fettle/engine/laws/water/carbonate.ts';
import { ammoniaCriteriaEpa2013 } from '@fettle/engine/laws/water/criteria.ts';
import {
  seawaterDensityMilleroPoisson1981,
  waterDensity,
  waterDensityIapwsSr6,
  waterDensityKell1975,
} from '@fettle/engine/laws/water/density.ts';
import {
  oxygenContentGarciaGordon1992,
  oxygenSaturationBensonKrause1984,
  oxygenSaturationGarciaGordon1992,
} from '@fettle/engine/laws/water/oxygen.ts';
import {
  seawaterViscositySharqawy2010,
  waterViscosity,
  waterViscosityIapwsSr6,
} from '@fettle/engine/laws/water/viscosity.ts';
import { adapter, type Registry } from './adapter.ts';

const fresh = { temperatureK: 'K' } as const;
const salty = { temperatureK: 'K', salinity: '1' } as const;
const sour = { temperatureK: 'K', pH: '1' } as const;
const saltyAndSour = { ...salty, pH: '1' } as const;

const ofFresh = (result: string, compute: (water: { temperatureK: number }) => number) =>
  adapter({ inputs: fresh, result, compute });

const ofSalty = (result: string, compute: (water: { temperatureK: number; salinity: number }) => number) =>
  adapter({ inputs: salty, result, compute });

const ofAmmonia = (compute: (water: { temperatureK: number; salinity: number; pH: number }) => number) =>
  adapter({ inputs: saltyAndSour, result: '1', compute });

/** A temperature printed on the scale of 1968 on that of 1990. */
const of1968 = <Water extends { temperatureK: number }>(water: Water): Water => ({
  ...water,
  temperatureK: ICE_POINT_K + (water.temperatureK - ICE_POINT_K) / 1.00024,
});
/** A temperature printed on the scale of 1990 on that of 1968. */
const to1968 = <Water extends { temperatureK: number }>(water: Water): Water => ({
  ...water,
  temperatureK: ICE_POINT_K + (water.temperatureK - ICE_POINT_K) * 1.00024,
});

/** Practical salinity of sea water with a mass fraction of salt, kg/kg. */
const practical = (saltFraction: number): number => (saltFraction * 35) / 35.16504e-3;

const OXYGEN_MOLAR_MASS = 31.9988e-3;

const physicalLaws = {
  waterDensityIapwsSr6: ofFresh('kg/m3', waterDensityIapwsSr6),
  'waterDensityKell1975.scale1968': ofFresh('kg/m3', (water) => waterDensityKell1975(of1968(water))),
  'seawaterDensityMilleroPoisson1981.scale1968': ofSalty('kg/m3', (water) =>
    seawaterDensityMilleroPoisson1981(of1968(water)),
  ),
  waterDensity: ofSalty('kg/m3', waterDensity),
  'waterDensity.scale1968': ofSalty('kg/m3', (water) => waterDensity(of1968(water))),
  waterViscosityIapwsSr6: ofFresh('Pa.s', waterViscosityIapwsSr6),
  'seawaterViscositySharqawy2010.bySaltFraction': adapter({
    inputs: { ...fresh, saltFraction: '1' },
    result: 'Pa.s',
    compute: ({ temperatureK, saltFraction }) =>
      seawaterViscositySharqawy2010({ temperatureK, salinity: practical(saltFraction) }),
  }),
  waterViscosity: ofSalty('Pa.s', waterViscosity),
} satisfies Registry;

const chemicalLaws = {
  oxygenSaturationBensonKrause1984: adapter({
    inputs: { ...salty, pressurePa: 'Pa' },
    result: 'kg/m3',
    compute: oxygenSaturationBensonKrause1984,
  }),
  oxygenContentGarciaGordon1992: ofSalty('mol/kg', oxygenContentGarciaGordon1992),
  'oxygenContentGarciaGordon1992.scale1968': ofSalty('mol/kg', (water) =>
    oxygenContentGarciaGordon1992(to1968(water)),
  ),
  'oxygenSaturationGarciaGordon1992.moles': ofSalty(
    'mol/m3',
    (water) => oxygenSaturationGarciaGordon1992(water) / OXYGEN_MOLAR_MASS,
  ),
  oxygenSaturationGarciaGordon1992: ofSalty('kg/m3', oxygenSaturationGarciaGordon1992),
  unionizedAmmoniaFractionEmerson1975: adapter({
    inputs: sour,
    result: '1',
    compute: unionizedAmmoniaFractionEmerson1975,
  }),
  unionizedAmmoniaFractionKhoo1977: ofAmmonia(unionizedAmmoniaFractionKhoo1977),
  unionizedAmmoniaFractionBell2007: ofAmmonia(unionizedAmmoniaFractionBell2007),
  unionizedAmmoniaFraction: ofAmmonia(unionizedAmmoniaFraction),
  'ammoniaCriteriaEpa2013.acute': adapter({
    inputs: sour,
    result: 'kg/m3',
    compute: (water) => ammoniaCriteriaEpa2013(water).acuteKgNPerM3,
  }),
  'ammoniaCriteriaEpa2013.chronic': adapter({
    inputs: sour,
    result: 'kg/m3',
    compute: (water) => ammoniaCriteriaEpa2013(water).chronicKgNPerM3,
  }),
  carbonicAcidConstantPlummerBusenberg1982: ofFresh('1', carbonicAcidConstantPlummerBusenberg1982),
  bicarbonateConstantPlummerBusenberg1982: ofFresh('1', bicarbonateConstantPlummerBusenberg1982),
  activityCoefficientDavies: adapter({
    inputs: { ...fresh, charge: '1', ionicStrengthMolPerM3: 'mol/m3' },
    result: '1',
    compute: activityCoefficientDavies,
  }),
  carbonDioxideKgPerM3: adapter({
    inputs: { ...sour, alkalinityKgPerM3: 'kg/m3' },
    result: 'kg/m3',
    compute: (water) => carbonDioxideKgPerM3(water),
  }),
} satisfies Registry;

export const waterLaws = { ...physicalLaws, ...chemicalLaws } satisfies Registry;
