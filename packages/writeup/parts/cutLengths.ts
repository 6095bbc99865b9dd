import { printLength } from '@fettle/drawing/lengths.ts';
import { asWritten } from '@fettle/engine/wording/word.ts';
import type { Writer } from './writer.ts';

/** A length as it is cut, in mm and inches whatever its size: nobody sets a square in centimetres and feet. */
export const cutLength = ({ language }: Writer, lengthM: number): string => {
  const [metric, us] = (['metric', 'us'] as const).map((units) =>
    asWritten(printLength({ lengthM, units }), language),
  );
  return `${metric} (${us})`;
};

const figureOf = (printed: string): string => printed.replace(/\s\S+$/u, '');

/** Two sides of a piece, `172 × 168 mm (6.77 × 6.61 in)`. */
export const cutSides = (writer: Writer, acrossM: number, otherM: number): string => {
  const { language } = writer;
  const [metric, us] = (['metric', 'us'] as const).map((units) => {
    const across = figureOf(asWritten(printLength({ lengthM: acrossM, units }), language));
    const other = asWritten(printLength({ lengthM: otherM, units }), language);
    return writer.say('cut.sides', { across, other });
  });
  return `${metric} (${us})`;
};
