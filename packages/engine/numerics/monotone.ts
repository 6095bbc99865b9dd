/** A piecewise cubic through points that rises or falls where the points do. */
export interface MonotoneSpline {
  readonly x: readonly number[];
  readonly y: readonly number[];
  /** dy/dx at each point. */
  readonly slope: readonly number[];
}

/**
 * Cubic through points with no overshoot between them (piecewise cubic Hermite).
 *
 * Slopes start as the three-point estimates and are shrunk until each piece lies within the circle
 * α² + β² ≤ 9 of Fritsch and Carlson. Strictly rising or falling points give a strictly monotone curve with
 * non-zero slopes at both ends, so that the straight continuation is monotone too.
 *
 * @param points.x places, strictly rising, at least two
 * @param points.y values, as many as places, any unit
 * @returns the spline, to be read with `splineValue` and `splineSlope`
 * Accuracy: passes through every point; third order between smooth points.
 * @source Fritsch & Carlson 1980, SIAM J. Numer. Anal. 17, 238–246
 */
export const monotoneSpline = (points: {
  readonly x: readonly number[];
  readonly y: readonly number[];
}): MonotoneSpline => {
  const { x, y } = points;
  const secant = x.slice(1).map((end, i) => (y[i + 1]! - y[i]!) / (end - x[i]!));
  const slope = x.map((_, i) => firstSlope({ x, secant }, i));
  secant.forEach((rise, i) => {
    shrink(slope, rise, i);
  });
  return { x, y, slope };
};

interface Pieces {
  readonly x: readonly number[];
  readonly secant: readonly number[];
}

const firstSlope = ({ x, secant }: Pieces, i: number): number => {
  const last = x.length - 1;
  if (last === 1) return secant[0]!;
  if (i === 0) return endSlope({ near: secant[0]!, far: secant[1]!, ratio: ratioOf(x, 0, 1) });
  if (i === last) {
    const ratio = 1 / ratioOf(x, last - 2, last - 1);
    return endSlope({ near: secant[last - 1]!, far: secant[last - 2]!, ratio });
  }
  const before = secant[i - 1]!;
  const after = secant[i]!;
  if (before * after <= 0) return 0;
  const share = (x[i + 1]! - x[i]!) / (x[i + 1]! - x[i - 1]!);
  return share * before + (1 - share) * after;
};

/** Width of piece `i` over that of piece `j`. */
const ratioOf = (x: readonly number[], i: number, j: number): number =>
  (x[i + 1]! - x[i]!) / (x[j + 1]! - x[j]!);

const endSlope = (end: { near: number; far: number; ratio: number }): number => {
  const parabola = end.near + ((end.near - end.far) * end.ratio) / (1 + end.ratio);
  return parabola * end.near > 0 ? parabola : end.near / 3;
};

const shrink = (slope: number[], rise: number, i: number): void => {
  if (rise === 0) {
    slope[i] = 0;
    slope[i + 1] = 0;
    return;
  }
  const size = Math.hypot(slope[i]! / rise, slope[i + 1]! / rise);
  if (size <= 3) return;
  slope[i] = (slope[i]! * 3) / size;
  slope[i + 1] = (slope[i + 1]! * 3) / size;
};

/** Index of the piece that holds `at`; the first or the last one for places outside. */
const pieceOf = (x: readonly number[], at: number): number => {
  let piece = 0;
  while (piece < x.length - 2 && at >= x[piece + 1]!) piece += 1;
  return piece;
};

/** Value of the spline; beyond its ends it goes on straight. */
export const splineValue = (spline: MonotoneSpline, at: number): number => {
  const { x, y, slope } = spline;
  const last = x.length - 1;
  if (at <= x[0]!) return y[0]! + slope[0]! * (at - x[0]!);
  if (at >= x[last]!) return y[last]! + slope[last]! * (at - x[last]!);
  const i = pieceOf(x, at);
  const width = x[i + 1]! - x[i]!;
  const t = (at - x[i]!) / width;
  const u = 1 - t;
  return (
    y[i]! * (1 + 2 * t) * u * u +
    y[i + 1]! * (1 + 2 * u) * t * t +
    width * t * u * (slope[i]! * u - slope[i + 1]! * t)
  );
};

/** Slope of the spline, dy/dx; constant beyond its ends. */
export const splineSlope = (spline: MonotoneSpline, at: number): number => {
  const { x, y, slope } = spline;
  const last = x.length - 1;
  if (at <= x[0]!) return slope[0]!;
  if (at >= x[last]!) return slope[last]!;
  const i = pieceOf(x, at);
  const width = x[i + 1]! - x[i]!;
  const t = (at - x[i]!) / width;
  const u = 1 - t;
  return (
    (6 * t * u * (y[i + 1]! - y[i]!)) / width + slope[i]! * u * (1 - 3 * t) + slope[i + 1]! * t * (3 * t - 2)
  );
};
