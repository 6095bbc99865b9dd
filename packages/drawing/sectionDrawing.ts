import type { Chamber, Layout } from '@fettle/engine/families/layout.ts';
import { bedSections, bedTags, emptyChambers, keptForTags } from './bedSection.ts';
import { bypasses, gapLines, shareStyle, wayLines, wayShares } from './bypasses.ts';
import { describeWaterPath, type PathToDescribe } from './describeWaterPath.ts';
import { dimensionLines } from './dimensionLines.ts';
import { type Block, drawingKey, sheetLines } from './drawingKey.ts';
import { hatchings, idPrefix } from './hatching.ts';
import { grids, housing, innerLevels, innerWalls, type Pen, pump, stubs, waterLine } from './housing.ts';
import { unwordedLengths } from './inscriptions.ts';
import { type LaneLabel, lane } from './labels.ts';
import { roundPieces } from './laidBeds.ts';
import { printShare } from './lengths.ts';
import { type PlacedBed, placedBeds } from './placedBeds.ts';
import { openRuns } from './reaches.ts';
import { fullWidth, mainRibbon } from './ribbons.ts';
import { isAlarming, type Shares, sharesOf } from './shares.ts';
import {
  fittingScale,
  labelledSides,
  labelSide,
  pathWords,
  type Sheet,
  type Side,
  sheetFor,
} from './sheet.ts';
import { type Speech, spoken } from './speech.ts';
import { coordinate, element, escapeXml, text } from './svg.ts';
import { fontFamily, type Palette, palettes, sizes, type Theme } from './tokens.ts';
import { bedArrows, packedBoxes, spreadWater } from './waterInBeds.ts';

/** What decides where on its sheet a section lies. */
export interface TitledSection {
  readonly layout: Layout;
  /** Title over the drawing; none is drawn where it is absent. */
  readonly caption?: string;
  /** Millimetres of paper per metre; without it the section fills its sheet. */
  readonly scale?: number;
  /** Height kept for the title, mm, where it is more than the title needs. */
  readonly titleHeight?: number;
}

/** What a section drawing shows, and how. */
export interface SectionToDraw extends PathToDescribe, TitledSection {
  readonly theme: Theme;
  /** Start of every id in the drawing; derived from the content where it is absent. */
  readonly idPrefix?: string;
}

/** A drawing's markup without its frame, and its height, mm. */
export interface Figure extends Block {
  readonly defs: string;
}

/** The sheet on which a section is drawn. */
export const sectionSheet = ({ layout, caption = '', scale, titleHeight = 0 }: TitledSection): Sheet =>
  sheetFor(layout, {
    top: Math.max(titleBlock(caption, palettes.light).height, titleHeight),
    scale: scale ?? fittingScale(layout),
  });

const speechOf = ({ units, language }: Speech): Speech => ({
  units,
  ...(language === undefined ? {} : { language }),
});

/** The section with its title and key, from y 0 down, `sizes.sheetWidth` wide. */
export function sectionFigure(drawn: SectionToDraw & { readonly idPrefix: string }): Figure {
  const palette = palettes[drawn.theme];
  const title = titleBlock(drawn.caption ?? '', palette);
  const sheet = sectionSheet(drawn);
  const pen: Pen = { sheet, palette, prefix: drawn.idPrefix };
  const beds = placedBeds(drawn);
  const media = beds.flatMap((placed) => (placed.medium ? [placed.medium] : []));
  const speech = speechOf(drawn);
  const section = sectionParts(drawn, pen);
  const key = drawingKey(beds, {
    palette,
    prefix: drawn.idPrefix,
    ...speech,
    assessment: drawn.assessment,
    reckoned: sharesOf(drawn.layout, drawn.assessment) !== undefined,
    bypass: section.bypass,
    alarming: section.alarming,
    lengths: unwordedLengths(pen.sheet, speech),
  });
  const keyY = section.end + 4;
  return {
    defs: hatchings(media, { palette, prefix: drawn.idPrefix }),
    height: keyY + key.height + sizes.margin,
    content: [
      title.content,
      section.content,
      element('g', { transform: `translate(0 ${coordinate(keyY)})` }, [key.content]),
    ].join(''),
  };
}

export function titleBlock(caption: string, palette: Palette): Block {
  const lines = sheetLines(caption, { from: sizes.margin, size: sizes.title, bold: true });
  const step = sizes.title + 1.4;
  const style = { 'font-size': sizes.title, 'font-weight': 'bold', fill: palette.ink };
  return {
    height: lines.length === 0 ? sizes.margin : sizes.margin + lines.length * step + 1,
    content: lines
      .map((line, index) =>
        text(line, { x: sizes.margin, y: sizes.margin + 0.8 * sizes.title + index * step, ...style }),
      )
      .join(''),
  };
}

