import { STANDARD_ATMOSPHERE_PA } from '../laws/constants.ts';
import { waterDensity, waterDensityIapwsSr6, waterDensityRange } from '../laws/water/density.ts';
import {
  oxygenSaturationBensonKrause1984,
  oxygenSaturationBensonKrause1984Range,
} from '../laws/water/oxygen.ts';
import { waterViscosity, waterViscosityIapwsSr6Range, waterViscosityRange } from '../laws/water/viscosity.ts';
import { quantityOr, salinity, temperature } from './inputs.ts';
import { outsideOf, toldTemperature } from './outside.ts';
import { reckoning } from './reckoning.ts';

const water = (values: { readonly temperature: number; readonly salinity: number }) => ({
  temperatureK: values.temperature,
  salinity: values.salinity,
});

const told = (values: { readonly temperature: number; readonly salinity: number }) => ({
  temperatureK: toldTemperature(values.temperature),
  salinity: { label: 'salinity', value: values.salinity },
});

/** Water of the tank as the reckonings of flow take it: fresh, at one atmosphere. */
export const freshWater = (temperatureK: number) => ({
  densityKgPerM3: waterDensityIapwsSr6({ temperatureK }),
  viscosityPaS: waterViscosity({ temperatureK, salinity: 0 }),
});

/** Sentences where a temperature is outside of what the laws of water hold for. */
export const outsideOfWater = (temperatureK: number): string[] =>
  outsideOf(waterDensityRange, { temperatureK: toldTemperature(temperatureK) });

const densityExample = (at: string, printed: string) => ({
  source: 'Wagner & Pruss 2002, J. Phys. Chem. Ref. Data 31, 387–535 (IAPWS-95), at one atmosphere',
  seen: 'secondary' as const,
  inputs: { temperature: at },
  expected: { density: printed },
});

export const density = reckoning({
  name: 'water-density',
  says: 'Density of fresh or salt water at the surface.',
  formula: 'ρ = ρ_w(T) + A(t)·S + B(t)·S^1.5 + C·S²',
  inputs: { temperature, salinity },
  results: { density: { label: 'density', unit: 'kg/m3', dimension: 'density', digits: 6 } },
  source:
    'IAPWS SR6-08(2011) for the water; Millero & Poisson 1981, Deep-Sea Research 28A, 625–629, for the salt',
  compute: (values) => ({
    answers: { density: waterDensity(water(values)) },
    outside: outsideOf(waterDensityRange, told(values)),
  }),
  examples: [
    {
      ...densityExample('4 °C', '999.975 kg/m3'),
      wider: {
        share: 1e-6,
        because: 'The release is for 100 kPa, the table for 101.325 kPa, where water is 0.0006 kg/m3 denser.',
      },
    },
    densityExample('20 °C', '998.207 kg/m3'),
    densityExample('30 °C', '995.649 kg/m3'),
  ],
});

export const viscosity = reckoning({
  name: 'water-viscosity',
  says: 'Dynamic viscosity of fresh or salt water.',
  formula: 'µ = Σ aᵢ (T/300 K)^bᵢ · (1 + A S + B S²)',
  inputs: { temperature, salinity },
  results: { viscosity: { label: 'viscosity', unit: 'Pa.s', dimension: 'viscosity', digits: 5 } },
  source:
    'IAPWS SR6-08(2011) for the water; Sharqawy, Lienhard & Zubair 2010, Desalination and Water Treatment 16, 354–380, for the salt',
  compute: (values) => ({
    answers: { viscosity: waterViscosity(water(values)) },
    outside: outsideOf(
      values.salinity === 0 ? waterViscosityIapwsSr6Range : waterViscosityRange,
      told(values),
    ),
  }),
  examples: (
    [
      ['10 °C', '1.3059 mPa.s'],
      ['20 °C', '1.0016 mPa.s'],
      ['25 °C', '0.8900 mPa.s'],
    ] as const
  ).map(([at, printed]) => ({
    source: 'IAPWS R12-08, Huber et al. 2009, J. Phys. Chem. Ref. Data 38, 101–125, at one atmosphere',
    seen: 'secondary' as const,
    inputs: { temperature: at },
    expected: { viscosity: printed },
  })),
});

export const oxygenSaturation = reckoning({
  name: 'oxygen-saturation',
  says: 'Oxygen that water holds when it is in balance with the air above it.',
  formula: 'ln C = Σ aᵢ/Tⁱ − S(b₀ + b₁/T + b₂/T²), times (P − u)(1 − θP)/((1 − u)(1 − θ))',
  inputs: {
    temperature,
    salinity,
    pressure: quantityOr('pressure', {
      label: 'pressure of the air, absolute, at the place and not reduced to sea level',
      example: '0.95 atm',
      above: '0 Pa',
      otherwise: '1 atm',
    }),
  },
  results: { oxygen: { label: 'oxygen', unit: 'mg/L', dimension: 'concentration' } },
  source: 'Benson & Krause 1984, Limnol. Oceanogr. 29, 620–632, as in APHA Standard Methods 4500-O',
  compute: (values) => ({
    answers: { oxygen: oxygenSaturationBensonKrause1984({ ...water(values), pressurePa: values.pressure }) },
    outside: outsideOf(oxygenSaturationBensonKrause1984Range, {
      ...told(values),
      pressurePa: { label: 'pressure', value: values.pressure, dimension: 'pressure' },
    }),
    notes:
      values.pressure < 0.2 * STANDARD_ATMOSPHERE_PA
        ? ['The pressure is that of the air itself, not what a gauge shows above it.']
        : [],
  }),
  examples: (
    [
      [{ temperature: '0 °C' }, '14.621 mg/L'],
      [{ temperature: '20 °C' }, '9.092 mg/L'],
      [{ temperature: '25 °C' }, '8.263 mg/L'],
      [{ temperature: '30 °C' }, '7.559 mg/L'],
      [{ temperature: '25 °C', salinity: '35' }, '6.772 mg/L'],
      [{ temperature: '20 °C', pressure: '0.90 atm' }, '8.162 mg/L'],
    ] as const
  ).map(([inputs, printed]) => ({
    source: 'APHA Standard Methods 4500-O, table of oxygen in water in balance with moist air',
    seen: 'secondary' as const,
    inputs,
    expected: { oxygen: printed },
  })),
});
