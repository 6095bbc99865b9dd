import { type Palette, palettes, sizes } from '@fettle/drawing/tokens.ts';
import { type ScaleLinear, scaleLinear } from 'd3-scale';
import { BottomAxis, LeftAxis } from './axes.tsx';
import { Diamond, Disc, Label, Range } from './marks.tsx';
import { placeLabels, pointsAlong, type Spot } from './placeLabels.ts';
import { axisRoom, type Look, PlotSheet, plotRoom, short } from './sheet.tsx';

/** A figure in the axis' unit, as it is printed elsewhere, with its range where there is one. */
export interface SaidFigure {
  readonly value: number;
  readonly says: string;
  readonly low?: number;
  readonly high?: number;
}

/** A plan with what it costs and what is got for it. */
export interface PricedPlan {
  readonly id: string;
  readonly cost: SaidFigure;
  readonly gain: SaidFigure;
}

export interface PlansPlotProps extends Omit<Look, 'system'> {
  readonly plans: readonly PricedPlan[];
  /** What the filter gives cleaned and packed as before, for no money. */
  readonly asBefore: SaidFigure;
  /** What is got, as `feed carried`, with the unit of its axis. */
  readonly gain: { readonly name: string; readonly unit: string };
  readonly currency: string;
}

const titleOf = ({ gain }: PlansPlotProps): string =>
  `${gain.name[0]!.toUpperCase()}${gain.name.slice(1)} for the money`;

function saysOf({ plans, asBefore, gain }: PlansPlotProps): string {
  const all = plans.map(({ id, cost, gain: got }) => `${id} ${got.says} for ${cost.says}`);
  const found = `Cleaned, packed as before, ${gain.name}: ${asBefore.says}.`;
  return all.length === 0 ? `${found} No plans.` : `${found} With plans: ${all.join('; ')}.`;
}

interface Scales {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
}

const roomOf = (props: PlansPlotProps) => plotRoom(titleOf(props), { left: 14, height: 56 });

/** Money along the sheet, gain up it; both begin at nothing. */
export function plansScales(props: PlansPlotProps): Scales {
  const room = roomOf(props);
  const dearest = Math.max(...props.plans.map(({ cost }) => cost.value), 0);
  const gains = [props.asBefore, ...props.plans.map(({ gain }) => gain)];
  const most = Math.max(...gains.map(({ value, high }) => high ?? value), 0);
  return {
    x: scaleLinear([0, 1.08 * (dearest || 1)], [room.left + 3, room.right]),
    y: scaleLinear([0, 1.12 * (most || 1)], [room.bottom, room.top]),
  };
}

/** The labels of the plot where they are written. */
export function plansLabels(props: PlansPlotProps) {
  const room = roomOf(props);
  const { x, y } = plansScales(props);
  const found: Spot = { x: x(0), y: y(props.asBefore.value) };
  const plans = props.plans.map(({ id, cost, gain }) => ({
    says: id,
    at: { x: x(cost.value), y: y(gain.value) },
  }));
  const level = pointsAlong([
    { x: room.left, y: found.y },
    { x: room.right, y: found.y },
  ]);
  return placeLabels([{ says: 'cleaned', at: found }, ...plans], {
    within: room,
    lines: level,
    marks: [found, ...plans.map(({ at }) => at)],
  });
}

function RangeOf({
  figure,
  at,
  of,
}: {
  figure: SaidFigure;
  at: Spot;
  of: { y: Scales['y']; palette: Palette };
}) {
  const { low, high } = figure;
  if (low === undefined || high === undefined) return null;
  return <Range from={{ x: at.x, y: of.y(low) }} to={{ x: at.x, y: of.y(high) }} palette={of.palette} />;
}

/** What plans cost and what is got for it, beside the filter cleaned and packed as before. */
export function PlansPlot(props: PlansPlotProps) {
  const palette = palettes[props.theme];
  const room = roomOf(props);
  const { x, y } = plansScales(props);
  const found: Spot = { x: x(0), y: y(props.asBefore.value) };
  const axis = { room, palette, ticks: 5 };
  const look: Look = { id: props.id, theme: props.theme, system: 'metric' };
  return (
    <PlotSheet look={look} title={titleOf(props)} says={saysOf(props)} height={room.bottom + axisRoom}>
      <LeftAxis {...axis} scale={y} name={`${props.gain.name}, ${props.gain.unit}`} />
      <BottomAxis {...axis} scale={x} name={`media and parts, ${props.currency}`} />
      <path
        d={`M${room.left} ${short(found.y)}H${room.right}`}
        stroke={palette.softInk}
        strokeWidth={sizes.line}
        strokeDasharray="2 1.2"
      />
      {props.plans.map(({ id, cost, gain }) => {
        const at = { x: x(cost.value), y: y(gain.value) };
        return (
          <g key={id}>
            <RangeOf figure={gain} at={at} of={{ y, palette }} />
            <Diamond at={at} palette={palette} />
          </g>
        );
      })}
      <RangeOf figure={props.asBefore} at={found} of={{ y, palette }} />
      <Disc at={found} palette={palette} />
      {plansLabels(props).map((label) => (
        <Label key={`${label.says} ${label.box.top}`} label={label} palette={palette} />
      ))}
    </PlotSheet>
  );
}
