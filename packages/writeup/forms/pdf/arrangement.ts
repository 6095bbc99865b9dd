import type { Block, Document, DrawingBlock } from '../../content/document.ts';
import type { Paper } from './paper.ts';

/** What the typesetter is told about places and sizes, beside what is said. */
export interface Arrangement {
  /** How wide each drawing is set, mm, by its block. */
  readonly widths: Readonly<Record<string, number>>;
  /** Blocks of the drawings that stand at the head of the page after, while the text goes on before them. */
  readonly floating: readonly string[];
  /** How close everything is set: 1 as a rule, less where that spares a page. */
  readonly closeness: number;
}

/** Where a block ended when it was set. */
export interface BlockEnd {
  readonly id: string;
  /** From 1. */
  readonly page: number;
  /** From the upper edge of the paper, mm. */
  readonly y: number;
}

/** What is kept free above and below the text, mm. */
export const margins = { top: 17, bottom: 19 } as const;

const paperHeight: Readonly<Record<Paper, number>> = { a4: 297, letter: 279.4 };

/** Width of the text on the narrower paper, and the most height that a drawing takes of a page, mm. */
const textWidth = 174;
const tallest: Readonly<Record<DrawingBlock['width'], number>> = { full: 152, half: 140, true: 250 };

/** A drawing is not set smaller than this for the sake of its height: its letters of 3.2 mm would be less than 6 points. */
const leastShare = 0.65;

/** What a last line may reach below the point at which its block is said to end, and what stands over a heading, mm. */
const slack = 9;

/** Less than this is left free at the foot of a page without a thought, mm. */
const freeAtMost = 28;

/** A last page that is less full than this is spared where setting closer does it. */
const lastFilledAtLeast = 0.2;

/** What is tried for that, one after the other. */
export const closer: readonly number[] = [0.92, 0.85, 0.78];

/** Width and height of a drawing, mm; a drawing for the screen counts 96 dots an inch. */
export const sizeOf = (svg: string): { readonly width: number; readonly height: number } => {
  const [width, height] = ['width', 'height'].map((name) => {
    const [, number = '100', unit] = new RegExp(`^<svg[^>]*? ${name}="([\\d.]+)(mm)?"`).exec(svg) ?? [];
    return unit === 'mm' ? Number(number) : (Number(number) * 25.4) / 96;
  }) as [number, number];
  return { width, height };
};

/** Least and usual width of a drawing, mm: its own where its scale must hold, else what fits. */
const widthsFor = (block: DrawingBlock, svg: string): { readonly least: number; readonly usual: number } => {
  const { width, height } = sizeOf(svg);
  if (block.width === 'true') return { least: width, usual: width };
  const share = block.width === 'half' ? 0.52 * textWidth : textWidth;
  const least = Math.min(share, leastShare * width, (tallest.true * width) / height);
  return { least, usual: Math.max(least, Math.min(share, (tallest[block.width] * width) / height)) };
};

const drawingsIn = ({ blocks }: Pick<Document, 'blocks'>): readonly DrawingBlock[] =>
  blocks.flatMap((block) => (block.kind === 'drawing' ? [block] : []));

/** How a document is set before anything is known of its pages. */
export const firstArrangement = (
  document: Pick<Document, 'blocks' | 'drawings'>,
  closeness = 1,
): Arrangement => ({
  widths: Object.fromEntries(
    drawingsIn(document).map((block) => [
      block.id,
      widthsFor(block, document.drawings[block.drawing] ?? '').usual,
    ]),
  ),
  floating: [],
  closeness,
});

/** What the template as a rule holds together with the block that follows it. */
const clings = (block: Block): boolean => block.kind === 'heading' || block.kind === 'caution';

/** Where the blocks of a document ended, by their names, and where its pages end, mm from their upper edge. */
interface Ended {
  readonly ends: ReadonlyMap<string, BlockEnd>;
  readonly foot: number;
}

/**
 * What a drawing at a place takes of its page together with what clings to it, mm, and how much of the page before was
 * left free for its sake, mm; undefined where it did not go over to another page.
 */
const carriedOver = (
  blocks: readonly Block[],
  at: number,
  { ends, foot }: Ended,
): { readonly needed: number; readonly free: number } | undefined => {
  const endOf = (one: Block | undefined): BlockEnd | undefined =>
    one === undefined ? one : ends.get(one.id);
  const end = endOf(blocks[at]);
  // Headings are not told of: one goes with what follows it.
  const isWithIt = (one: Block): boolean => clings(one) && (endOf(one)?.page ?? end?.page) === end?.page;
  const last = endOf(blocks.slice(0, at).findLast((one) => !isWithIt(one)));
  if (end === undefined || last?.page !== end.page - 1) return undefined;
  return { needed: end.y - margins.top + slack, free: foot - last.y };
};

/**
 * A document set a little better: the first drawing that went over to another page and left the foot of its own page
 * free is set smaller if it then fits there and its letters stay legible; else the text goes on in its place, and it
 * stands at the head of the next page. A drawing whose scale must hold stays as it is.
 *
 * @returns undefined where there is nothing to better
 */
export const betterArranged = (
  document: Pick<Document, 'blocks' | 'drawings'>,
  arranged: Arrangement,
  { ends, paper }: { readonly ends: readonly BlockEnd[]; readonly paper: Paper },
): Arrangement | undefined => {
  const ended = {
    ends: new Map(ends.map((end) => [end.id, end])),
    foot: paperHeight[paper] - margins.bottom,
  };
  for (const [at, block] of document.blocks.entries()) {
    if (block.kind !== 'drawing' || block.width === 'true' || arranged.floating.includes(block.id)) continue;
    const over = carriedOver(document.blocks, at, ended);
    if (over === undefined || over.free < freeAtMost) continue;
    const svg = document.drawings[block.drawing] ?? '';
    const { width, height } = sizeOf(svg);
    const fitting = arranged.widths[block.id]! - ((over.needed - over.free) * width) / height;
    if (fitting >= widthsFor(block, svg).least)
      return {
        ...arranged,
        widths: { ...arranged.widths, [block.id]: Math.min(fitting, arranged.widths[block.id]!) },
      };
    return { ...arranged, floating: [...arranged.floating, block.id] };
  }
  return undefined;
};

/** How many pages there are, and whether the last of several is nearly blank. */
export const pagesOf = (
  ends: readonly BlockEnd[],
  paper: Paper,
): { readonly count: number; readonly endsNearlyBlank: boolean } => {
  const count = Math.max(1, ...ends.map(({ page }) => page));
  const last = Math.max(margins.top, ...ends.filter(({ page }) => page === count).map(({ y }) => y));
  const height = paperHeight[paper] - margins.top - margins.bottom;
  return { count, endsNearlyBlank: count > 1 && (last - margins.top) / height < lastFilledAtLeast };
};
