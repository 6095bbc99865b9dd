/** @jsxRuntime automatic */
import { type Palette, palettes, sizes } from '@fettle/drawing/tokens.ts';
import type { Dimension } from '@fettle/engine/quantities/dimensions.ts';
import { type ScaleLinear, scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import { BottomAxis, LeftAxis } from './axes.tsx';
import { axisUnit } from './axisUnit.ts';
import { Label } from './marks.tsx';
import { type LabelToPlace, placeLabels, pointsAlong, type Room, type Spot } from './placeLabels.ts';
import { axisRoom, type Look, PlotSheet, plotRoom, short } from './sheet.tsx';

/** One figure of the filter by day. */
export interface DaySeries {
  /** What is written along it. */
  readonly name: string;
  /** SI values, one a day from day 0. */
  readonly values: readonly number[];
  /** Water is drawn in its own ink. */
  readonly isWater?: boolean;
}

export interface DaysPlotProps extends Look {
  readonly title: string;
  /** What is along the upright axis, without its unit. */
  readonly what: string;
  /** Of a share, 0 to 1, nothing: it is told in per cent. */
  readonly dimension: Dimension | 'share';
  readonly series: readonly DaySeries[];
  /** What is along the lower axis, in the language of the rest. */
  readonly dayAxis?: string;
  /** Days on which something was cleaned. */
  readonly cleaned: readonly number[];
  /** The plot in words, with its figures. */
  readonly says: string;
}

/** Solid first, then ever shorter strokes: lines are told apart without colour. */
const dashes: readonly (string | undefined)[] = [undefined, '2.6 1.2', '1.2 1.2', '3.6 1 0.8 1', '0.5 1'];

interface Scales {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
  readonly yName: string;
  readonly spotsOf: (series: DaySeries) => readonly Spot[];
}

const unitOf = ({ dimension, system }: DaysPlotProps, most: number) =>
  dimension === 'share'
    ? { unit: '%', of: (value: number) => 100 * value }
    : axisUnit(dimension, system, most);

const roomOf = ({ title }: DaysPlotProps): Room => plotRoom(title, { left: 14, height: 52 });

const scalesOf = (props: DaysPlotProps, room: Room): Scales => {
  const most = Math.max(1e-12, ...props.series.flatMap(({ values }) => values));
  const { unit, of } = unitOf(props, most);
  const days = Math.max(1, ...props.series.map(({ values }) => values.length - 1));
  const x = scaleLinear([0, days], [room.left, room.right]);
  const y = scaleLinear([0, 1.1 * of(most)], [room.bottom, room.top]);
  const spotsOf = ({ values }: DaySeries): Spot[] =>
    values.map((value, day) => ({ x: x(day), y: y(of(value)) }));
  return { x, y, yName: `${props.what}, ${unit}`, spotsOf };
};

const path = line<Spot>(
  ({ x }) => x,
  ({ y }) => y,
).digits(2);

/** Strokes under the axis on the days on which something was cleaned. */
const CleaningMarks = ({
  cleaned,
  x,
  room,
  palette,
}: {
  readonly cleaned: readonly number[];
  readonly x: Scales['x'];
  readonly room: Room;
  readonly palette: Palette;
}) => (
  <path
    d={cleaned.map((day) => `M${short(x(day))} ${short(room.bottom)}v-2.4`).join('')}
    stroke={palette.ink}
    strokeWidth={sizes.thickLine}
  />
);

/** The day on which a line stands farthest from all others, among days at which a name has room. */
const loneliestDay = (lines: readonly (readonly Spot[])[], place: number): number => {
  const own = lines[place]!;
  const nearest = (day: number): number =>
    Math.min(
      ...lines.map((other, index) => (index === place ? Infinity : Math.abs(other[day]!.y - own[day]!.y))),
    );
  const days = own.map((_, day) => day).filter((day) => day > 0.05 * own.length && day < 0.95 * own.length);
  return days.reduce((best, day) => (nearest(day) > nearest(best) ? day : best), days[0] ?? 0);
};

/** Where each line's name is written: where it is farthest from the others. */
const namesOf = ({ series }: DaysPlotProps, { spotsOf }: Scales): readonly LabelToPlace[] => {
  const lines = series.map(spotsOf);
  return series.map(({ name }, place) => ({ says: name, at: lines[place]![loneliestDay(lines, place)]! }));
};

/** The names of the lines where they are written. */
export const dayLabels = (props: DaysPlotProps) => {
  const room = roomOf(props);
  const scales = scalesOf(props, room);
  return placeLabels(namesOf(props, scales), {
    within: room,
    lines: props.series.flatMap((one) => pointsAlong(scales.spotsOf(one))),
    marks: [],
  });
};

/** Figures of a filter over the coming days, with strokes on the days on which something is cleaned. */
export function DaysPlot(props: DaysPlotProps) {
  const { title, series, cleaned, says, dayAxis = 'days since every bed was cleaned' } = props;
  const palette = palettes[props.theme];
  const room = roomOf(props);
  const scales = scalesOf(props, room);
  const axis = { room, palette, ticks: 5 };
  return (
    <PlotSheet look={props} title={title} says={says} height={room.bottom + axisRoom}>
      <LeftAxis {...axis} scale={scales.y} name={scales.yName} />
      <BottomAxis {...axis} scale={scales.x} name={dayAxis} />
      <CleaningMarks cleaned={cleaned} x={scales.x} room={room} palette={palette} />
      {series.map((one, place) => (
        <path
          key={one.name}
          d={path(scales.spotsOf(one)) ?? ''}
          fill="none"
          stroke={one.isWater ? palette.water : palette.ink}
          strokeWidth={one.isWater ? 0.8 : sizes.thickLine}
          strokeDasharray={dashes[place % dashes.length]}
        />
      ))}
      {dayLabels(props).map((label) => (
        <Label key={`${label.says} ${label.box.top}`} label={label} palette={palette} />
      ))}
    </PlotSheet>
  );
}
