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
    ...(isOpen(layout) && inner[0] ? [openTop(inner[0], pen)] : []),
  ]);
}

/** A box under the tank and a tank itself have no lid. */
const isOpen = ({ gravityFed, drawing }: Layout): boolean =>
  gravityFed !== undefined || drawing.openTop === true;

/** Nothing over a tank: its wall taken off between the panes, which end square. */
function openTop(inner: Box, { palette }: Pen): string {
  const top = inner.y - sizes.wall;
  const off = { x: inner.x - sizes.wall, y: top, width: inner.width + 2 * sizes.wall, height: sizes.wall };
  const edge = { stroke: palette.ink, 'stroke-width': sizes.thickLine };
  const hidden = {
    x: off.x - sizes.thickLine,
    y: off.y - sizes.thickLine,
    width: off.width + 2 * sizes.thickLine,
    height: off.height + 1.5 * sizes.thickLine,
  };
  const panes = [off.x, inner.x + inner.width].map((x) =>
    element('line', { x1: x, x2: x + sizes.wall, y1: inner.y, y2: inner.y, ...edge }),
  );
  return rectangle(hidden, { fill: palette.paper }) + panes.join('');
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

/** What drives the water: the air line with its bubbles, or the pump by its sign, a triangle along the flow. */
export function pump(layout: Layout, pen: Pen): string {
  const { sheet, palette } = pen;
  const { airLine } = layout.drawing;
  if (airLine) return airLift(layout, airLine.map(sheet.at), pen);
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

/** Bubbles along a lift tube: every so far, of so many sizes, mm. */
const bubbles = { everyMm: 3.2, leastMm: 0.55, mostMm: 0.95 };

/** The air line down into the tube, and bubbles that grow from its end up to the mouth. */
function airLift(layout: Layout, line: readonly Point[], { sheet, palette }: Pen): string {
  const end = line.at(-1) ?? { x: 0, y: 0 };
  const tube = layout.drawing.stubs[0];
  const mouth = tube?.along[1] ? sheet.at(tube.along[1]) : end;
  const half = ((tube?.boreM ?? 0) * sheet.scale) / 4;
  const count = Math.max(1, Math.floor((end.y - mouth.y) / bubbles.everyMm));
  const rising = Array.from({ length: count }, (_, place) => {
    const grown = place / count;
    return element('circle', {
      cx: mouth.x + half * (place % 2 === 0 ? 1 : -0.2),
      cy: end.y - (place + 0.5) * bubbles.everyMm,
      r: bubbles.leastMm + grown * (bubbles.mostMm - bubbles.leastMm),
      fill: palette.paper,
      stroke: palette.ink,
      'stroke-width': sizes.thinLine,
    });
  });
  const d = pathThrough(line);
  const inked = (stroke: string, width: number): string =>
    element('path', { d, fill: 'none', stroke, 'stroke-width': width });
  return element('g', {}, [inked(palette.ink, 1.3), inked(palette.paper, 0.6), ...rising]);
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
  const isTank = layout.drawing.openTop === true;
  const beside = level > top ? sheet.left : body.x + body.width + sizes.wall;
  const from = isTank ? body.x : beside;
  const to = isTank ? body.x + body.width : sheet.right;
  const signX = from + (to - from) * (isTank ? 0.22 : level > top ? 0.1 : 0.6);
  const stroke = { stroke: palette.water, 'stroke-width': sizes.line, fill: 'none' };
  const under = [1, 2].map((step) => {
    const half = 2.2 - 0.7 * step;
    return `M${coordinate(signX - half)} ${coordinate(y + 0.9 * step)}h${coordinate(2 * half)}`;
  });
  const sign = `M${coordinate(signX - 1.3)} ${coordinate(y - 2.3)}h2.6l-1.3 2.3z`;
  const line = element('path', {
    d: `M${coordinate(from)} ${coordinate(y)}H${coordinate(to)}${sign}${under.join('')}`,
    ...stroke,
  });
  const word = { x: signX, y: y + 5.2, 'text-anchor': 'middle', 'font-size': sizes.text, fill: palette.ink };
  return line + (to - from > roomForWord && !isTank ? text(tank, word) : '');
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
