import type { Spots } from './spots.ts';

/** Space between a thing and the line round it, mm of the sheet. */
const roomMm = 1;
/** Radius of the ring round a point, mm of the sheet. */
const ringMm = 4;

/** What is pointed at, outlined over the section drawing. The words beside it say the same. */
export function SpotsOverlay({ spots, viewBox }: { readonly spots: Spots; readonly viewBox: string }) {
  return (
    <svg className="overlay spots" viewBox={viewBox} aria-hidden="true" focusable="false">
      {spots.boxes.map(({ x, y, width, height }) => (
        <rect
          key={`${x},${y}`}
          x={x - roomMm}
          y={y - roomMm}
          width={width + 2 * roomMm}
          height={height + 2 * roomMm}
        />
      ))}
      {spots.points.map(({ x, y }) => (
        <circle key={`${x},${y}`} cx={x} cy={y} r={ringMm} />
      ))}
    </svg>
  );
}
