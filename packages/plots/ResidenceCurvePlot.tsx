import { type Palette, palettes, sizes } from '@fettle/drawing/tokens.ts';
import type { DyeComparison } from '@fettle/engine/assessment/residence/dye.ts';
import type { ResidenceCurve } from '@fettle/engine/assessment/residence/residence.ts';
import { type ScaleLinear, scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import { BottomAxis, LeftAxis } from './axes.tsx';
import { Diamond, Label } from './marks.tsx';
import { placeLabels, pointsAlong, type Spot } from './placeLabels.ts';
import { axisRoom, type Look, PlotSheet, plotRoom, short } from './sheet.tsx';

export interface ResidenceCurvePlotProps extends Look {
  /** All of the water, as the models have it. */
  readonly whole: ResidenceCurve;
  readonly flowM3PerS: number;
  /** A dye test to be laid over it: its curve is drawn at the flow of the map. */
  readonly dye?: Pick<DyeComparison, 'curve' | 'measured' | 'test'>;
}

const title = 'How long water stays in the filter';
const room = plotRoom(title, { left: 14, height: 52 });

const seconds = (timeS: number): string => `${Number(timeS.toPrecision(2))} s`;

/** Readings of the test as points of the same curve: at twice the flow, half the time and twice the density. */
const readingsOf = ({ dye, flowM3PerS }: ResidenceCurvePlotProps) => {
  if (dye === undefined) return [];
  const factor = (dye.test.flowM3PerS ?? flowM3PerS) / flowM3PerS;
  return dye.curve.map(({ timeS, concentration }) => ({
    timeS: timeS * factor,
    densityPerS: concentration / factor,
  }));
};

/** Nearly all of the water is out: the tail beyond is too thin to see. */
const SEEN = 0.99;

interface Scales {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
}

/** Seconds along the sheet, per cent of the water a second up it. */
export function residenceCurveScales(props: ResidenceCurvePlotProps): Scales {
  const { points } = props.whole;
  const end = (points.find(({ share }) => share >= SEEN) ?? points.at(-1)!).timeS;
  const readings = readingsOf(props);
  const last = readings.findLast(({ densityPerS }) => densityPerS > 0)?.timeS ?? 0;
  const highest = Math.max(...[...points, ...readings].map(({ densityPerS }) => densityPerS));
  return {
    x: scaleLinear([0, 1.05 * Math.max(end, Math.min(last, 2 * end))], [room.left, room.right]),
    y: scaleLinear([0, 112 * highest], [room.bottom, room.top]),
  };
}

const spotOf =
  ({ x, y }: Scales) =>
  (point: { readonly timeS: number; readonly densityPerS: number }): Spot => ({
    x: x(point.timeS),
    y: y(100 * point.densityPerS),
  });

const straight = line<Spot>(
  (spot) => spot.x,
  (spot) => spot.y,
).digits(2);

/** The point of the curve at a time. */
const atTime = ({ points }: ResidenceCurve, timeS: number) =>
  points.reduce((best, one) => (Math.abs(one.timeS - timeS) < Math.abs(best.timeS - timeS) ? one : best));

const marksOf = (whole: ResidenceCurve) =>
  [
    { says: `a tenth ${seconds(whole.t10S)}`, timeS: whole.t10S },
    { says: `half ${seconds(whole.t50S)}`, timeS: whole.t50S },
    { says: `nine tenths ${seconds(whole.t90S)}`, timeS: whole.t90S },
  ].map((mark) => ({ ...mark, densityPerS: atTime(whole, mark.timeS).densityPerS }));

function says({ whole, dye }: ResidenceCurvePlotProps): string {
  const map = `A tenth of the water is through after ${seconds(whole.t10S)}, half after ${seconds(whole.t50S)}, nine tenths after ${seconds(whole.t90S)}; ${seconds(whole.meanS)} on average.`;
  if (dye === undefined) return map;
  const { t10S, t50S, t90S, meanS } = dye.measured;
  return `${map} By dye: ${seconds(t10S)}, ${seconds(t50S)} and ${seconds(t90S)}; ${seconds(meanS)} on average.`;
}

/** The labels of the plot where they are written. */
export function residenceCurveLabels(props: ResidenceCurvePlotProps) {
  const scales = residenceCurveScales(props);
  const spot = spotOf(scales);
  const marks = marksOf(props.whole);
  return placeLabels(
    marks.map((mark) => ({ says: mark.says, at: spot(mark) })),
    {
      within: room,
      lines: pointsAlong(props.whole.points.map(spot).filter(({ x }) => x <= room.right)),
      marks: readingsOf(props)
        .map(spot)
        .filter(({ x }) => x <= room.right),
    },
  );
}

/** A line from the axis up to the curve. */
const Upright = ({ at, palette }: { readonly at: Spot; readonly palette: Palette }) => (
  <path
    d={`M${short(at.x)} ${short(room.bottom)}V${short(at.y)}`}
    fill="none"
    stroke={palette.softInk}
    strokeWidth={sizes.line}
    strokeDasharray="1 1"
  />
);

/** Readings that stand far enough apart to be told from each other, and all of few. */
const MOST_MARKS = 40;

/** What a shot of dye draws at the outlet, by the map and perhaps as it was read. */
export function ResidenceCurvePlot(props: ResidenceCurvePlotProps) {
  const palette = palettes[props.theme];
  const scales = residenceCurveScales(props);
  const spot = spotOf(scales);
  const axis = { room, palette, ticks: 5 };
  const readings = readingsOf(props)
    .map(spot)
    .filter(({ x }) => x <= room.right);
  const every = Math.ceil(readings.length / MOST_MARKS);
  return (
    <PlotSheet look={props} title={title} says={says(props)} height={room.bottom + axisRoom}>
      <LeftAxis {...axis} scale={scales.y} name="water that comes out, % a second" />
      <BottomAxis
        {...axis}
        scale={scales.x}
        name={props.dye === undefined ? 'time since it went in, s' : 'time since it went in, s; ◇ dye'}
      />
      {marksOf(props.whole).map((mark) => (
        <Upright key={mark.says} at={spot(mark)} palette={palette} />
      ))}
      <path
        d={straight(props.whole.points.map(spot).filter(({ x }) => x <= room.right)) ?? ''}
        fill="none"
        stroke={palette.water}
        strokeWidth={0.8}
        strokeLinejoin="round"
      />
      {readings
        .filter((_, place) => place % every === 0)
        .map((at) => (
          <Diamond key={`${at.x} ${at.y}`} at={at} palette={palette} />
        ))}
      {residenceCurveLabels(props).map((label) => (
        <Label key={label.says} label={label} palette={palette} />
      ))}
    </PlotSheet>
  );
}
