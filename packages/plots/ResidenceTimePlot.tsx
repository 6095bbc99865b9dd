import { palettes, sizes } from '@fettle/drawing/tokens.ts';
import type { Route } from '@fettle/engine/assessment/assessment.ts';
import { printContact, printShare } from '@fettle/engine/quantities/printShort.ts';
import { type ScaleLinear, scaleLinear } from 'd3-scale';
import { curveStepAfter, line } from 'd3-shape';
import { BottomAxis, LeftAxis } from './axes.tsx';
import { Disc, Label } from './marks.tsx';
import { placeLabels, pointsAlong, type Spot } from './placeLabels.ts';
import { axisRoom, type Look, PlotSheet, plotRoom } from './sheet.tsx';

export interface ResidenceTimePlotProps extends Look {
  /** Every route, as an assessment has them: shares sum to 1. */
  readonly routes: readonly Pick<Route, 'id' | 'share' | 'contactTimeS'>[];
}

/** A rise of the curve: so much water more has left the media by this time. */
export interface Rise {
  readonly timeS: number;
  readonly share: number;
  /** Share of the water that was in media for so long or less, 0 to 1. */
  readonly sum: number;
}

const title = 'How long the water is in the media';
const room = plotRoom(title, { left: 14, height: 52 });
/** Smaller rises have no label of their own: they would stand over each other. */
const LABELLED = 0.03;

/** The rises of the curve, time rising; routes of the same time are one. What is gathered in `rest` counts as no time. */
export function risesOf(routes: ResidenceTimePlotProps['routes']): readonly Rise[] {
  const byTime = new Map<number, number>();
  for (const { share, contactTimeS } of routes)
    byTime.set(contactTimeS, (byTime.get(contactTimeS) ?? 0) + share);
  let sum = 0;
  return [...byTime]
    .toSorted(([a], [b]) => a - b)
    .map(([timeS, share]) => {
      sum += share;
      return { timeS, share, sum };
    });
}

/** Time in the media that half of the water stays at least, s. */
export const middleTime = (rises: readonly Rise[]): number =>
  (rises.find(({ sum }) => sum >= 0.5) ?? rises.at(-1)!).timeS;

/** A rise in words: `81 % for 12 s`. */
const riseText = ({ timeS, share }: Rise): string =>
  timeS > 0 ? `${printShare(share)} for ${printContact(timeS)}` : `${printShare(share)} in no media`;

function saysOf(rises: readonly Rise[], middle: number): string {
  const missed = rises.find(({ timeS }) => timeS === 0)?.share ?? 0;
  const missing = missed > 0 ? `${printShare(missed)} of the water meets no media` : 'All water meets media';
  const half =
    middle > 0 ? `half of it is in media for ${printContact(middle)} or longer` : 'so does half of it';
  const parts = rises.filter(({ timeS, share }) => timeS > 0 && share >= LABELLED).map(riseText);
  return `${missing}; ${half}. By route: ${parts.join(', ') || 'none'}.`;
}

interface Scales {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
}

/** Seconds along the sheet, and per cent of the water up it. */
export function residenceScales(rises: readonly Rise[]): Scales {
  const longest = rises.at(-1)?.timeS ?? 0;
  return {
    x: scaleLinear([0, 1.12 * (longest || 1)], [room.left, room.right]),
    y: scaleLinear([0, 100], [room.bottom, room.top]),
  };
}

const straight = line<Spot>(
  (spot) => spot.x,
  (spot) => spot.y,
).digits(2);

const stairs = line<Spot>(
  (spot) => spot.x,
  (spot) => spot.y,
)
  .curve(curveStepAfter)
  .digits(2);

const cornersOf = (rises: readonly Rise[], { x, y }: Scales): readonly Spot[] => [
  { x: x(0), y: y(0) },
  ...rises.map(({ timeS, sum }) => ({ x: x(timeS), y: y(100 * sum) })),
  { x: room.right, y: y(100) },
];

/** The corners of the stairs with those between them, for what is written beside. */
const outline = (corners: readonly Spot[]): readonly Spot[] =>
  corners.flatMap((corner, place) => [
    ...(place > 0 ? [{ x: corner.x, y: corners[place - 1]!.y }] : []),
    corner,
  ]);

/** The corners of the line that leads from half of the water to its time. */
const halfCorners = (middle: number, { x, y }: Scales): readonly Spot[] => [
  { x: room.left, y: y(50) },
  { x: x(middle), y: y(50) },
  { x: x(middle), y: room.bottom },
];

/** The labels of the plot where they are written. */
export function residenceLabels(rises: readonly Rise[]) {
  const scales = residenceScales(rises);
  const { x, y } = scales;
  const labels = rises
    .filter(({ share }) => share >= LABELLED)
    .toSorted((a, b) => b.share - a.share)
    .map((rise) => ({
      says: riseText(rise),
      at: { x: x(rise.timeS), y: y(100 * (rise.sum - rise.share / 2)) },
    }));
  const half = halfCorners(middleTime(rises), scales);
  const lines = [outline(cornersOf(rises, scales)), half].flatMap(pointsAlong);
  return placeLabels(labels, { within: room, lines, marks: labels.map(({ at }) => at) });
}

/** The share of the water against its time in the pores of the media: steep and far to the right is good. */
export function ResidenceTimePlot(props: ResidenceTimePlotProps) {
  const palette = palettes[props.theme];
  const rises = risesOf(props.routes);
  const middle = middleTime(rises);
  const scales = residenceScales(rises);
  const labels = residenceLabels(rises);
  const axis = { room, palette, ticks: 5 };
  return (
    <PlotSheet look={props} title={title} says={saysOf(rises, middle)} height={room.bottom + axisRoom}>
      <LeftAxis {...axis} scale={scales.y} name="water that has left the media, %" />
      <BottomAxis {...axis} scale={scales.x} name="time in the media, s" />
      <path
        d={straight(halfCorners(middle, scales)) ?? ''}
        fill="none"
        stroke={palette.softInk}
        strokeWidth={sizes.line}
        strokeDasharray="1 1"
      />
      <path
        d={stairs(cornersOf(rises, scales)) ?? ''}
        fill="none"
        stroke={palette.water}
        strokeWidth={0.8}
        strokeLinejoin="round"
      />
      {labels.map((label) => (
        <g key={`${label.says} ${label.at.y}`}>
          <Disc at={label.at} palette={palette} />
          <Label label={label} palette={palette} />
        </g>
      ))}
    </PlotSheet>
  );
}
