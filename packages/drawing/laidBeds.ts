import type { Box, Point } from '@fettle/engine/families/layout.ts';
import type { Bed } from '@fettle/engine/model/model.ts';
import { type Fact, said } from '@fettle/engine/wording/said.ts';
import type { Pen } from './housing.ts';
import { printShare } from './lengths.ts';
import type { PlacedBed } from './placedBeds.ts';
import { dashed } from './ribbons.ts';
import { type Flows, isAlarming } from './shares.ts';
import { type Speech, spokenLength } from './speech.ts';
import { type Palette, sizes } from './tokens.ts';

/** How beds look that do not lie loose from wall to wall: cut small with a gap on each side, or in a mesh bag. */

/** A gap is drawn at least so wide, and a bag so round, mm: at the scale of a phone or a print it is seen. */
const leastGapMm = 1.5;
const leastRoundMm = 1.4;

/** How a bed looks on paper: where it lies, how round its corners are, and how its edge is drawn. */
export interface LaidLook {
  readonly box: Box;
  readonly edge: Readonly<Record<string, string | number>>;
}

const isUpright = ({ chamber: { flow } }: Pick<PlacedBed, 'chamber'>): boolean =>
  flow === 'up' || flow === 'down';

/** A box that leaves a gap at the two sides that the water passes along. */
const narrowed = (box: Box, gap: number, upright: boolean): Box =>
  upright
    ? { ...box, x: box.x + gap, width: box.width - 2 * gap }
    : { ...box, y: box.y + gap, height: box.height - 2 * gap };

/** The gap beside a piece that was cut small, as it is drawn, mm; 0 where there is none. */
const gapMm = ({ bed, chamber, ...placed }: PlacedBed, box: Box, scale: number): number => {
  const { cutGapM = 0 } = bed.laying ?? {};
  const across = isUpright({ chamber, ...placed }) ? box.width : box.height;
  return cutGapM > 0 ? Math.min(Math.max(cutGapM * scale, leastGapMm), 0.3 * across) : 0;
};

/** The mesh of a bag as an edge: dashed, and round where it stays out of the corners. */
const meshEdge = (bag: NonNullable<NonNullable<Bed['laying']>['bag']>, scale: number, box: Box) => ({
  rx: Math.min(Math.max(bag.cornerRadiusM * scale, leastRoundMm), 0.4 * box.height, 0.4 * box.width),
  'stroke-width': sizes.thickLine,
  'stroke-dasharray': '0.9 0.7',
});

/**
 * Look of a bed in its place on paper.
 * @param box where it would lie from wall to wall, mm
 * @param scale mm per m
 */
export const laidLook = (placed: PlacedBed, box: Box, scale: number): LaidLook => {
  const bag = placed.bed.laying?.bag;
  return {
    box: narrowed(box, gapMm(placed, box, scale), isUpright(placed)),
    edge: bag === undefined ? {} : meshEdge(bag, scale, box),
  };
};

/** Share of the flow that goes round a piece or past a bag in the corners; undefined where nothing was reckoned. */
const shareBeside = ({ bed }: PlacedBed, flows: Flows | undefined): number | undefined => {
  const total = flows?.dutyPoint.flowM3PerS ?? 0;
  if (flows === undefined || !(total > 0)) return undefined;
  const { [`cut:${bed.id}`]: cut = 0, [`corners:${bed.id}`]: corners = 0 } = flows.wayFlowM3PerS;
  return Math.max(0, cut + corners) / total;
};

/** The ends of the dashed lines in both gaps of a piece, in the water's direction, mm. */
const gapEnds = (placed: PlacedBed, box: Box, gap: number): readonly (readonly [Point, Point])[] => {
  const { flow } = placed.chamber;
  const inset = 0.4;
  if (isUpright(placed)) {
    const ys = [box.y + box.height - inset, box.y + inset + 1];
    const [from, to] = flow === 'up' ? [ys[0]!, ys[1]!] : [box.y + inset, box.y + box.height - inset - 1];
    return [box.x + gap / 2, box.x + box.width - gap / 2].map((x) => [
      { x, y: from },
      { x, y: to },
    ]);
  }
  const [from, to] =
    flow === 'right'
      ? [box.x + inset, box.x + box.width - inset - 1]
      : [box.x + box.width - inset, box.x + inset + 1];
  return [box.y + gap / 2, box.y + box.height - gap / 2].map((y) => [
    { x: from, y },
    { x: to, y },
  ]);
};

/** The water round pieces that were cut small, dashed in their gaps. */
export const roundPieces = (
  beds: readonly PlacedBed[],
  flows: Flows | undefined,
  { sheet, palette }: Pick<Pen, 'sheet'> & { readonly palette: Palette },
): { readonly content: string; readonly alarming: boolean; readonly any: boolean } => {
  const lines = beds.flatMap((placed) => {
    const box = sheet.box(placed.box);
    const gap = gapMm(placed, box, sheet.scale);
    const alarming = isAlarming(shareBeside(placed, flows));
    return gap > 0 ? gapEnds(placed, box, gap).map((points) => ({ points, alarming })) : [];
  });
  return {
    content: lines.map(({ points, alarming }) => dashed(points, palette, alarming)).join(''),
    alarming: lines.some(({ alarming }) => alarming),
    any: lines.length > 0,
  };
};

/** What is said of a bed, with how it lies where that is not loose from wall to wall. */
export const laidSaid = (
  bed: Fact,
  placed: PlacedBed,
  { assessment, ...speech }: Speech & { readonly assessment?: Flows | undefined },
): Fact => {
  const { cutGapM = 0, bag } = placed.bed.laying ?? {};
  const share = shareBeside(placed, assessment);
  const past = share === undefined || !(share > 0) ? '' : '.share';
  const facts = { ...(past === '' ? {} : { share: printShare(share!) }) };
  if (cutGapM > 0) return said(`bed.cut${past}`, { ...facts, bed, gap: spokenLength(cutGapM, speech) });
  return bag === undefined ? bed : said(`bed.bag${past}`, { ...facts, bed });
};
