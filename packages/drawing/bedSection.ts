import type { Box, Chamber, Point } from '@fettle/engine/families/layout.ts';
import { hatchId } from './hatching.ts';
import { type Pen, rectangle } from './housing.ts';
import { type LaneLabel, tagPlate } from './labels.ts';
import { laidLook } from './laidBeds.ts';
import type { Packed, PlacedBed } from './placedBeds.ts';
import { labelSide } from './sheet.ts';
import { type Speech, spoken } from './speech.ts';
import { text } from './svg.ts';
import { sizes } from './tokens.ts';

/** The beds with the hatching of their media, and chambers that hold none. */
export function bedSections(packed: Packed, beds: readonly PlacedBed[], pen: Pen): string {
  const { sheet, palette, prefix } = pen;
  const edge = { stroke: palette.ink, 'stroke-width': sizes.line };
  const cuts = packed.layout.chambers.flatMap(({ box, twin }) => (twin ? [box, twin] : [box]));
  const chambers = cuts.map((box) =>
    rectangle(sheet.box(box), {
      fill: 'none',
      stroke: palette.softInk,
      'stroke-width': sizes.thinLine,
    }),
  );
  const sections = beds.flatMap((placed) => {
    const { medium, box, twin } = placed;
    const fill = medium ? `url(#${hatchId(medium, prefix)})` : 'none';
    return [box, ...(twin ? [twin] : [])].map((cut) => {
      const look = laidLook(placed, sheet.box(cut), sheet.scale);
      return rectangle(look.box, { fill, ...edge, ...look.edge });
    });
  });
  return [...chambers, ...sections].join('');
}

/** The word for empty in every chamber without beds that is tall enough for the word. */
export function emptyChambers(packed: Packed & Pick<Speech, 'language'>, pen: Pen): string {
  return packed.layout.chambers
    .filter((chamber) => (packed.packing[chamber.id] ?? []).length === 0)
    .map((chamber) => ({ box: pen.sheet.box(chamber.box), chamber }))
    .filter(({ box }) => box.height > sizes.text + 1 && box.width > 28)
    .map(({ box }) =>
      text(spoken(packed, 'section.empty'), {
        x: box.x + 2,
        y: box.y + box.height / 2 + 0.36 * sizes.text,
        'font-size': sizes.text,
        'font-style': 'italic',
        fill: pen.palette.softInk,
      }),
    )
    .join('');
}

/** Breadth that a bed needs beside its tag, so that arrows of water fit, mm. */
const besideTag = 10;

function isUpright({ chamber }: PlacedBed): boolean {
  return chamber.flow === 'up' || chamber.flow === 'down';
}

/** Where a tag stands in its bed: at the left, at the foot of a slot; undefined where there is no room. */
function placeInside(box: Box, upright: boolean): Point | undefined {
  if (upright) {
    const room = box.height >= sizes.tagHeight + 1 && box.width >= sizes.tagWidth + 2 + besideTag;
    return room ? { x: box.x + sizes.tagWidth / 2 + 1, y: box.y + box.height / 2 } : undefined;
  }
  const room = box.width >= sizes.tagWidth + 1 && box.height >= sizes.tagHeight + 2 + besideTag;
  const foot = box.y + box.height - sizes.tagHeight / 2 - 1;
  return room ? { x: box.x + box.width / 2, y: foot } : undefined;
}

/** Breadth that tags inside take from a chamber, the same for all that stand over each other, mm. */
export function keptForTags(beds: readonly PlacedBed[], pen: Pen): (chamber: Chamber) => number {
  const tagged = beds.filter((placed) => placeInside(pen.sheet.box(placed.box), isUpright(placed)));
  const upright = new Set(tagged.filter(isUpright).map(({ chamber }) => chamber.box.x));
  const level = new Set(tagged.filter((placed) => !isUpright(placed)).map(({ chamber }) => chamber.id));
  return ({ id, flow, box }) => {
    if (flow === 'up' || flow === 'down') return upright.has(box.x) ? sizes.tagWidth + 2 : 0;
    return level.has(id) ? sizes.tagHeight + 2 : 0;
  };
}

/** Tags of beds: those with room stand in the bed, the others in the lane. */
export function bedTags(
  packed: Packed,
  beds: readonly PlacedBed[],
  pen: Pen,
): { readonly inside: string; readonly inLane: readonly LaneLabel[] } {
  const inside: string[] = [];
  const inLane: LaneLabel[] = [];
  const style = { kind: 'tag', ink: pen.palette.ink, weight: 'bold' } as const;
  for (const placed of beds) {
    const box = pen.sheet.box(placed.box);
    const side = labelSide(packed.layout, placed.chamber);
    const at = placeInside(box, isUpright(placed));
    if (at) inside.push(tagPlate(placed.tag, at, pen.palette));
    else inLane.push({ ...style, content: placed.tag, side, anchor: anchorIn(box, side) });
  }
  return { inside: inside.join(''), inLane };
}

function anchorIn(box: Box, side: LaneLabel['side']): Point {
  const inset = 2.5;
  if (side === 'left') return { x: box.x + inset, y: box.y + box.height / 2 };
  if (side === 'right') return { x: box.x + box.width - inset, y: box.y + box.height / 2 };
  return { x: box.x + box.width / 2, y: box.y + box.height - inset };
}
