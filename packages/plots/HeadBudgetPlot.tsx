import { palettes, sizes } from '@fettle/drawing/tokens.ts';
import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';
import { printShare } from '@fettle/engine/quantities/printShort.ts';
import { scaleLinear } from 'd3-scale';
import { BottomAxis } from './axes.tsx';
import { axisUnit } from './axisUnit.ts';
import { axisRoom, type Look, PlotSheet, plotRoom, short } from './sheet.tsx';

/** What one kind of part takes of the pump's head. */
export interface HeadPart {
  readonly label: string;
  readonly headM: number;
  /** Share of the pump's head, 0 to 1. */
  readonly share: number;
}

export interface HeadBudgetPlotProps extends Look {
  /** At least one. */
  readonly parts: readonly HeadPart[];
}

const title = 'Where the pump’s head goes, clean';
const rowHeight = 9.4;
const barHeight = 3;

/** Largest first: what would be worth changing stands on top. */
export const inOrder = (parts: readonly HeadPart[]): readonly HeadPart[] =>
  parts.toSorted((a, b) => b.headM - a.headM);

const printed = ({ headM, share }: HeadPart, { system }: Look): string =>
  `${printQuantity({ value: headM, dimension: 'length', system })}, ${printShare(share)}`;

/** Where the pump's head goes, as bars, each with its head and share. */
export function HeadBudgetPlot(props: HeadBudgetPlotProps) {
  const palette = palettes[props.theme];
  const parts = inOrder(props.parts);
  const room = plotRoom(title, { left: sizes.margin + 1, height: parts.length * rowHeight + 1 });
  const top = room.top - sizes.lineHeight;
  const axisAt = { ...room, top, bottom: room.bottom - sizes.lineHeight };
  const unit = axisUnit('length', props.system, parts[0]!.headM);
  const x = scaleLinear([0, 1.02 * (unit.of(parts[0]!.headM) || 1)], [room.left, room.right]);
  const says = `Of the pump’s head with clean media go ${parts.map((part) => `to ${part.label} ${printed(part, props)}`).join('; ')}.`;
  return (
    <PlotSheet look={props} title={title} says={says} height={axisAt.bottom + axisRoom}>
      {parts.map((part, place) => {
        const y = top + place * rowHeight;
        return (
          <g key={part.label}>
            <text x={room.left} y={short(y + 4)}>
              {part.label}
            </text>
            <text x={room.right} y={short(y + 4)} textAnchor="end" fontWeight="bold">
              {printed(part, props)}
            </text>
            <rect
              x={room.left}
              y={short(y + 5.2)}
              width={short(Math.max(0.3, x(unit.of(part.headM)) - room.left))}
              height={barHeight}
              fill={palette.water}
            />
          </g>
        );
      })}
      <BottomAxis room={axisAt} palette={palette} ticks={5} scale={x} name={`head, ${unit.unit}`} />
    </PlotSheet>
  );
}
