import { textWidth } from '@fettle/drawing/textWidth.ts';
import { type Palette, palettes, sizes } from '@fettle/drawing/tokens.ts';
import type { CurvePoint, PumpAndSystem } from '@fettle/engine/assessment/hydraulics/curves.ts';
import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';
import { type ScaleLinear, scaleLinear } from 'd3-scale';
import { curveMonotoneX, line } from 'd3-shape';
import { BottomAxis, LeftAxis } from './axes.tsx';
import { axisUnit } from './axisUnit.ts';
import { Diamond, Disc, Label, Range } from './marks.tsx';
import { type LabelToPlace, placeLabels, pointsAlong, type Room, type Spot } from './placeLabels.ts';
import { axisRoom, type Look, PlotSheet, plotRoom, short } from './sheet.tsx';

/** One packing's curves and where they meet, clean. */
export interface PackingCurves extends PumpAndSystem {
  /** As people say it: `as found`, `planned`. */
  readonly name: string;
  readonly duty: CurvePoint;
}

/** A flow measured at the tank, with the half-width of its range, m³/s. */
export interface MeasuredFlow {
  /** In which state: `measured as found`. */
  readonly name: string;
  readonly flowM3PerS: number;
  readonly doubtM3PerS: number;
}

export interface PumpCurvePlotProps extends Look {
  readonly found: PackingCurves;
  readonly planned?: PackingCurves;
  readonly measured?: MeasuredFlow;
}

const title = 'Pump and system, clean';
/** Lane under the curves for a flow that was measured: no head belongs to it. */
const laneHeight = 10;

/** Room of the curves, from no head up. */
const room = plotRoom(title, { left: 14, height: 58 });

/** Room of the curves with the lane under them, which ends on the axis. */
const roomOf = ({ measured }: PumpCurvePlotProps): Room =>
  measured === undefined ? room : { ...room, bottom: room.bottom + laneHeight };

const packingsOf = ({ found, planned }: PumpCurvePlotProps): readonly PackingCurves[] =>
  planned === undefined ? [found] : [found, planned];

/** Packings whose pump is not that of one before: alterations may change it. */
const ownPumps = (packings: readonly PackingCurves[]): readonly PackingCurves[] =>
  packings.filter((one, place) => {
    const ends = ({ pump }: PackingCurves) => JSON.stringify([pump[0], pump.at(-1)]);
    return packings.findIndex((other) => ends(other) === ends(one)) === place;
  });

const printFlow = (value: number, { system }: Look, doubt?: number): string =>
  printQuantity({
    value,
    dimension: 'flow',
    system,
    ...(doubt === undefined ? {} : { doubt: { kind: 'plus-minus', size: doubt } }),
  });

const printHead = (value: number, { system }: Look): string =>
  printQuantity({ value, dimension: 'length', system });

const dutyText = ({ flowM3PerS, headM }: CurvePoint, look: Look): string =>
  `${printFlow(flowM3PerS, look)} at ${printHead(headM, look)}`;

/** The plot in words. */
function says(props: PumpCurvePlotProps): string {
  const packings = packingsOf(props);
  const pumps = ownPumps(packings).map(({ pump, name }, place) => {
    const end = pump.at(-1)!;
    const whose = place === 0 ? 'The pump' : `The pump ${name}`;
    const last = end.headM > 1e-6 ? printHead(end.headM, props) : 'no head';
    return `${whose} gives ${printHead(pump[0]!.headM, props)} at no flow and ${last} at ${printFlow(end.flowM3PerS, props)}.`;
  });
  const duties = packings.map(
    ({ name, duty }) =>
      `With the packing ${name} and clean media, ${printFlow(duty.flowM3PerS, props)} flows at ${printHead(duty.headM, props)} of head.`,
  );
  const { measured } = props;
  const tested = measured
    ? [`Flow ${measured.name}: ${printFlow(measured.flowM3PerS, props, measured.doubtM3PerS)}.`]
    : [];
  return [...pumps, ...duties, ...tested].join(' ');
}

interface Scales {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
  readonly xName: string;
  readonly yName: string;
  readonly spot: (point: CurvePoint) => Spot;
}

