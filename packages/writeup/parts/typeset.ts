const raised: Readonly<Record<string, string>> = { 2: '²', 3: '³' };
const lowered: Readonly<Record<string, string>> = { 2: '₂', 3: '₃', 4: '₄' };

/** Powers behind a number or a stroke, `3 m2/L`, and formulas of what is in the water. */
const powers = /(?<=[\d/] ?)(mm|cm|m|in|ft)([23])(?!\w)/g;
const formulas = /\b(CaCO|NH|NO)([234])(?!\w)/g;

/** What somebody is quoted with, in the marks of either language. */
const quoted = /(“[^”]*”|"[^"]*"|„[^“]*“)/;

/**
 * A sentence with its units and formulas as print has them, `3 m²/L` and `CaCO₃`; what stands in quotation marks is left
 * as it was written.
 */
export const typeset = (text: string): string =>
  text
    .split(quoted)
    .map((part, at) =>
      at % 2 === 1
        ? part
        : part
            .replace(powers, (_, unit: string, power: string) => `${unit}${raised[power]}`)
            .replace(formulas, (_, formula: string, count: string) => `${formula}${lowered[count]}`),
    )
    .join('');
