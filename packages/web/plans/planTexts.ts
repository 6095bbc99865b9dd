import type { Figure } from '@fettle/workflows/results/figures.ts';

/** A figure of a plan, three digits that count. */
export const three = ({ value, unit }: Figure): string =>
  `${Number(value.toPrecision(3)).toLocaleString()} ${unit}`;

/** A sum of money, to the hundredth. */
export const sum = ({ value, unit }: Figure): string => `${value.toFixed(2)} ${unit}`;