/** Scales over everything that is drawn; `x` and `y` take the axis' units, `spot` takes SI. */
export function pumpScales(props: PumpCurvePlotProps): Scales {
  const packings = packingsOf(props);
  const { measured } = props;
  const most = Math.max(
    ...packings.map(({ pump }) => pump.at(-1)!.flowM3PerS),
    measured ? measured.flowM3PerS + measured.doubtM3PerS : 0,
  );
  const highest = Math.max(...packings.map(({ pump }) => pump[0]!.headM));
  const flow = axisUnit('flow', props.system, most);
  const head = axisUnit('length', props.system, highest);
  const x = scaleLinear([0, 1.04 * flow.of(most)], [room.left, room.right]);
  const y = scaleLinear([0, 1.12 * head.of(highest)], [room.bottom, room.top]);
  const spot = (point: CurvePoint): Spot => ({
    x: x(flow.of(point.flowM3PerS)),
    y: y(head.of(point.headM)),
  });
  return { x, y, xName: `flow, ${flow.unit}`, yName: `head, ${head.unit}`, spot };
}

const spotsOf = (curve: readonly CurvePoint[], { spot }: Scales): readonly Spot[] =>
  curve.map(spot).filter(({ x, y }) => x <= room.right && y >= room.top);

const path = line<Spot>(
  ({ x }) => x,
  ({ y }) => y,
)
  .curve(curveMonotoneX)
  .digits(2);

interface CurveProps {
  readonly spots: readonly Spot[];
  readonly stroke: string;
  readonly width: number;
  readonly dashes?: string;
}

const Curve = ({ spots, stroke, width, dashes }: CurveProps) => (
  <path
    d={path(spots) ?? ''}
    fill="none"
    stroke={stroke}
    strokeWidth={width}
    {...(dashes === undefined ? {} : { strokeDasharray: dashes })}
  />
);

const dashesOf = (place: number): { readonly dashes?: string } => (place === 0 ? {} : { dashes: '2.4 1.2' });

const between = ({ left, right }: Pick<Room, 'left' | 'right'>, share: number): number =>
  left + share * (right - left);

/** The spot of a curve nearest to a place along the sheet. */
const spotNear = (spots: readonly Spot[], x: number): Spot =>
  spots.reduce((best, spot) => (Math.abs(spot.x - x) < Math.abs(best.x - x) ? spot : best), spots[0]!);

/** What is written at the duty points: one text where the two packings print alike. */
function dutyLabels(props: PumpCurvePlotProps, { spot }: Scales): readonly LabelToPlace[] {
  const packings = packingsOf(props);
  const texts = packings.map(({ duty }) => dutyText(duty, props));
  const [first] = packings;
  if (new Set(texts).size === 1) {
    const both = packings.length > 1 ? 'both ' : '';
    return [{ says: `${both}${texts[0]}`, at: spot(first!.duty) }];
  }
  return packings.map(({ name, duty }, place) => ({ says: `${name} ${texts[place]}`, at: spot(duty) }));
}

/** Whether two systems are drawn so near to each other that one name must do for both. */
const areAlike = (packings: readonly PackingCurves[], { spot }: Scales): boolean => {
  const [one, other] = packings.map(({ duty }) => spot(duty));
  return one !== undefined && other !== undefined && Math.hypot(one.x - other.x, one.y - other.y) < 1;
};

/** Height on the sheet of a curve at a place along it. */
function heightAt(spots: readonly Spot[], x: number): number | undefined {
  const place = spots.findIndex((spot, index) => index > 0 && spot.x >= x);
  const [from, to] = [spots[place - 1], spots[place]];
  if (from === undefined || to === undefined) return undefined;
  return to.x === from.x ? to.y : from.y + ((to.y - from.y) * (x - from.x)) / (to.x - from.x);
}

/** The side of a curve that is away from the other one, at a spot of it. */
function sideOf(at: Spot, other: readonly Spot[]): Pick<LabelToPlace, 'side'> {
  const y = heightAt(other, at.x);
  if (y === undefined) return {};
  return { side: y < at.y ? 'below' : 'above' };
}

