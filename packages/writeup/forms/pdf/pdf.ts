import { readFileSync } from 'node:fs';
import { NodeCompiler, PdfStandard } from '@myriaddreamin/typst-ts-node-compiler';
import type { Document, DrawingBlock } from '../../content/document.ts';
import { fontFiles } from '../fonts.ts';
import { joinedThroughout } from '../joints.ts';
import type { Paper } from './paper.ts';
import { template } from './template.ts';

const papers: Readonly<Record<Paper, string>> = { a4: 'a4', letter: 'us-letter' };

let compiler: NodeCompiler | undefined;

const typesetter = (): NodeCompiler => {
  compiler ??= NodeCompiler.create({
    fontArgs: [{ fontBlobs: fontFiles().map((path) => readFileSync(path)) }],
  });
  return compiler;
};

/** What the typesetter says where it cannot go on; a bug of ours, for all that people write comes in as data. */
const complaint = (result: ReturnType<NodeCompiler['compile']>): string => {
  const error = result.takeError() ?? result.takeDiagnostics();
  return error === null ? 'no document' : JSON.stringify(error.shortDiagnostics);
};

/** Width of the text on the narrower paper, and the most height that a drawing takes of a page, mm. */
const textWidth = 174;
const tallest: Readonly<Record<DrawingBlock['width'], number>> = { full: 152, half: 140, true: 250 };

/** A drawing is not set smaller than this for the sake of its height: its letters would be lost. */
const leastShare = 0.6;

/** How wide each drawing is set, mm, by its block: its own width where its scale must hold, else what fits. */
const widthsOf = ({ blocks, drawings }: Document): Readonly<Record<string, number>> =>
  Object.fromEntries(
    blocks.flatMap((block) => {
      if (block.kind !== 'drawing') return [];
      const svg = drawings[block.drawing] ?? '';
      const [width, height] = ['width', 'height'].map((name) =>
        Number(new RegExp(`^<svg[^>]*? ${name}="([\\d.]+)mm"`).exec(svg)?.[1] ?? 100),
      ) as [number, number];
      const share = block.width === 'half' ? 0.52 * textWidth : textWidth;
      const least = Math.min(share, leastShare * width, (tallest.true * width) / height);
      const fitting = Math.max(least, Math.min(share, (tallest[block.width] * width) / height));
      return [[block.id, block.width === 'true' ? width : fitting]];
    }),
  );

/**
 * A document as a tagged PDF (PDF/UA-1), its drawings as vectors. The same document gives the same bytes, whenever.
 *
 * @returns the bytes of the file
 */
export const toPdf = (document: Document, paper: Paper): Uint8Array => {
  const typst = typesetter();
  const { drawings, ...said } = document;
  const data = JSON.stringify({
    ...joinedThroughout(said),
    drawings,
    paper: papers[paper],
    widths: widthsOf(document),
  });
  const result = typst.compile({ mainFileContent: template, inputs: { data } });
  if (result.result === null) throw new Error(`the typesetter refused ${document.id}: ${complaint(result)}`);
  const bytes = typst.pdf(result.result, { pdfStandard: PdfStandard.UA_1, creationTimestamp: 0 });
  typst.evictCache(10);
  return bytes;
};
