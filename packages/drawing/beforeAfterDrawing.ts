import type { Layout } from '@fettle/engine/families/layout.ts';
import type { Medium } from '@fettle/engine/model/medium.ts';
import type { Packing } from '@fettle/engine/model/model.ts';
import { describeWaterPath } from './describeWaterPath.ts';
import { idPrefix } from './hatching.ts';
import { type Figure, framed, sectionFigure, titleBlock } from './sectionDrawing.ts';
import type { Flows } from './shares.ts';
import { fittingScale } from './sheet.ts';
import { type Speech, spoken } from './speech.ts';
import { coordinate, element } from './svg.ts';
import { palettes, sizes, type Theme } from './tokens.ts';

/** One state of a filter: the same or an altered housing, and what is packed in it. */
export interface State {
  readonly layout: Layout;
  readonly packing: Packing;
  readonly assessment?: Flows;
  /** Title over this state, such as `As found`. */
  readonly caption: string;
}

/** Two states of one filter. */
export interface TwoStates extends Speech {
  readonly before: State;
  readonly after: State;
  readonly media: Readonly<Record<string, Medium>>;
}

/** The text alternative for both states. */
function describeBeforeAfter({ before, after, ...shared }: TwoStates): string {
  return [before, after]
    .map((state) =>
      spoken(shared, 'section.state', {
        caption: state.caption,
        path: describeWaterPath({ ...state, ...shared }),
      }),
    )
    .join(' ');
}

/**
 * Two section drawings at one scale, side by side, or one under the other where `stacked`.
 *
 * @returns SVG of 200 mm width, 100 mm where stacked, with a title and a text alternative for both
 */
export function beforeAfterDrawing(
  drawn: TwoStates & { readonly theme: Theme; readonly title: string; readonly stacked?: boolean },
): string {
  const { before, after, media, units, language, theme } = drawn;
  const palette = palettes[theme];
  const says = describeBeforeAfter(drawn);
  const prefix = idPrefix(`${drawn.title}${units}${says}`, theme);
  const scale = Math.min(fittingScale(before.layout), fittingScale(after.layout));
  const titleHeight = Math.max(...[before, after].map((state) => titleBlock(state.caption, palette).height));
  const figures = [before, after].map((state, index) =>
    sectionFigure({
      ...state,
      media,
      units,
      ...(language === undefined ? {} : { language }),
      theme,
      scale,
      titleHeight,
      idPrefix: `${prefix}-${index + 1}`,
    }),
  );
  const [first, second] = figures;
  if (!first || !second) throw new Error('two states make two figures');
  const figure = drawn.stacked ? underEachOther(first, second) : sideBySide(first, second, palette.softInk);
  const width = drawn.stacked ? sizes.sheetWidth : 2 * sizes.sheetWidth;
  return framed({ figure, width, title: drawn.title, says, prefix, palette });
}

function moved(figure: Figure, to: { readonly x: number; readonly y: number }): string {
  return element('g', { transform: `translate(${coordinate(to.x)} ${coordinate(to.y)})` }, [figure.content]);
}

function sideBySide(first: Figure, second: Figure, ink: string): Figure {
  const height = Math.max(first.height, second.height);
  const x = sizes.sheetWidth;
  const rule = {
    x1: x,
    x2: x,
    y1: sizes.margin,
    y2: height - sizes.margin,
    stroke: ink,
    'stroke-width': sizes.thinLine,
  };
  return {
    defs: first.defs + second.defs,
    height,
    content: first.content + element('line', rule) + moved(second, { x, y: 0 }),
  };
}

function underEachOther(first: Figure, second: Figure): Figure {
  const gap = sizes.margin;
  return {
    defs: first.defs + second.defs,
    height: first.height + gap + second.height,
    content: first.content + moved(second, { x: 0, y: first.height + gap }),
  };
}