/** What is written along the curves. */
function curveLabels(props: PumpCurvePlotProps, scales: Scales): readonly LabelToPlace[] {
  const packings = packingsOf(props);
  // Along the way to the duty point there is room beside the curve; at its end there seldom is.
  const middles = packings.map(({ system, duty }, place) =>
    spotNear(
      spotsOf(system, scales),
      between({ left: room.left, right: scales.spot(duty).x }, 0.7 + 0.1 * place),
    ),
  );
  const systems = areAlike(packings, scales)
    ? [{ says: 'system, both', at: middles[0]! }]
    : packings.map(({ name }, place) => ({
        says: `system, ${name}`,
        at: middles[place]!,
        ...sideOf(middles[place]!, (packings[1 - place]?.system ?? []).map(scales.spot)),
      }));
  const pumps = ownPumps(packings).map(({ pump, name }, place) => ({
    says: place === 0 ? 'pump' : `pump, ${name}`,
    at: spotNear(spotsOf(pump, scales), between(room, 0.22 + 0.1 * place)),
  }));
  return [...systems, ...pumps];
}

/** A measured flow with its range in the lane over the axis, and under it what it says. */
function Measured({
  props,
  scales,
  palette,
}: {
  props: PumpCurvePlotProps;
  scales: Scales;
  palette: Palette;
}) {
  if (props.measured === undefined) return null;
  const { name, flowM3PerS, doubtM3PerS } = props.measured;
  const y = room.bottom + 3;
  const at = (flow: number): Spot => ({ x: scales.spot({ flowM3PerS: Math.max(0, flow), headM: 0 }).x, y });
  const middle = at(flowM3PerS);
  const says = `${name} ${printFlow(flowM3PerS, props, doubtM3PerS)}`;
  const half = textWidth(says, { size: sizes.text }) / 2;
  const textX = Math.min(room.right - half, Math.max(room.left + 1 + half, middle.x));
  return (
    <g>
      <Range from={at(flowM3PerS - doubtM3PerS)} to={at(flowM3PerS + doubtM3PerS)} palette={palette} />
      <rect x={short(middle.x - 0.4)} y={short(y - 1.6)} width={0.8} height={3.2} fill={palette.ink} />
      <text x={short(textX)} y={short(y + 5)} textAnchor="middle">
        {says}
      </text>
    </g>
  );
}

/** The labels of the plot where they are written. */
export function pumpLabels(props: PumpCurvePlotProps) {
  const scales = pumpScales(props);
  const packings = packingsOf(props);
  const curves = packings.flatMap(({ pump, system }) => [pump, system]);
  const marks = packings.map(({ duty }) => scales.spot(duty));
  return placeLabels([...dutyLabels(props, scales), ...curveLabels(props, scales)], {
    within: room,
    lines: curves.flatMap((curve) => pointsAlong(spotsOf(curve, scales))),
    marks,
  });
}

/** The pump's curve and what the system asks for, of the packing as found and perhaps of the one planned. */
export function PumpCurvePlot(props: PumpCurvePlotProps) {
  const palette = palettes[props.theme];
  const scales = pumpScales(props);
  const packings = packingsOf(props);
  const axis = { room: roomOf(props), palette, ticks: 5 };
  return (
    <PlotSheet look={props} title={title} says={says(props)} height={axis.room.bottom + axisRoom}>
      <LeftAxis {...axis} scale={scales.y} name={scales.yName} />
      <BottomAxis {...axis} scale={scales.x} name={scales.xName} />
      {ownPumps(packings).map(({ name, pump }, place) => (
        <Curve
          key={name}
          spots={spotsOf(pump, scales)}
          stroke={palette.ink}
          width={0.8}
          {...dashesOf(place)}
        />
      ))}
      {packings.map(({ name, system }, place) => (
        <Curve
          key={name}
          spots={spotsOf(system, scales)}
          stroke={palette.water}
          width={sizes.thickLine}
          {...dashesOf(place)}
        />
      ))}
      <Measured props={props} scales={scales} palette={palette} />
      {packings.map(({ name, duty }, place) => {
        const Mark = place === 0 ? Disc : Diamond;
        return <Mark key={name} at={scales.spot(duty)} palette={palette} />;
      })}
      {pumpLabels(props).map((label) => (
        <Label key={`${label.says} ${label.box.top}`} label={label} palette={palette} />
      ))}
    </PlotSheet>
  );
}