function sectionParts(
  drawn: SectionToDraw,
  pen: Pen,
): {
  readonly content: string;
  readonly bypass: boolean;
  readonly alarming: boolean;
  readonly end: number;
} {
  const { layout } = drawn;
  const beds = placedBeds(drawn);
  const shares = sharesOf(layout, drawn.assessment);
  const gaps = gapLines(layout, shares, pen);
  const ways = wayLines(layout, shares, pen);
  const tags = bedTags(drawn, beds, pen);
  const labels = [...tags.inLane, ...gaps.flatMap((line) => shareLabel(line, layout, pen.palette))];
  const sides: readonly Side[] = ['left', 'right', 'bottom'];
  const lanes = sides.map((side) => lane(labels, side, pen));
  const round = roundPieces(beds, drawn.assessment, pen);
  const water = waterThrough(drawn, { beds, shares }, pen);
  const content = [
    housing(layout, pen),
    innerLevels(layout, pen),
    water.spread,
    bedSections(drawn, beds, pen),
    grids(layout, pen),
    innerWalls(layout, pen),
    emptyChambers(drawn, pen),
    stubs(layout, pen),
    waterLine(layout, pen, spoken(drawn, 'section.tank')),
    dimensionLines(pen, { ...speechOf(drawn), labelled: labelledSides(layout) }),
    water.arrows,
    water.ribbon,
    pump(layout, pen),
    bypasses([...gaps, ...ways], pen),
    round.content,
    wayShares(ways, pen),
    pathEnds(drawn, pen),
    tags.inside,
    ...lanes.map((one) => one.content),
  ];
  return {
    content: content.join(''),
    bypass: round.any || gaps.length + ways.length > 0,
    alarming: round.alarming || [...gaps, ...ways].some((line) => isAlarming(line.share)),
    end: Math.max(pen.sheet.end, ...lanes.map((one) => one.end)),
  };
}

/** The water of the main way: spread through the media, gathered in the open. */
function waterThrough(
  { layout }: SectionToDraw,
  through: { readonly beds: readonly PlacedBed[]; readonly shares: Shares | undefined },
  pen: Pen,
): { readonly spread: string; readonly arrows: string; readonly ribbon: string } {
  const { beds, shares } = through;
  const packed = packedBoxes(beds);
  const runs = openRuns(layout, shares, packed);
  const arrows = {
    fullWidth: fullWidth(layout, pen.sheet.scale),
    shareOf: (chamber: Chamber): number => shares?.chamber.get(chamber.id) ?? 1,
    keptFor: keptForTags(beds, pen),
  };
  return {
    spread: spreadWater({ packed, runs }, pen),
    arrows: bedArrows(beds, arrows, pen),
    ribbon: mainRibbon(layout, runs, pen),
  };
}

function shareLabel(
  line: ReturnType<typeof gapLines>[number],
  layout: Layout,
  palette: Palette,
): readonly LaneLabel[] {
  const chamber = layout.chambers.find((one) => one.id === line.id);
  if (line.share === undefined || !chamber) return [];
  const side = labelSide(layout, chamber);
  const style = shareStyle(line.share, palette);
  return [{ kind: 'share', content: printShare(line.share), side, anchor: line.labelAt, ...style }];
}

function pathEnds(drawn: SectionToDraw, { sheet, palette }: Pen): string {
  return pathWords(drawn.layout, sheet.at)
    .map(({ says, x, y, anchor }) =>
      text(spoken(drawn, `section.${says}`), {
        x,
        y,
        'font-size': sizes.text,
        'text-anchor': anchor,
        fill: palette.ink,
      }),
    )
    .join('');
}

/**
 * A workshop section of a filter as an SVG document: walls in section, media by hatching, the water as a
 * ribbon as wide as its share of the flow, ways past the media dashed, dimensions in the units asked for.
 *
 * Pure and total: beds of unknown media are drawn blank, more than a chamber holds is squeezed, and without
 * an assessment the ribbons show the way alone.
 *
 * @returns SVG of 100 mm width with a title and a text alternative
 */
export function sectionDrawing(drawn: SectionToDraw): string {
  const says = describeWaterPath(drawn);
  const prefix = drawn.idPrefix ?? idPrefix(`${drawn.caption ?? ''}${drawn.units}${says}`, drawn.theme);
  const figure = sectionFigure({ ...drawn, idPrefix: prefix });
  return framed({
    figure,
    width: sizes.sheetWidth,
    title: drawn.caption ?? spoken(drawn, 'section.title'),
    says,
    prefix,
    palette: palettes[drawn.theme],
  });
}

/** The SVG document round one or more figures. */
export function framed(frame: {
  readonly figure: Figure;
  readonly width: number;
  readonly title: string;
  readonly says: string;
  readonly prefix: string;
  readonly palette: Palette;
}): string {
  const { figure, width, prefix } = frame;
  const ids = { title: `${prefix}-title`, says: `${prefix}-desc` };
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      role: 'img',
      'aria-labelledby': `${ids.title} ${ids.says}`,
      viewBox: `0 0 ${coordinate(width)} ${coordinate(figure.height)}`,
      width: `${coordinate(width)}mm`,
      height: `${coordinate(figure.height)}mm`,
      style: 'max-width:100%;height:auto',
      'font-family': fontFamily,
    },
    [
      element('title', { id: ids.title }, [escapeXml(frame.title)]),
      element('desc', { id: ids.says }, [escapeXml(frame.says)]),
      figure.defs,
      element('rect', { width, height: figure.height, fill: frame.palette.paper }),
      figure.content,
    ],
  );
}
