import { feedText } from '@fettle/workflows/amounts.ts';
import { type Figure, siOf } from '@fettle/workflows/results/figures.ts';

/** The feed that a plan carries, in the digits of the command. */
export const feed = (figure: Figure): string => feedText(siOf(figure));

/** A sum of money, to the hundredth. */
export const sum = ({ value, unit }: Figure): string => `${value.toFixed(2)} ${unit}`;
