import type { Figure } from '../../model/figure.ts';

const DAY_S = 86_400;

/** Figures of the dirt models with doubt and source; the constants below are their values. */
export const dirtFigures = {
  solidsPerFeedRatio: {
    value: 0.25,
    doubt: { kind: 'factor', size: 1.5 },
    source: {
      kind: 'secondary',
      text: 'Timmons & Ebeling, Recirculating Aquaculture: 0.2–0.4 kg suspended solids per kg dry feed',
    },
  },
  sizeExponent: {
    value: 3.4,
    doubt: { kind: 'plus-minus', size: 0.5 },
    source: {
      kind: 'secondary',
      text: 'power law of number by size in recirculating water; above 94 % of particles under 20 µm (Fernandes et al. 2014)',
    },
  },
  depositDryDensityKgPerM3: {
    value: 50,
    doubt: { kind: 'factor', size: 3 },
    source: {
      kind: 'memory',
      text: 'floc is 1–5 % dry matter; a published run of a sand bed implies 160 for sand',
    },
  },
  excessDensityKgPerM3: {
    value: 60,
    doubt: { kind: 'factor', size: 2 },
    source: { kind: 'memory', text: 'wet fish solids over the water they settle in' },
  },
  stickingFraction: {
    value: 0.3,
    doubt: { kind: 'factor', size: 3 },
    source: { kind: 'memory', text: 'between repelling clay (0.01) and well-flocculated dirt (1)' },
  },
  cakeResistanceMPerKg: {
    value: 1e10,
    doubt: { kind: 'factor', size: 10 },
    source: { kind: 'memory', text: 'soft biological solids, 1e9–1e12 m/kg' },
  },
  solidsNitrogenRatio: {
    value: 0.04,
    doubt: { kind: 'factor', size: 1.5 },
    source: { kind: 'memory', text: 'organic nitrogen of dry fish solids' },
  },
  solidsDecayPerS: {
    value: 0.055 / DAY_S,
    doubt: { kind: 'factor', size: 1.9 },
    source: { kind: 'memory', text: '0.03–0.1 per day at 25 °C, middle of the range in logarithms' },
  },
  decayingFraction: {
    value: 0.5,
    doubt: { kind: 'factor', size: 1.5 },
    source: {
      kind: 'secondary',
      text: 'half of fish farm waste was gone from a screen after 30–40 days at 8 °C (Buryniuk et al. 2006); ash and the cells that grow on it (0.54 g of volatile solids per g of carbon, Schneider et al. 2007) stay',
    },
  },
  carbonPerSolidsRatio: {
    value: 0.4,
    doubt: { kind: 'factor', size: 1.25 },
    source: { kind: 'memory', text: 'organic carbon of dry fish solids' },
  },
  carbonAvailableFraction: {
    value: 0.3,
    doubt: { kind: 'factor', size: 2 },
    source: { kind: 'memory', text: 'ours: share of caught carbon that comes into solution and competes' },
  },
  oxygenPerSolidsRatio: {
    value: 1.07,
    doubt: { kind: 'factor', size: 1.4 },
    source: {
      kind: 'computed',
      text: 'carbon of the solids (0.4) burnt to carbon dioxide, 32/12 kg oxygen per kg; nitrification counted apart',
    },
  },
  depositFactor: {
    value: 17,
    doubt: { kind: 'factor', size: 3.5 },
    source: { kind: 'memory', text: 'no published value outside sand, where 53 fits; 5–60 taken' },
  },
} as const satisfies Readonly<Record<string, Figure>>;

/** β in n(d) ∝ d^−β, number of particles by size; 1. */
export const SIZE_EXPONENT = dirtFigures.sizeExponent.value;
/** Dry mass of caught solids per volume they fill, kg/m³. */
export const DEPOSIT_DRY_DENSITY_KG_PER_M3 = dirtFigures.depositDryDensityKgPerM3.value;
/** Density of wet suspended solids above that of water, kg/m³. */
export const EXCESS_DENSITY_KG_PER_M3 = dirtFigures.excessDensityKgPerM3.value;
/** Share of contacts with a piece or fibre that hold; 0 to 1. */
export const STICKING_FRACTION = dirtFigures.stickingFraction.value;
/** Resistance of a mat per dry mass on an area, m/kg. */
export const CAKE_RESISTANCE_M_PER_KG = dirtFigures.cakeResistanceMPerKg.value;
/** Organic nitrogen in dry solids, kg/kg. */
export const SOLIDS_NITROGEN_RATIO = dirtFigures.solidsNitrogenRatio.value;
/** Decay of caught solids at 25 °C, 1/s. */
export const DECAY_PER_S = dirtFigures.solidsDecayPerS.value;
/** Share of caught solids that rots away in time, by mass and volume; the rest stays until it is rinsed out, 0 to 1. */
export const DECAYING_FRACTION = dirtFigures.decayingFraction.value;
/** γ in J/J₀ = (1 + γσ)² where nothing better is known; 1. */
export const DEPOSIT_FACTOR = dirtFigures.depositFactor.value;
/** Organic carbon in dry solids, kg/kg. */
export const CARBON_PER_SOLIDS_RATIO = dirtFigures.carbonPerSolidsRatio.value;
/** Share of that carbon that competes with nitrification, 0 to 1. */
export const CARBON_AVAILABLE_FRACTION = dirtFigures.carbonAvailableFraction.value;
/** Oxygen that dry solids use as they rot, without their nitrogen, kg/kg. */
export const DIRT_OXYGEN_RATIO = dirtFigures.oxygenPerSolidsRatio.value;
