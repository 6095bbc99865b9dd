import type { Box } from '@fettle/engine/families/layout.ts';
import { housingBounds } from './dirtRowDrawing.ts';
import { hatchId, hatchings, idPrefix } from './hatching.ts';
import { rectangle } from './housing.ts';
import { laidLook } from './laidBeds.ts';
import { type Packed, type PlacedBed, placedBeds } from './placedBeds.ts';
import { framed } from './sectionDrawing.ts';
import { coordinate, element, text } from './svg.ts';
import { textWidth } from './textWidth.ts';
import { type Palette, palettes, sizes, type Theme } from './tokens.ts';

/** A filter being packed, one chamber after another. */
export interface PackingToDraw extends Packed {
  /** In the order of the hands: which chamber is packed, and what stands over its small section. */
  readonly stages: readonly { readonly chamber: string; readonly says: string }[];
  readonly title: string;
  /** What the row shows, for who does not see it. */
  readonly says: string;
  readonly theme: Theme;
}

const inARow = 6;
const gapMm = 5;
const tallestMm = 46;
const sheetWidth = 172;
const headMm = sizes.text + 2.4;

interface Row {
  readonly drawn: PackingToDraw;
  readonly beds: readonly PlacedBed[];
  readonly palette: Palette;
  readonly prefix: string;
  readonly bounds: Box;
  /** Millimetres of paper per metre. */
  readonly scale: number;
}

const onPaper =
  ({ bounds, scale }: Row) =>
  (box: Box): Box => ({
    x: (box.x - bounds.x) * scale,
    y: headMm + (bounds.y + bounds.height - box.y - box.height) * scale,
    width: box.width * scale,
    height: box.height * scale,
  });

/** What the section cuts of a chamber or a bed: about a tube it meets it twice. */
const cutsOf = ({ box, twin }: { readonly box: Box; readonly twin?: Box }): readonly Box[] =>
  twin === undefined ? [box] : [box, twin];

/** Beds of this stage are hatched, with a stout edge; those of earlier ones are plain. */
const bedAt = (placed: PlacedBed, now: boolean, row: Row): string => {
  const { palette, prefix, scale } = row;
  const { medium } = placed;
  const { box: place, edge } = laidLook(placed, onPaper(row)(placed.box), scale);
  if (!now)
    return rectangle(place, {
      fill: palette.waterTint,
      stroke: palette.softInk,
      'stroke-width': sizes.thinLine,
      ...edge,
    });
  const fill = medium === undefined ? 'none' : `url(#${hatchId(medium, prefix)})`;
  return [
    rectangle(place, { fill: palette.paper }),
    rectangle(place, { fill, stroke: palette.ink, 'stroke-width': sizes.thickLine, ...edge }),
  ].join('');
};

/** A tag in the middle of its bed; those of beds that stand side by side are staggered. */
const tagOf = (
  { tag, box }: PlacedBed,
  row: Row,
  at: { readonly place: number; readonly count: number },
): string => {
  const place = onPaper(row)(box);
  const size = Math.min(sizes.text, place.height * 0.8);
  if (size < 1.6) return '';
  const isNarrow = place.width < 1.3 * textWidth(tag, { size, bold: true });
  const share = isNarrow ? (at.place + 1) / (at.count + 1) : 0.5;
  return text(tag, {
    x: place.x + place.width / 2,
    y: place.y + place.height * share + 0.36 * size,
    'font-size': size,
    'font-weight': 'bold',
    'text-anchor': 'middle',
    fill: row.palette.ink,
    stroke: row.palette.paper,
    'stroke-width': 0.9,
    'stroke-linejoin': 'round',
    'paint-order': 'stroke',
  });
};

/** The filter once a stage is packed. */
const sectionAfter = (stage: number, row: Row): string => {
  const { drawn, beds, palette, bounds, scale } = row;
  const { housing, walls } = drawn.layout.drawing;
  const done = drawn.stages.slice(0, stage + 1).map(({ chamber }) => chamber);
  const now = done.at(-1);
  const wall = { fill: palette.paper, stroke: palette.ink, 'stroke-width': sizes.thickLine };
  const empty = {
    fill: 'none',
    stroke: palette.softInk,
    'stroke-width': sizes.thinLine,
    'stroke-dasharray': '1 1',
  };
  const packed = beds.filter(({ chamber }) => done.includes(chamber.id));
  const tagged = packed.filter(({ chamber }) => chamber.id === now);
  return [
    text(drawn.stages[stage]!.says, {
      x: (bounds.width * scale) / 2,
      y: sizes.text,
      'text-anchor': 'middle',
      'font-size': sizes.text,
      'font-weight': 'bold',
      fill: palette.ink,
    }),
    ...housing.map((box) => rectangle(onPaper(row)(box), wall)),
    ...walls.map((box) => rectangle(onPaper(row)(box), { fill: palette.ink })),
    ...drawn.layout.chambers.flatMap(cutsOf).map((box) => rectangle(onPaper(row)(box), empty)),
    ...packed.flatMap((bed) => cutsOf(bed).map((box) => bedAt({ ...bed, box }, bed.chamber.id === now, row))),
    ...tagged.map((bed, place) => tagOf(bed, row, { place, count: tagged.length })),
  ].join('');
};

/**
 * A filter being packed: a small section after each chamber, in the order of the hands, with the beds of that chamber
 * hatched and tagged, and those before it plain.
 *
 * @returns SVG of 172 mm width, six sections in a row, with a title and a text alternative
 */
export function packingRowDrawing(drawn: PackingToDraw): string {
  const { layout, stages, theme, title, says } = drawn;
  const palette = palettes[theme];
  const prefix = idPrefix(`packing ${says}`, theme);
  const bounds = housingBounds(layout);
  const columns = Math.min(inARow, Math.max(3, stages.length));
  const width = (sheetWidth - (columns - 1) * gapMm) / columns;
  const scale = Math.min(width / bounds.width, tallestMm / bounds.height);
  const beds = placedBeds(drawn);
  const row: Row = { drawn, beds, palette, prefix, bounds, scale };
  const height = headMm + bounds.height * scale + 4;
  const sections = stages.map((_, stage) => {
    const x = (stage % columns) * (width + gapMm) + (width - bounds.width * scale) / 2;
    const y = Math.floor(stage / columns) * height;
    const transform = `translate(${coordinate(x)} ${coordinate(y)})`;
    return element('g', { transform }, [sectionAfter(stage, row)]);
  });
  const media = beds.flatMap(({ medium }) => (medium ? [medium] : []));
  return framed({
    figure: {
      defs: hatchings(media, { palette, prefix }),
      height: Math.ceil(stages.length / columns) * height,
      content: sections.join(''),
    },
    width: sheetWidth,
    title,
    says,
    prefix,
    palette,
  });
}
