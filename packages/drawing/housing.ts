import type { Box, Layout, Opening, Point, Stub } from '@fettle/engine/families/layout.ts';
import { wallHatchId } from './hatching.ts';
import type { Sheet } from './sheet.ts';
import { coordinate, element, pathThrough, text } from './svg.ts';
import { type Palette, sizes } from './tokens.ts';

/** What every part of a drawing is drawn with. */
export interface Pen {
  readonly sheet: Sheet;
  readonly palette: Palette;
  readonly prefix: string;
}

export function rectangle(box: Box, inked: Readonly<Record<string, string | number>>): string {
  return element('rect', {
    x: box.x,
    y: box.y,
    width: Math.max(0, box.width),
    height: Math.max(0, box.height),
    ...inked,
  });
}

function grown(box: Box, by: number): Box {
  return { x: box.x - by, y: box.y - by, width: box.width + 2 * by, height: box.height + 2 * by };
}

/** Walls in section round all parts of the housing as one body, with cuts where the water passes them. */
export function housing(layout: Layout, pen: Pen): string {
  const { sheet, palette, prefix } = pen;
  const inner = sheet.housing;
  const outer = inner.map((box) => grown(box, sizes.wall));
  const outline = { fill: 'none', stroke: palette.ink, 'stroke-width': sizes.thickLine };
  return element('g', {}, [
    ...outer.map((box) => rectangle(box, outline)),
    ...outer.map((box) => rectangle(box, { fill: palette.paper })),
    ...outer.map((box) => rectangle(box, { fill: `url(#${wallHatchId(prefix)})` })),
    ...inner.map((box) => rectangle(box, outline)),
    ...inner.map((box) => rectangle(box, { fill: palette.paper })),
    ...cutsOf(layout, pen).map((box) => cut(box, pen)),
    ...(layout.gravityFed && inner[0] ? [rectangle(openTop(inner[0]), { fill: palette.paper })] : []),
  ]);
}

/** Where an open box has no lid: its upper wall, from inside to inside. */
function openTop(inside: Box): Box {
  const height = sizes.wall + sizes.thickLine;
  return {
    x: inside.x + 0.1,
    y: inside.y - height,
    width: inside.width - 0.2,
    height: height + sizes.thickLine,
  };
}

function cut(box: Box, { palette }: Pen): string {
  const edge = { stroke: palette.ink, 'stroke-width': sizes.line };
  const right = box.x + box.width;
  const lines = [box.y, box.y + box.height].map((y) =>
    element('line', { x1: box.x, x2: right, y1: y, y2: y, ...edge }),
  );
  return rectangle(box, { fill: palette.paper }) + lines.join('');
}

/** Height of a row of slots on paper, mm. */
const slotHeight = 2.6;

function cutsOf(layout: Layout, { sheet }: Pen): readonly Box[] {
  const body = layout.drawing.housing[0];
  const drawn = sheet.housing[0];
  if (!body || !drawn) return [];
  const thickness = sizes.wall + 0.5;
  const across = (x: number): number =>
    x <= body.x ? drawn.x - thickness + 0.25 : drawn.x + drawn.width - 0.25;
  const inWall = (opening: Opening): boolean => opening.at.x <= body.x;
  const slots = layout.openings.filter(inWall).map((opening) => {
    const at = sheet.at(opening.at);
    return { x: across(opening.at.x), y: at.y - slotHeight / 2, width: thickness, height: slotHeight };
  });
  const crest = layout.weirs.find((weir) => weir.purpose === 'outlet');
  if (!crest) return slots;
  const lip = sheet.at(crest.at).y;
  const top = sheet.at({ x: 0, y: body.y + body.height }).y;
  return [...slots, { x: across(crest.at.x), y: top, width: thickness, height: lip - top }];
}

/** Partitions, inner tubes and the floor of the head. */
export function innerWalls(layout: Layout, { sheet, palette }: Pen): string {
  return layout.drawing.walls
    .map(sheet.box)
    .map((box) => atLeast(box, 0.6))
    .map((box) => rectangle(box, { fill: palette.ink }))
    .join('');
}

/** Thin walls stay visible: they are thickened on paper about their middle. */
function atLeast(box: Box, least: number): Box {
  const width = Math.max(box.width, least);
  const height = Math.max(box.height, least);
  return { x: box.x - (width - box.width) / 2, y: box.y - (height - box.height) / 2, width, height };
}

