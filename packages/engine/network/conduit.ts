/**
 * The friction laws of conduits in the form that the solver needs: value and exact derivative by Reynolds
 * number, without allocation. They are the laws of `laws/hydraulics/friction`, which says where they come
 * from; a test holds the two against each other.
 */

/** Result cell of `churchill` and `swameeJainCubic`: the Darcy factor and its derivative by Re. */
export interface FrictionCell {
  factor: number;
  slope: number;
}

/**
 * Below this Reynolds number the turbulent term is less than 1e-18 of the laminar one, lost in rounding; near
 * zero the powers would overflow as well.
 */
const LAMINAR_ONLY = 700;

const power12 = (x: number): number => {
  const x2 = x * x;
  const x4 = x2 * x2;
  return x4 * x4 * x4;
};

const power16 = (x: number): number => {
  const x2 = x * x;
  const x4 = x2 * x2;
  const x8 = x4 * x4;
  return x8 * x8;
};

/**
 * Churchill 1977, with the laminar constant left open so that it serves plane slots as well. Powers are written
 * as products, and broken ones by way of the logarithm, because `**` takes ten times as long.
 * @param laminarConstant 64 for round bores, 96 for plane slots on twice their thickness
 */
export const churchill = (
  Re: number,
  shape: { readonly relativeRoughness: number; readonly laminarConstant: number },
  cell: FrictionCell,
): void => {
  if (Re < LAMINAR_ONLY) {
    cell.factor = shape.laminarConstant / Re;
    cell.slope = -cell.factor / Re;
    return;
  }
  const perRe = 1 / Re;
  const laminar = power12((shape.laminarConstant / 8) * perRe);
  const power = Math.exp(0.9 * Math.log(7 * perRe));
  const logArgument = power + 0.27 * shape.relativeRoughness;
  const log = -2.457 * Math.log(logArgument);
  const a = power16(log);
  const b = power16(37530 * perRe);
  const ab = a + b;
  const turbulent = 1 / (ab * Math.sqrt(ab));
  const sum = laminar + turbulent;
  cell.factor = 8 * Math.cbrt(Math.sqrt(Math.sqrt(sum)));
  // Slopes times Re: of a, of b (−16 b), of the turbulent term.
  const aRise = (16 * a * 2.457 * 0.9 * power) / (log * logArgument);
  const turbulentRise = (-1.5 * turbulent * (aRise - 16 * b)) / ab;
  cell.slope = (cell.factor * perRe * (turbulentRise / 12 - laminar)) / sum;
};

const LOG10 = Math.LN10;
const POWER_AT_4000 = 5.74 / 4000 ** 0.9;

/** Laminar below Re 2000, Swamee & Jain 1976 above 4000, Dunlop's cubic between (1991). */
export const swameeJainCubic = (Re: number, relativeRoughness: number, cell: FrictionCell): void => {
  if (Re < 2000) {
    cell.factor = 64 / Re;
    cell.slope = -cell.factor / Re;
    return;
  }
  if (Re > 4000) {
    const power = 5.74 * Math.exp(-0.9 * Math.log(Re));
    const argument = relativeRoughness / 3.7 + power;
    const log = Math.log(argument);
    cell.factor = (0.25 * LOG10 * LOG10) / (log * log);
    cell.slope = (1.8 * cell.factor * power) / (Re * log * argument);
    return;
  }
  const y2 = relativeRoughness / 3.7 + POWER_AT_4000;
  const y3 = (-2 / LOG10) * Math.log(y2);
  const fa = 1 / (y3 * y3);
  // 0.00514215 of the source is 1.8·2/ln 10 · 5.74/4000^0.9, here unrounded.
  const fb = fa * (2 - ((3.6 / LOG10) * POWER_AT_4000) / (y2 * y3));
  const r = Re / 2000;
  const x1 = 7 * fa - fb;
  const x2 = 0.128 - 17 * fa + 2.5 * fb;
  const x3 = -0.128 + 13 * fa - 2 * fb;
  const x4 = 0.032 - 3 * fa + 0.5 * fb;
  cell.factor = x1 + r * (x2 + r * (x3 + r * x4));
  cell.slope = (x2 + r * (2 * x3 + r * 3 * x4)) / 2000;
};

/** Terms of Mishra & Gupta's coil: laminar 1 + 0.033 lg(De)⁴, turbulent + 0.03 √(d/D), on the Darcy factor. */
const COIL_LAMINAR = 0.033 / LOG10 ** 4;
const COIL_TURBULENT = 0.03;

/**
 * Turns the factor of a straight round bore into that of a coiled one: the greater of Mishra & Gupta's laminar and
 * turbulent laws, which meet where the flow in a coil turns turbulent.
 * @param curvature bore over the diameter of the coil
 */
export const coil = (Re: number, curvature: number, cell: FrictionCell): void => {
  const root = Math.sqrt(curvature);
  const log = Math.max(0, Math.log(Re * root));
  const log3 = log * log * log;
  const straight = 64 / Re;
  const laminar = straight * (1 + COIL_LAMINAR * log3 * log);
  const turbulent = cell.factor + COIL_TURBULENT * root;
  if (laminar < turbulent) {
    cell.factor = turbulent;
    return;
  }
  cell.factor = laminar;
  cell.slope = (straight * 4 * COIL_LAMINAR * log3 - laminar) / Re;
};
