import type { Box, Layout, Leak, Opening, Point, Weir } from '@fettle/engine/families/layout.ts';
import type { Pen } from './housing.ts';
import { halo } from './labels.ts';
import { printShare } from './lengths.ts';
import { dashed, gapPath } from './ribbons.ts';
import { isAlarming, type Shares } from './shares.ts';
import { labelSide } from './sheet.ts';
import { type Palette, sizes } from './tokens.ts';

/** A way past the media as it is drawn: its line on the sheet and where its share stands. */
interface BypassLine {
  readonly id: string;
  readonly points: readonly Point[];
  /** Undefined where nothing has been reckoned. */
  readonly share: number | undefined;
  readonly labelAt: Point;
  readonly anchor?: 'start' | 'middle' | 'end';
}

/** The middle of a space inside the housing, the far edge of one outside. */
function farX(layout: Layout, space: string): number {
  const box = layout.spaces.find((one) => one.id === space)?.box;
  if (!box) return 0;
  return box.x < (layout.drawing.housing[0]?.x ?? 0) ? box.x : box.x + box.width / 2;
}

/** A leak or an opening past the media runs level from one space to the other. */
function levelLine(way: Leak | Opening, layout: Layout, pen: Pen): readonly Point[] {
  return [way.from, way.to].map((space) => pen.sheet.at({ x: farX(layout, space), y: way.at.y }));
}

/** Clear of the ribbon that a leak joins, mm. */
const besideRibbon = 4;

/** Where the share of a leak stands, or of an opening past the media. */
function besideLevelLine(
  way: Leak | Opening,
  points: readonly Point[],
  at: Point,
): Pick<BypassLine, 'labelAt' | 'anchor'> {
  const from = points[0]?.x ?? at.x;
  const to = points.at(-1)?.x ?? at.x;
  if (!('sealedBy' in way)) return { labelAt: { x: at.x - sizes.wall - 1, y: at.y - 2.2 }, anchor: 'end' };
  // Under a tube the lane of the beds begins just over the line; beside a partition the pump stands over its far end.
  if (way.sealedBy === 'ring')
    return { labelAt: { x: to + besideRibbon, y: at.y + 0.36 * sizes.text }, anchor: 'start' };
  return { labelAt: { x: from + 0.7 * (at.x - from), y: at.y - 2.2 }, anchor: 'middle' };
}

/** How far beside an edge spilt water rises and falls, m. */
const besideEdgeM = 0.012;

/** Height at which spilt water runs over its lip, m. */
const overLipM = 0.005;

/** An overflow rises from its space over the lip and falls beyond the outlet. */
function overflowLine(weir: Weir, layout: Layout, pen: Pen): readonly Point[] {
  const into = layout.spaces.find((space) => space.id === weir.to)?.box;
  if (into) return fallLine(weir, layout, into).map(pen.sheet.at);
  const x = layout.drawing.outlet.x + 0.012;
  const y = weir.at.y + overLipM;
  const rise = layout.spaces.find((space) => space.id === weir.from)?.box;
  const from = rise ? rise.x + 0.7 * rise.width : weir.at.x;
  const foot = rise ? rise.y + 0.75 * rise.height : weir.at.y;
  const end = layout.drawing.waterLevelY ?? foot;
  return [
    { x: from, y: foot },
    { x: from, y },
    { x, y },
    { x, y: end },
  ].map(pen.sheet.at);
}

/** Within a box the water spills over an edge and falls beside it. */
function fallLine(weir: Weir, layout: Layout, into: Box): readonly Point[] {
  const rise = layout.spaces.find((space) => space.id === weir.from)?.box;
  const rightward = (rise?.x ?? 0) < into.x || (rise?.x ?? 0) + (rise?.width ?? 0) < into.x + into.width;
  const side = rightward ? besideEdgeM : -besideEdgeM;
  const y = weir.at.y + overLipM;
  return [
    { x: weir.at.x - side, y: weir.at.y - overLipM },
    { x: weir.at.x - side, y },
    { x: weir.at.x + side, y },
    { x: weir.at.x + side, y: y - 8 * overLipM },
  ];
}

/** Every way past media that water takes, or may take, except those beside one chamber. */
export function wayLines(layout: Layout, shares: Shares | undefined, pen: Pen): readonly BypassLine[] {
  return allWayLines(layout, shares, pen).filter(isTaken);
}

/** Whether water takes a way, as far as is known. */
function isTaken({ share }: BypassLine): boolean {
  return share === undefined || share > 0;
}

function allWayLines(layout: Layout, shares: Shares | undefined, pen: Pen): readonly BypassLine[] {
  const level = [
    ...layout.leaks.filter((leak) => leak.thicknessM > 0),
    ...layout.openings.filter((one) => one.bypass),
  ];
  const overflows = layout.weirs.filter((weir) => weir.purpose === 'overflow');
  const share = (id: string): number | undefined => shares && (shares.way.get(id) ?? 0);
  return [
    ...level.map((way) => {
      const points = levelLine(way, layout, pen);
      const beside = besideLevelLine(way, points, pen.sheet.at(way.at));
      return { id: way.id, points, share: share(way.id), ...beside };
    }),
    ...overflows.map((weir) => {
      const points = overflowLine(weir, layout, pen);
      const [, start, end] = points;
      const x = ((start?.x ?? 0) + (end?.x ?? 0)) / 2;
      return { id: weir.id, points, share: share(weir.id), labelAt: { x, y: (start?.y ?? 0) - 1.3 } };
    }),
  ];
}

/** Every gap beside a chamber that lets water pass. */
export function gapLines(layout: Layout, shares: Shares | undefined, pen: Pen): readonly BypassLine[] {
  return layout.chambers
    .filter((chamber) => chamber.gap.thicknessM > 0)
    .map((chamber) => {
      const points = gapPath(chamber, labelSide(layout, chamber), pen);
      const [from, to] = [points[0], points.at(-1)];
      const labelAt = { x: ((from?.x ?? 0) + (to?.x ?? 0)) / 2, y: ((from?.y ?? 0) + (to?.y ?? 0)) / 2 };
      return { id: chamber.id, points, share: shares && (shares.gap.get(chamber.id) ?? 0), labelAt };
    })
    .filter(isTaken);
}

/** The dashed ribbons; the shares of those that are not beside a chamber stand on the drawing itself. */
export function bypasses(lines: readonly BypassLine[], pen: Pen): string {
  return lines.map((line) => dashed(line.points, pen.palette, isAlarming(line.share))).join('');
}

/** Ink and weight of a share past media: an accent only where it counts as a fault. */
export function shareStyle(
  share: number | undefined,
  palette: Palette,
): { readonly ink: string; readonly weight: 'normal' | 'bold' } {
  return isAlarming(share) ? { ink: palette.fault, weight: 'bold' } : { ink: palette.ink, weight: 'normal' };
}

export function wayShares(lines: readonly BypassLine[], pen: Pen): string {
  return lines
    .filter((line) => line.share !== undefined)
    .map((line) =>
      halo(printShare(line.share ?? 0), {
        ...line.labelAt,
        anchor: line.anchor ?? 'middle',
        paper: pen.palette.paper,
        ...shareStyle(line.share, pen.palette),
        size: sizes.text,
      }),
    )
    .join('');
}