/** The grid on which an upright chamber's media lie, or the rails of a slot. */
export function grids(layout: Layout, { sheet, palette }: Pen): string {
  const dashes = { stroke: palette.ink, 'stroke-width': 0.5, 'stroke-dasharray': '1.2 0.8' };
  return layout.chambers
    .flatMap((chamber) =>
      [chamber.box, ...(chamber.twin ? [chamber.twin] : [])].map((box) => ({ chamber, box })),
    )
    .map(({ chamber, box }) => {
      const { x, y, width, height } = sheet.box(box);
      if (chamber.flow === 'up' || chamber.flow === 'down') {
        const floorY = y + height + 0.3;
        return element('line', { x1: x, x2: x + width, y1: floorY, y2: floorY, ...dashes });
      }
      const sides = [x, x + width];
      return sides
        .map((side) => element('line', { x1: side, x2: side, y1: y, y2: y + height, ...dashes }))
        .join('');
    })
    .join('');
}

/** Tubes and hose ends: two ink lines with paper between them. */
export function stubs(layout: Layout, { sheet, palette }: Pen): string {
  const tube = (stub: Stub): string => {
    const d = pathThrough(stub.along.map(sheet.at));
    const bore = stub.boreM * sheet.scale;
    const line = (stroke: string, width: number): string =>
      element('path', { d, fill: 'none', stroke, 'stroke-width': width, 'stroke-linejoin': 'round' });
    return line(palette.ink, bore + 2 * sizes.thickLine) + line(palette.paper, bore);
  };
  return layout.drawing.stubs.map(tube).join('');
}

/** The pump by its sign: a circle with a triangle that points along the flow. */
export function pump(layout: Layout, { sheet, palette }: Pen): string {
  const box = sheet.box(layout.drawing.pump);
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  const radius = 0.4 * Math.min(box.width, box.height);
  const turn =
    layout.drawing.outlet.y > layout.drawing.pump.y + layout.drawing.pump.height ||
    layout.pumpPlace === 'first'
      ? 0
      : 90;
  const inked = { fill: palette.paper, stroke: palette.ink, 'stroke-width': sizes.thickLine };
  return element('g', {}, [
    rectangle(box, { ...inked, rx: 0.8 }),
    element('circle', { cx: middle.x, cy: middle.y, r: radius, ...inked }),
    element('path', {
      d: `${pathThrough(triangle(radius))}Z`,
      fill: palette.ink,
      transform: `translate(${coordinate(middle.x)} ${coordinate(middle.y)}) rotate(${turn})`,
    }),
  ]);
}

function triangle(radius: number): readonly Point[] {
  return [
    { x: -0.8 * radius, y: 0.5 * radius },
    { x: 0, y: -radius },
    { x: 0.8 * radius, y: 0.5 * radius },
  ];
}

/** The tank's surface with the sign for a water line, and the word for the tank where it has room. */
export function waterLine(layout: Layout, { sheet, palette }: Pen, tank: string): string {
  const level = layout.drawing.waterLevelY;
  const body = sheet.housing[0];
  if (level === undefined || !body) return '';
  const top = Math.max(...layout.drawing.housing.map((box) => box.y + box.height));
  const { y } = sheet.at({ x: 0, y: level });
  const from = level > top ? sheet.left : body.x + body.width + sizes.wall;
  const signX = from + (sheet.right - from) * (level > top ? 0.1 : 0.6);
  const stroke = { stroke: palette.water, 'stroke-width': sizes.line, fill: 'none' };
  const under = [1, 2].map((step) => {
    const half = 2.2 - 0.7 * step;
    return `M${coordinate(signX - half)} ${coordinate(y + 0.9 * step)}h${coordinate(2 * half)}`;
  });
  const sign = `M${coordinate(signX - 1.3)} ${coordinate(y - 2.3)}h2.6l-1.3 2.3z`;
  const line = element('path', {
    d: `M${coordinate(from)} ${coordinate(y)}H${coordinate(sheet.right)}${sign}${under.join('')}`,
    ...stroke,
  });
  const word = { x: signX, y: y + 5.2, 'text-anchor': 'middle', 'font-size': sizes.text, fill: palette.ink };
  return line + (sheet.right - from > roomForWord ? text(tank, word) : '');
}

/** Water surfaces inside an open box. */
export function innerLevels(layout: Layout, { sheet, palette }: Pen): string {
  const stroke = { stroke: palette.water, 'stroke-width': sizes.line };
  return (layout.drawing.levels ?? [])
    .map(({ x, y, width }) => ({ from: sheet.at({ x, y }), to: sheet.at({ x: x + width, y }) }))
    .map(({ from, to }) => element('line', { x1: from.x, x2: to.x, y1: from.y, y2: to.y, ...stroke }))
    .join('');
}

/** Length of the water line that leaves room for the word for the tank between the ways in and out, mm. */
const roomForWord = 24;
