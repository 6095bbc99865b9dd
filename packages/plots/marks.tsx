/** @jsxRuntime automatic */
import { type Palette, sizes } from '@fettle/drawing/tokens.ts';
import type { PlacedLabel, Spot } from './placeLabels.ts';
import { short } from './sheet.tsx';

interface MarkProps {
  readonly at: Spot;
  readonly palette: Palette;
}

/** A full disc: what was found, or the first of two. */
export const Disc = ({ at, palette }: MarkProps) => (
  <circle
    cx={short(at.x)}
    cy={short(at.y)}
    r={1.2}
    fill={palette.ink}
    stroke={palette.paper}
    strokeWidth={0.3}
  />
);

/** An open diamond: what is planned, or the second of two. */
export const Diamond = ({ at, palette }: MarkProps) => (
  <path
    d={`M${short(at.x)} ${short(at.y - 1.6)}l1.6 1.6l-1.6 1.6l-1.6 -1.6Z`}
    fill={palette.paper}
    stroke={palette.ink}
    strokeWidth={sizes.thickLine}
  />
);

/** The ends of a range and the line between them, level or upright. */
export function Range({ from, to, palette }: { from: Spot; to: Spot; palette: Palette }) {
  const isLevel = from.y === to.y;
  const end = isLevel ? 'm0 -1.1v2.2' : 'm-1.1 0h2.2';
  const [start, stop] = [from, to].map(({ x, y }) => `${short(x)} ${short(y)}`);
  return (
    <path
      d={`M${start}L${stop}M${start}${end}M${stop}${end}`}
      fill="none"
      stroke={palette.ink}
      strokeWidth={sizes.line}
    />
  );
}

/** What is written beside a mark, on a rim of paper, with a line to the mark where it stands away from it. */
export function Label({ label, palette }: { readonly label: PlacedLabel; readonly palette: Palette }) {
  const { box, at, leader, says } = label;
  return (
    <g>
      {leader === undefined ? null : (
        <path
          d={`M${short(at.x)} ${short(at.y)}L${short(leader.x)} ${short(leader.y)}`}
          stroke={palette.softInk}
          strokeWidth={sizes.thinLine}
        />
      )}
      <text
        x={short((box.left + box.right) / 2)}
        y={short((box.top + box.bottom) / 2 + 0.36 * sizes.text)}
        textAnchor="middle"
        stroke={palette.paper}
        strokeWidth={0.9}
        strokeLinejoin="round"
        paintOrder="stroke"
      >
        {says}
      </text>
    </g>
  );
}
