import { palettes, sizes } from '@fettle/drawing/tokens.ts';
import { scaleLinear } from 'd3-scale';
import { area } from 'd3-shape';
import { BottomAxis, LeftAxis } from './axes.tsx';
import { axisUnit } from './axisUnit.ts';
import { Label } from './marks.tsx';
import { placeLabels } from './placeLabels.ts';
import { axisRoom, type Look, PlotSheet, plotRoom } from './sheet.tsx';

/** Head that one kind of part takes by day. */
export interface HeadByDay {
  readonly name: string;
  /** m, one a day from day 0. */
  readonly headM: readonly number[];
}

export interface HeadByDayPlotProps extends Look {
  readonly parts: readonly HeadByDay[];
  readonly says: string;
}

const title = 'Where the head goes, day by day';
/** A band thinner than this has no room for its name, mm. */
const LEAST_NAMED = 4;

/** The lower and upper edges of each part's band by day, m. */
const bandsOf = (parts: readonly HeadByDay[]): readonly (readonly [number, number])[][] => {
  const below = new Array<number>(parts[0]?.headM.length ?? 0).fill(0);
  return parts.map(({ headM }) =>
    headM.map((head, day) => {
      const from = below[day]!;
      below[day] = from + head;
      return [from, from + head] as const;
    }),
  );
};

/** The head that each kind of part takes, one band over the other, over the coming days. */
export function HeadByDayPlot(props: HeadByDayPlotProps) {
  const { parts, says, system } = props;
  const palette = palettes[props.theme];
  const room = plotRoom(title, { left: 14, height: 52 });
  const bands = bandsOf(parts);
  const most = Math.max(1e-9, ...bands.flat().map(([, to]) => to));
  const { unit, of } = axisUnit('length', system, most);
  const days = Math.max(1, (parts[0]?.headM.length ?? 1) - 1);
  const x = scaleLinear([0, days], [room.left, room.right]);
  const y = scaleLinear([0, 1.05 * of(most)], [room.bottom, room.top]);
  const shape = area<readonly [number, number]>(
    (_, day) => x(day),
    ([from]) => y(of(from)),
    ([, to]) => y(of(to)),
  ).digits(2);
  const middle = Math.floor(days / 2);
  const names = parts.flatMap(({ name }, place) => {
    const [from, to] = bands[place]![middle]!;
    const at = { x: x(middle), y: y(of((from + to) / 2)) };
    return y(of(from)) - y(of(to)) < LEAST_NAMED ? [] : [{ says: name, at }];
  });
  const labels = placeLabels(names, { within: room, lines: [], marks: [] });
  const axis = { room, palette, ticks: 5 };
  return (
    <PlotSheet look={props} title={title} says={says} height={room.bottom + axisRoom}>
      <LeftAxis {...axis} scale={y} name={`head, ${unit}`} />
      {bands.map((band, place) => (
        <path
          key={parts[place]!.name}
          d={shape(band) ?? ''}
          fill={place % 2 === 0 ? palette.hatch : palette.paper}
          fillOpacity={0.35}
          stroke={palette.ink}
          strokeWidth={sizes.line}
        />
      ))}
      <BottomAxis {...axis} scale={x} name="days since every bed was cleaned" />
      {labels.map((label) => (
        <Label key={label.says} label={label} palette={palette} />
      ))}
    </PlotSheet>
  );
}
