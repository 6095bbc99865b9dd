import { palettes, sizes } from '@fettle/drawing/tokens.ts';
import { scaleLinear } from 'd3-scale';
import { BottomAxis } from './axes.tsx';
import { axisRoom, type Look, PlotSheet, plotRoom, short } from './sheet.tsx';

/** A figure with its range, all three in one unit. */
export interface RangedFigure {
  readonly label: string;
  readonly low: number;
  /** Above 0. */
  readonly median: number;
  readonly high: number;
  /** The range as it is printed. */
  readonly printed: string;
}

export interface RangesPlotProps extends Look {
  /** At least one. */
  readonly figures: readonly RangedFigure[];
}

const title = 'How far each figure may lie from its middle';
const rowHeight = 9.4;
const barHeight = 3;

/** What lies beyond so many times the middle is cut off: else one wide range would leave the others no width. */
const MOST_RATIO = 4;

/** Ends of a range as shares of its middle; `isCut` where the upper one lies beyond the plot. */
export const barOf = ({ low, median, high }: Pick<RangedFigure, 'low' | 'median' | 'high'>) => ({
  from: Math.min(MOST_RATIO, low / median),
  to: Math.min(MOST_RATIO, high / median),
  isCut: high / median > MOST_RATIO,
});

/** Ranges below one another, each against its own middle, so that their widths can be compared. */
export function RangesPlot(props: RangesPlotProps) {
  const palette = palettes[props.theme];
  const { figures } = props;
  const room = plotRoom(title, { left: sizes.margin + 1, height: figures.length * rowHeight + 1 });
  const top = room.top - sizes.lineHeight;
  const axisAt = { ...room, top, bottom: room.bottom - sizes.lineHeight };
  const widest = figures.reduce((most, figure) => Math.max(most, barOf(figure).to), 1.5);
  const x = scaleLinear([0, 1.02 * widest], [room.left, room.right - 2]);
  const says = `From low to high, each against its middle: ${figures.map(({ label, printed }) => `${label} ${printed}`).join('; ')}.`;
  return (
    <PlotSheet look={props} title={title} says={says} height={axisAt.bottom + axisRoom}>
      {figures.map((figure, place) => {
        const y = top + place * rowHeight;
        const { from, to, isCut } = barOf(figure);
        return (
          <g key={figure.label}>
            <text x={room.left} y={short(y + 4)}>
              {figure.label}
            </text>
            <text x={room.right} y={short(y + 4)} textAnchor="end" fontWeight="bold">
              {figure.printed}
            </text>
            <rect
              x={short(x(from))}
              y={short(y + 5.2)}
              width={short(Math.max(0.3, x(to) - x(from)))}
              height={barHeight}
              fill={palette.water}
            />
            {isCut ? (
              <path
                d={`M${short(x(to))} ${short(y + 5.2)}l2 ${barHeight / 2}l-2 ${barHeight / 2}z`}
                fill={palette.water}
              />
            ) : null}
            <path
              d={`M${short(x(1))} ${short(y + 4.8)}v${barHeight + 0.8}`}
              stroke={palette.ink}
              strokeWidth={2 * sizes.line}
            />
          </g>
        );
      })}
      <BottomAxis room={axisAt} palette={palette} ticks={5} scale={x} name="times the middle" />
    </PlotSheet>
  );
}
