/** Power of ten of the last of so many significant digits of a number: −1 for 12.3 at three digits. */
export function lastPlace(number: number, digits: number): number {
  if (number === 0) return 0;
  // Rounding first: 9.996 at three digits is 10.0.
  const rounded = Math.abs(Number(number.toPrecision(digits)));
  return Math.floor(Math.log10(rounded) + 1e-12) - digits + 1;
}

/**
 * Power of ten to which a figure of this doubt is printed: the doubt keeps one digit, two where it starts with 1 or 2.
 * A doubt of 95 that rounds to 100 keeps its place: 636 ± 95 is 640 ± 100, not 600 ± 100.
 */
export function placeOfDoubt(halfWidth: number): number {
  const startsSmall = /^[12]/.test(halfWidth.toExponential(3));
  return startsSmall ? lastPlace(halfWidth, 2) : Math.floor(Math.log10(halfWidth) + 1e-12);
}

/**
 * Prints a number to a power of ten, once, from its exact value.
 *
 * @param number any finite number
 * @param place power of ten of the last printed digit; above 0 the digits behind it are zeros
 * @returns plain digits, or digits with `e` from a million up and below a ten-thousandth
 */
export function printToPlace(number: number, place: number): string {
  const size = Math.abs(number);
  if (size > 0 && (size >= 1e6 || size < 1e-4)) {
    const digits = Math.min(15, Math.max(0, Math.floor(Math.log10(size)) - place));
    return number.toExponential(digits).replace('e+', 'e');
  }
  const step = 10 ** Math.max(0, place);
  const text = place > 0 ? String(Math.round(number / step) * step) : number.toFixed(Math.min(100, -place));
  return /[1-9]/.test(text) ? text : text.replace('-', '');
}
