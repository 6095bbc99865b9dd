/** A complex number. */
export interface Complex {
  readonly re: number;
  readonly im: number;
}

export const ONE: Complex = { re: 1, im: 0 };

export const plus = (a: Complex, b: Complex): Complex => ({ re: a.re + b.re, im: a.im + b.im });

export const times = (a: Complex, b: Complex): Complex => ({
  re: a.re * b.re - a.im * b.im,
  im: a.re * b.im + a.im * b.re,
});

export const scaled = (a: Complex, factor: number): Complex => ({ re: a.re * factor, im: a.im * factor });

/** e to the power of a. */
export const exponential = (a: Complex): Complex => {
  const size = Math.exp(a.re);
  return { re: size * Math.cos(a.im), im: size * Math.sin(a.im) };
};

/** a to a real power, on the branch that is real for positive numbers; a is not 0. */
export const toPower = (a: Complex, power: number): Complex =>
  exponential({ re: power * Math.log(Math.hypot(a.re, a.im)), im: power * Math.atan2(a.im, a.re) });
