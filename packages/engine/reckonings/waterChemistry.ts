import {
  unionizedAmmoniaFraction,
  unionizedAmmoniaFractionEmerson1975Range,
  unionizedAmmoniaFractionKhoo1977Range,
} from '../laws/water/ammonia.ts';
import { carbonDioxideKgPerM3, carbonDioxideRange } from '../laws/water/carbonate.ts';
import { ammoniaCriteriaEpa2013, ammoniaCriteriaEpa2013Range } from '../laws/water/criteria.ts';
import { convertBasis } from '../quantities/basis.ts';
import {
  choiceOr,
  countedAs,
  nitrogenReading,
  optional,
  pH,
  quantity,
  salinity,
  temperature,
} from './inputs.ts';
import { outsideOf, toldTemperature } from './outside.ts';
import { reckoning } from './reckoning.ts';

const ammoniaBasis = choiceOr(['N', 'NH3', 'NH4'], {
  label: 'what ammonia is counted as, in the inputs that do not say it and in the results',
  otherwise: 'N',
});

const told = (values: { readonly temperature: number; readonly pH: number }) => ({
  temperatureK: toldTemperature(values.temperature),
  pH: { label: 'pH', value: values.pH },
});

const emersonExample = (at: string, acidity: string, percent: string) => ({
  source: 'Emerson, Russo, Lund & Thurston 1975, J. Fish. Res. Board Can. 32, 2379–2383, their equation',
  seen: 'formula' as const,
  inputs: { temperature: at, pH: acidity },
  expected: { percent },
});

export const unionizedAmmonia = reckoning({
  name: 'un-ionized-ammonia',
  says: 'Share of total ammonia that is un-ionized, and so poisonous, and how much that is.',
  formula: 'f = 1/(1 + 10^(pKa − pH)), pKa = 0.09018 + 2729.92/T + (0.1552 − 0.0003142 t) I',
  inputs: {
    temperature,
    pH,
    tan: optional(nitrogenReading({ label: 'total ammonia', example: '0.5 mg/L', least: '0 mg/L' })),
    salinity,
    basis: ammoniaBasis,
  },
  results: {
    percent: { label: 'un-ionized share', unit: '%', dimension: 'fraction' },
    concentration: { label: 'un-ionized ammonia', unit: 'mg/L', dimension: 'concentration' },
    countedAs: { label: 'counted as' },
  },
  source:
    'Emerson et al. 1975, J. Fish. Res. Board Can. 32, 2379–2383; with salt Khoo, Culberson & Bates 1977, J. Solution Chem. 6, 281–290 (from memory)',
  compute: (values) => {
    const { tan, basis } = values;
    const fraction = unionizedAmmoniaFraction({
      temperatureK: values.temperature,
      salinity: values.salinity,
      pH: values.pH,
    });
    const concentration =
      tan === undefined ? undefined : fraction * countedAs(tan, { unlessSaid: basis, to: basis });
    const range =
      values.salinity === 0
        ? unionizedAmmoniaFractionEmerson1975Range
        : unionizedAmmoniaFractionKhoo1977Range;
    return {
      answers: { percent: fraction, concentration, countedAs: tan === undefined ? undefined : basis },
      outside: outsideOf(range, { ...told(values), salinity: { label: 'salinity', value: values.salinity } }),
    };
  },
  examples: [
    emersonExample('25 °C', '7.0', '0.5639 %'),
    emersonExample('25 °C', '8.0', '5.366 %'),
    emersonExample('25 °C', '9.0', '36.19 %'),
    emersonExample('20 °C', '7.5', '1.236 %'),
  ],
});

export const ammoniaCriteria = reckoning({
  name: 'ammonia-criteria',
  says: 'Total ammonia that a regulator allows fresh-water life without salmonids, for an hour and for a month.',
  formula:
    'CMC = 0.7249(0.0114/(1 + 10^(7.204 − pH)) + 1.6181/(1 + 10^(pH − 7.204)))·min(51.93, 23.12·10^(0.036(20 − t))); CCC = 0.8876(0.0278/(1 + 10^(7.688 − pH)) + 1.1994/(1 + 10^(pH − 7.688)))·2.126·10^(0.028(20 − max(t, 7)))',
  inputs: { temperature, pH, basis: ammoniaBasis },
  results: {
    acute: { label: 'acute, mean of an hour', unit: 'mg/L', dimension: 'concentration', digits: 3 },
    chronic: { label: 'chronic, mean of 30 days', unit: 'mg/L', dimension: 'concentration', digits: 3 },
    countedAs: { label: 'counted as' },
  },
  source:
    'US EPA 2013, EPA 822-R-13-001, Aquatic Life Ambient Water Quality Criteria for Ammonia – Freshwater',
  compute: (values) => {
    const { basis } = values;
    const criteria = ammoniaCriteriaEpa2013({ temperatureK: values.temperature, pH: values.pH });
    const counted = (value: number) => convertBasis({ value, from: 'N', to: basis });
    return {
      answers: {
        acute: counted(criteria.acuteKgNPerM3),
        chronic: counted(criteria.chronicKgNPerM3),
        countedAs: basis,
      },
      outside: outsideOf(ammoniaCriteriaEpa2013Range, told(values)),
    };
  },
  examples: [
    {
      source: 'EPA 822-R-13-001 (2013), criteria at pH 7 and 20 °C',
      seen: 'printed',
      inputs: { temperature: '20 °C', pH: '7' },
      expected: { acute: '17 mg/L', chronic: '1.9 mg/L' },
    },
  ],
});

export const carbonDioxide = reckoning({
  name: 'carbon-dioxide',
  says: 'Dissolved carbon dioxide from pH and carbonate hardness, in fresh water with no other buffer.',
  formula: '[CO2] = [HCO3]·γ₁·10^−pH/K₁, [HCO3] = (Alk + [H] − [OH])/(1 + 2K₂γ₁/(γ₂ 10^−pH))',
  inputs: {
    pH,
    alkalinity: quantity('alkalinity', {
      label: 'alkalinity (carbonate hardness)',
      example: '4 dKH',
      least: '0 dKH',
    }),
    temperature,
  },
  results: { co2: { label: 'carbon dioxide', unit: 'mg/L', dimension: 'concentration', digits: 3 } },
  source:
    'Plummer & Busenberg 1982, Geochim. Cosmochim. Acta 46, 1011–1040; activities by Davies 1962, Ion Association',
  compute: (values) => ({
    answers: {
      co2: carbonDioxideKgPerM3({
        temperatureK: values.temperature,
        pH: values.pH,
        alkalinityKgPerM3: values.alkalinity,
      }),
    },
    outside: outsideOf(carbonDioxideRange, {
      ...told(values),
      alkalinityKgPerM3: { label: 'alkalinity', value: values.alkalinity, dimension: 'alkalinity' },
    }),
  }),
  examples: (
    [
      ['7', '4 dKH', '13.396 mg/L'],
      ['6.5', '6 dKH', '62.924 mg/L'],
      ['8.2', '8 dKH', '1.6288 mg/L'],
    ] as const
  ).map(([acidity, alkalinity, printed]) => ({
    source:
      'balance of charge with the constants of Plummer & Busenberg 1982 and activities after Davies 1962, worked out apart',
    seen: 'formula' as const,
    inputs: { pH: acidity, alkalinity, temperature: '25 °C' },
    expected: { co2: printed },
  })),
});
