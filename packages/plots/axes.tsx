/** @jsxRuntime automatic */
import { type Palette, sizes } from '@fettle/drawing/tokens.ts';
import type { ScaleLinear } from 'd3-scale';
import { tickText } from './axisUnit.ts';
import type { Room } from './placeLabels.ts';
import { short } from './sheet.tsx';

interface AxisProps {
  readonly scale: ScaleLinear<number, number>;
  readonly room: Room;
  /** What is along it, with its unit. */
  readonly name: string;
  readonly palette: Palette;
  /** About so many ticks. */
  readonly ticks: number;
}

/** The axis under a plot: figures at its ticks, its name at the right end. */
export function BottomAxis({ scale, room, name, palette, ticks }: AxisProps) {
  const { left, right, bottom } = room;
  return (
    <g fill={palette.softInk} stroke="none">
      <path
        d={`M${short(left)} ${short(bottom)}H${short(right)}`}
        stroke={palette.ink}
        strokeWidth={sizes.line}
      />
      {scale.ticks(ticks).map((tick) => (
        <g key={tick}>
          <path
            d={`M${short(scale(tick))} ${short(bottom)}v1.2`}
            stroke={palette.ink}
            strokeWidth={sizes.line}
          />
          <text x={short(scale(tick))} y={short(bottom + 4.6)} textAnchor="middle">
            {tickText(tick)}
          </text>
        </g>
      ))}
      <text x={short(right)} y={short(bottom + 4.6 + sizes.lineHeight)} textAnchor="end">
        {name}
      </text>
    </g>
  );
}

/** The axis at the left of a plot with lines across it; its name stands above it. */
export function LeftAxis({ scale, room, name, palette, ticks }: AxisProps) {
  const { left, right, top, bottom } = room;
  return (
    <g fill={palette.softInk} stroke="none">
      <path
        d={`M${short(left)} ${short(top)}V${short(bottom)}`}
        stroke={palette.ink}
        strokeWidth={sizes.line}
      />
      {scale.ticks(ticks).map((tick) => (
        <g key={tick}>
          <path
            d={`M${short(left)} ${short(scale(tick))}H${short(right)}`}
            stroke={palette.hatch}
            strokeWidth={sizes.thinLine / 2}
          />
          <text x={short(left - 1.4)} y={short(scale(tick) + 0.36 * sizes.text)} textAnchor="end">
            {tickText(tick)}
          </text>
        </g>
      ))}
      <text x={sizes.margin} y={short(top - 3)}>
        {name}
      </text>
    </g>
  );
}
