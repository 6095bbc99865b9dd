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
 * Churchill 1977, with the laminar constant left open so that it serves plane slots as well.
 * @param laminarConstant 64 for round bores, 96 for plane slots on twice their thickness
 */
export const churchill = (
  Re: number,
  shape: { readonly relativeRoughness: number; readonly laminarConstant: number },
  cell: FrictionCell,
): void => {
  if (Re < 10) {
    // Below Re 10 the turbulent term is smaller than a rounding error, and (8/Re)^12 would overflow near zero.
    cell.factor = shape.laminarConstant / Re;
    cell.slope = -cell.factor / Re;
    return;
  }
  const laminar = (shape.laminarConstant / 8 / Re) ** 12;
  const power = (7 / Re) ** 0.9;
  const logArgument = power + 0.27 * shape.relativeRoughness;
  const log = 2.457 * Math.log(1 / logArgument);
  const a = log ** 16;
  const b = (37530 / Re) ** 16;
  const turbulent = (a + b) ** -1.5;
  const sum = laminar + turbulent;
  cell.factor = 8 * sum ** (1 / 12);
  const aSlope = (16 * (a / log) * 2.457 * 0.9 * power) / (Re * logArgument);
  const turbulentSlope = (-1.5 * turbulent * (aSlope - (16 * b) / Re)) / (a + b);
  cell.slope = (cell.factor / 12) * ((-12 * laminar) / Re + turbulentSlope) * (1 / sum);
};

const LOG10 = Math.LN10;

/** Laminar below Re 2000, Swamee & Jain 1976 above 4000, Dunlop's cubic between (1991). */
export const swameeJainCubic = (Re: number, relativeRoughness: number, cell: FrictionCell): void => {
  if (Re < 2000) {
    cell.factor = 64 / Re;
    cell.slope = -cell.factor / Re;
    return;
  }
  if (Re > 4000) {
    const power = 5.74 / Re ** 0.9;
    const argument = relativeRoughness / 3.7 + power;
    const log = Math.log10(argument);
    cell.factor = 0.25 / log ** 2;
    cell.slope = (-2 * cell.factor * ((-0.9 * power) / Re)) / (log * argument * LOG10);
    return;
  }
  const y2 = relativeRoughness / 3.7 + 5.74 / 4000 ** 0.9;
  const y3 = -2 * Math.log10(y2);
  const fa = y3 ** -2;
  // 0.00514215 of the source is 1.8·2/ln 10 · 5.74/4000^0.9, here unrounded.
  const fb = fa * (2 - ((3.6 / LOG10) * (5.74 / 4000 ** 0.9)) / (y2 * y3));
  const r = Re / 2000;
  const x1 = 7 * fa - fb;
  const x2 = 0.128 - 17 * fa + 2.5 * fb;
  const x3 = -0.128 + 13 * fa - 2 * fb;
  const x4 = 0.032 - 3 * fa + 0.5 * fb;
  cell.factor = x1 + r * (x2 + r * (x3 + r * x4));
  cell.slope = (x2 + r * (2 * x3 + r * 3 * x4)) / 2000;
};
