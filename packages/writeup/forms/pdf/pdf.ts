import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { NodeCompiler, PdfStandard } from '@myriaddreamin/typst-ts-node-compiler';
import type { Document, DrawingBlock, Photograph } from '../../content/document.ts';
import { fontFiles } from '../fonts.ts';
import { joined, throughout } from '../joints.ts';
import { lettersOnly } from '../letters.ts';
import { lettersOf, shownBy } from './coverage.ts';
import type { Paper } from './paper.ts';
import { template } from './template.ts';

const papers: Readonly<Record<Paper, string>> = { a4: 'a4', letter: 'us-letter' };

/** A folder that is not there: the typesetter finds what it is given, and nothing of this machine. */
const workspace = resolve('/', 'fettle-write-up');

interface Typesetter {
  readonly typst: NodeCompiler;
  /** A text as it can be set: every letter of it has a shape in some font. */
  readonly settable: (text: string) => string;
}

let made: Typesetter | undefined;

const typesetter = (): Typesetter => {
  if (made === undefined) {
    const fontBlobs = fontFiles().map((path) => readFileSync(path));
    const shown = shownBy(lettersOf(fontBlobs));
    made = {
      typst: NodeCompiler.create({ workspace, fontArgs: [{ fontBlobs }] }),
      settable: (text) => shown(lettersOnly(text)),
    };
  }
  return made;
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

/** What a photograph is called for the typesetter, seen from its workspace. */
const nameOf = (key: string, mediaType: Photograph['mediaType']): string =>
  `/${key}.${mediaType === 'image/png' ? 'png' : 'jpg'}`;

type Said = Omit<Document, 'drawings' | 'photographs'>;

/** A document whose photographs are named by their paths; one that is missing is left out. */
const placed = (said: Said, photographs: NonNullable<Document['photographs']>): Said => ({
  ...said,
  blocks: said.blocks.map((block) =>
    block.kind !== 'photographs'
      ? block
      : {
          ...block,
          shown: block.shown.flatMap((item) => {
            const shown = photographs[item.photograph];
            return shown === undefined
              ? []
              : [{ ...item, photograph: nameOf(item.photograph, shown.mediaType) }];
          }),
        },
  ),
});

/**
 * A document as a tagged PDF (PDF/UA-1), its drawings as vectors. The same document gives the same bytes, whenever.
 *
 * @returns the bytes of the file
 */
export const toPdf = (document: Document, paper: Paper): Uint8Array => {
  const { typst, settable } = typesetter();
  const { drawings, photographs = {}, ...said } = document;
  const shown = placed(said, photographs);
  const data = JSON.stringify({
    ...throughout(shown, (text) => joined(settable(text))),
    drawings: throughout(drawings, settable),
    paper: papers[paper],
    widths: widthsOf(document),
  });
  for (const [key, { base64, mediaType }] of Object.entries(photographs))
    typst.mapShadow(join(workspace, nameOf(key, mediaType)), Buffer.from(base64, 'base64'));
  try {
    const result = typst.compile({ mainFileContent: template, inputs: { data } });
    if (result.result === null)
      throw new Error(`the typesetter refused ${document.id}: ${complaint(result)}`);
    return typst.pdf(result.result, { pdfStandard: PdfStandard.UA_1, creationTimestamp: 0 });
  } finally {
    // Whatever comes of it, no photograph of one job stays for the next.
    typst.resetShadow();
    typst.evictCache(10);
  }
};
