/** @jsxRuntime automatic */
import { sheetLines } from '@fettle/drawing/drawingKey.ts';
import { fontFamily, type Palette, palettes, sizes, type Theme } from '@fettle/drawing/tokens.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import type { ReactNode } from 'react';
import type { Room } from './placeLabels.ts';

/** How a plot is to look. */
export interface Look {
  /** Start of every id in the plot: unlike that of any other on the page. */
  readonly id: string;
  readonly system: System;
  readonly theme: Theme;
}

const titleStep = sizes.title + 1.4;

const titleLines = (title: string): readonly string[] =>
  sheetLines(title, { from: sizes.margin, size: sizes.title, bold: true });

/** Room that the plot itself has under its title, mm: lower edge and sheet follow from its height. */
export function plotRoom(title: string, { left, height }: { left: number; height: number }): Room {
  const top = sizes.margin + titleLines(title).length * titleStep + 2 + sizes.lineHeight;
  return { left, right: sizes.sheetWidth - sizes.margin - 1, top, bottom: top + height };
}

/** Room under the plot for the figures and the name of an axis, mm. */
export const axisRoom = 2 * sizes.lineHeight + 3;

interface PlotSheetProps {
  readonly look: Look;
  readonly title: string;
  /** The plot in words, with its figures. */
  readonly says: string;
  /** Height of the sheet, mm. */
  readonly height: number;
  readonly children: ReactNode;
}

/** The sheet of a plot, as wide as a drawing's, with its title and its text alternative. */
export function PlotSheet({ look: { id, theme }, title, says, height, children }: PlotSheetProps) {
  const palette: Palette = palettes[theme];
  return (
    <svg
      xmlns="http://www.w3.org/2000/svg"
      viewBox={`0 0 ${sizes.sheetWidth} ${short(height)}`}
      role="img"
      aria-labelledby={`${id}-title ${id}-says`}
      fontFamily={fontFamily}
      fontSize={sizes.text}
      fill={palette.ink}
    >
      <title id={`${id}-title`}>{title}</title>
      <desc id={`${id}-says`}>{says}</desc>
      <rect width={sizes.sheetWidth} height={short(height)} fill={palette.paper} />
      {titleLines(title).map((line, index) => (
        <text
          key={line}
          x={sizes.margin}
          y={short(sizes.margin + 0.8 * sizes.title + index * titleStep)}
          fontSize={sizes.title}
          fontWeight="bold"
        >
          {line}
        </text>
      ))}
      {children}
    </svg>
  );
}

/** A coordinate with two decimals at most. */
export const short = (value: number): number => Number(value.toFixed(2)) + 0;
