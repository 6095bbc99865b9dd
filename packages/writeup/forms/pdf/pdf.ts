import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { NodeCompiler, type NodeTypstDocument, PdfStandard } from '@myriaddreamin/typst-ts-node-compiler';
import type { Document, Photograph } from '../../content/document.ts';
import { fontFiles } from '../fonts.ts';
import { joined, throughout } from '../joints.ts';
import { lettersOnly } from '../letters.ts';
import {
  type Arrangement,
  type BlockEnd,
  betterArranged,
  closer,
  firstArrangement,
  margins,
  pagesOf,
} from './arrangement.ts';
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

/** A document that is set, and where its blocks ended. */
interface Set {
  readonly result: NodeTypstDocument;
  readonly ends: readonly BlockEnd[];
}

/** Sets what is said as it is arranged. */
type SetBy = (arranged: Arrangement) => Set;

/** A document with its drawings fitted to its pages, one after the other. */
const fitted = (
  document: Document,
  paper: Paper,
  { set, closeness }: { readonly set: SetBy; readonly closeness: number },
): Set => {
  let arranged: Arrangement | undefined = firstArrangement(document, closeness);
  let made = set(arranged);
  // Each drawing is set smaller once and moved once at most.
  for (let round = 0; round < 2 * document.blocks.length; round += 1) {
    arranged = betterArranged(document, arranged, { ends: made.ends, paper });
    if (arranged === undefined) break;
    made = set(arranged);
  }
  return made;
};

/** A document as it fills its pages best: a last page that is nearly blank is spared where setting closer does it. */
const filling = (document: Document, paper: Paper, set: SetBy): Set => {
  const usual = fitted(document, paper, { set, closeness: 1 });
  const pages = pagesOf(usual.ends, paper);
  if (!pages.endsNearlyBlank) return usual;
  for (const closeness of closer) {
    const made = fitted(document, paper, { set, closeness });
    if (pagesOf(made.ends, paper).count < pages.count) return made;
  }
  return usual;
};

/**
 * A document as a tagged PDF (PDF/UA-1), its drawings as vectors. The same document gives the same bytes, whenever.
 *
 * @returns the bytes of the file
 */
export const toPdf = (document: Document, paper: Paper): Uint8Array => {
  const { typst, settable } = typesetter();
  const { drawings, photographs = {}, ...said } = document;
  const data = {
    ...throughout(placed(said, photographs), (text) => joined(settable(text))),
    drawings: throughout(drawings, settable),
    paper: papers[paper],
    margins,
  };
  const set: SetBy = (arranged) => {
    const inputs = { data: JSON.stringify({ ...data, arranged }) };
    const made = typst.compile({ mainFileContent: template, inputs });
    if (made.result === null) throw new Error(`the typesetter refused ${document.id}: ${complaint(made)}`);
    const ends = typst.query(made.result, { selector: '<end>', field: 'value' }) as readonly BlockEnd[];
    return { result: made.result, ends };
  };
  for (const [key, { base64, mediaType }] of Object.entries(photographs))
    typst.mapShadow(join(workspace, nameOf(key, mediaType)), Buffer.from(base64, 'base64'));
  try {
    const { result } = filling(document, paper, set);
    return typst.pdf(result, { pdfStandard: PdfStandard.UA_1, creationTimestamp: 0 });
  } finally {
    // Whatever comes of it, no photograph of one job stays for the next.
    typst.resetShadow();
    typst.evictCache(10);
  }
};
