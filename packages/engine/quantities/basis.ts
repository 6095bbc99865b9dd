/** What a concentration is counted as: nitrogen compounds as themselves or as N; alkalinity as CaCO3. */
export type Basis = 'N' | 'NH3' | 'NH4' | 'NO2' | 'NO3' | 'CaCO3';

/**
 * Conventional atomic weights, g/mol.
 * Source: Commission on Isotopic Abundances and Atomic Weights (CIAAW), abridged standard atomic weights 2021.
 */
export const atomicWeight = { H: 1.008, C: 12.011, N: 14.007, O: 15.999, Ca: 40.078 } as const;

const { H, C, N, O, Ca } = atomicWeight;

/** Molar mass, g/mol, of each basis. */
export const molarMass: Readonly<Record<Basis, number>> = {
  N,
  NH3: N + 3 * H,
  NH4: N + 4 * H,
  NO2: N + 2 * O,
  NO3: N + 3 * O,
  CaCO3: Ca + C + 3 * O,
};

/** Milliequivalent per litre of alkalinity as CaCO3, kg/m³: half the molar mass. */
export const milliequivalentKgPerM3 = molarMass.CaCO3 / 2 / 1000;

/** One German degree of carbonate hardness as CaCO3, kg/m³: what 10 mg/L of CaO bind. */
export const germanDegreeKgPerM3 = 0.017848;

const spellings: Readonly<Record<string, Basis>> = {
  N: 'N',
  TAN: 'N',
  'NH3-N': 'N',
  'NH4-N': 'N',
  'NO2-N': 'N',
  'NO3-N': 'N',
  NH3: 'NH3',
  NH4: 'NH4',
  'NH4+': 'NH4',
  NO2: 'NO2',
  'NO2-': 'NO2',
  NO3: 'NO3',
  'NO3-': 'NO3',
  CaCO3: 'CaCO3',
};

/** Reads what a concentration is counted as: `N`, `NH4-N`, `NO3`, `CaCO3`…; `undefined` where it is none of them. */
export function readBasis(text: string): Basis | undefined {
  return Object.hasOwn(spellings, text) ? spellings[text] : undefined;
}

/**
 * Changes what a concentration (or mass) is counted as: the same moles of nitrogen by another molar mass.
 *
 * @param change.value any mass or mass concentration counted as `from`
 * @returns the same in `to`, in the same unit; `undefined` between nitrogen and CaCO3, which do not convert
 */
export function convertBasis(change: { readonly value: number; readonly from: Basis; readonly to: Basis }) {
  const { value, from, to } = change;
  if (from === to) return value;
  if (from === 'CaCO3' || to === 'CaCO3') return undefined;
  return (value * molarMass[to]) / molarMass[from];
}
