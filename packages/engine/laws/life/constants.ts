import type { Figure } from '../../model/figure.ts';

const DAY_S = 86_400;

/** Figures of the models of life with doubt and source; the exported constants of this folder are their values. */
export const lifeFigures = {
  tanPerProteinRatio: {
    value: 0.092,
    doubt: { kind: 'factor', size: 1.25 },
    source: {
      kind: 'secondary',
      text: 'Timmons & Ebeling, Recirculating Aquaculture; Ebeling et al. 2006, Aquaculture 257: protein 16 % nitrogen, 80 % of it taken up, 80 % of that excreted, 90 % of that as ammonia',
    },
  },
  oxygenPerNitrogenRatio: {
    value: 4.57,
    doubt: { kind: 'plus-minus', size: 0.4 },
    source: { kind: 'computed', text: 'NH4+ to NO3− without growth, 2 O2 per N; 4.18–4.33 with growth' },
  },
  alkalinityPerNitrogenRatio: {
    value: 7.14,
    doubt: { kind: 'plus-minus', size: 0.1 },
    source: { kind: 'computed', text: 'two equivalents per N as CaCO3, without growth; 7.05 with growth' },
  },
  ammoniumSlopeMPerS: {
    value: 0.45 / DAY_S,
    doubt: { kind: 'factor', size: 1.5 },
    source: {
      kind: 'secondary',
      text: 'Mnyoro et al. 2021, Aquacultural Engineering: fixed bed at 19 °C and 10.8 m/h or more',
    },
  },
  fluxCeilingKgNPerM2PerS: {
    value: 0.75e-3 / DAY_S,
    doubt: { kind: 'factor', size: 1.5 },
    source: { kind: 'memory', text: '0.5–1.0 g N/m²/d at 19 °C, where oxygen inside the film ends it' },
  },
  ammoniaTemperatureTheta: {
    value: 1.079,
    doubt: { kind: 'plus-minus', size: 0.02 },
    source: { kind: 'secondary', text: 'Kinyage & Pedersen 2016, Aquacultural Engineering 75, 51–55' },
  },
  nitriteTemperatureTheta: {
    value: 1.054,
    doubt: { kind: 'plus-minus', size: 0.02 },
    source: { kind: 'secondary', text: 'Kinyage & Pedersen 2016, Aquacultural Engineering 75, 51–55' },
  },
  oxygenHalfSaturationKgPerM3: {
    value: 0.5e-3,
    doubt: { kind: 'factor', size: 2 },
    source: { kind: 'memory', text: '0.3–1.3 mg/L are in use' },
  },
  ammoniumDiffusivityM2PerS: {
    value: 1.957e-9,
    doubt: { kind: 'factor', size: 1.1 },
    source: {
      kind: 'computed',
      text: 'Nernst & Einstein from the limiting conductivity of ammonium at 25 °C, 73.5 S cm²/mol (from memory)',
    },
  },
  feedRatePerS: {
    value: 0.02 / DAY_S,
    doubt: { kind: 'factor', size: 2 },
    source: {
      kind: 'memory',
      text: 'dry feed for a fish of 10 g at 25 °C that is kept and not fattened, 1–4 % of its mass a day',
    },
  },
  feedMassExponent: {
    value: -0.25,
    doubt: { kind: 'plus-minus', size: 0.1 },
    source: {
      kind: 'memory',
      text: 'turnover of a body falls with its mass to the power of about a quarter',
    },
  },
  chloridePerNitriteRatio: {
    value: 10,
    doubt: { kind: 'factor', size: 2 },
    source: { kind: 'memory', text: 'chloride against nitrite nitrogen by mass, 6:1 to 20:1 are advised' },
  },
} as const satisfies Readonly<Record<string, Figure>>;
