import type { ValidRange } from '../range.ts';

/** Flow through a hose that is wound to a coil. */
export interface CoilFlow {
  /** Reynolds number on the bore, 1; above 0. */
  readonly reynolds: number;
  /** Bore over the diameter of the coil at the hose's middle line, 1; 0 (straight) to 0.15. */
  readonly curvature: number;
}

/**
 * Dean number of a coil, De = Re √(d/D).
 *
 * @returns Dean number, 1
 * Accuracy: exact by definition.
 * @source Dean 1927
 */
export const deanNumber = (flow: CoilFlow): number => flow.reynolds * Math.sqrt(flow.curvature);

export const coilFrictionLaminarWhite1929Range = {
  dean: { least: 0, most: 2000 },
  curvature: { least: 0, most: 0.15 },
} as const satisfies ValidRange;

/**
 * Darcy friction factor of laminar flow in a coil.
 *
 * f = (64/Re)/(1 − (1 − (11.6/De)^0.45)^(1/0.45)) for De above 11.6, 64/Re below.
 *
 * @returns Darcy friction factor, 1
 * Accuracy: 5 % for De up to 2000.
 * @source White 1929, Proc. R. Soc. Lond. A 123, 645–663
 */
export const coilFrictionLaminarWhite1929 = (flow: CoilFlow): number => {
  const De = deanNumber(flow);
  const straight = 64 / flow.reynolds;
  return De <= 11.6 ? straight : straight / (1 - (1 - (11.6 / De) ** 0.45) ** (1 / 0.45));
};

export const coilFrictionMishraGupta1979Range = {
  dean: { least: 1, most: 3000 },
  /** Of the turbulent part; the laminar one reaches up to where the two meet. */
  reynolds: { least: 4500, most: 1e5 },
  curvature: { least: 0.003, most: 0.15 },
} as const satisfies ValidRange;

/**
 * Darcy friction factor of a coil, laminar and turbulent.
 *
 * The greater of (64/Re)(1 + 0.033 (lg De)⁴), De at least 1, and f_s + 0.03 √(d/D), which meet about where the flow
 * in a coil turns turbulent; f_s is that of the straight hose.
 *
 * @param flow.straightFactor f_s at the same Re, 1; above 0
 * @returns Darcy friction factor, 1
 * Accuracy: 5 % (laminar), 8 % (turbulent) over the range; f_s of a rough hose is outside what was measured.
 * @source Mishra & Gupta 1979, Ind. Eng. Chem. Process Des. Dev. 18, 130–137
 */
export const coilFrictionMishraGupta1979 = (flow: CoilFlow & { readonly straightFactor: number }): number => {
  const De = Math.max(1, deanNumber(flow));
  const laminar = (64 / flow.reynolds) * (1 + 0.033 * Math.log10(De) ** 4);
  return Math.max(laminar, flow.straightFactor + 0.03 * Math.sqrt(flow.curvature));
};

export const coilFrictionIto1959Range = {
  /** Re (d/D)². */
  itoGroup: { least: 0.034, most: 300 },
  curvature: { least: 0.0015, most: 0.15 },
} as const satisfies ValidRange;

/**
 * Darcy friction factor of turbulent flow in a smooth coil.
 *
 * f = √(d/D) (0.029 + 0.304 (Re (d/D)²)^−0.25).
 *
 * @returns Darcy friction factor, 1
 * Accuracy: 5 % within the range.
 * @source Ito 1959, J. Basic Eng. 81, 123–134
 */
export const coilFrictionIto1959 = (flow: CoilFlow): number =>
  Math.sqrt(flow.curvature) * (0.029 + 0.304 * (flow.reynolds * flow.curvature ** 2) ** -0.25);
