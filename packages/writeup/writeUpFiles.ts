import { cardFiles } from './cards/cardFiles.ts';
import type { Document } from './content/document.ts';
import { toPage } from './forms/html/page.ts';
import { ending, toMarkdown } from './forms/markdown.ts';
import type { Paper } from './forms/pdf/paper.ts';
import { toPdf } from './forms/pdf/pdf.ts';
import { toPng } from './forms/picture/png.ts';
import { newWriter } from './parts/writer.ts';
import type { WriteUpSource } from './source.ts';
import { talkFiles } from './talk/talkFiles.ts';
import { type DocumentName, languageOf, writeUpDocument } from './writeUp.ts';

/** A file of a write-up. */
export interface WriteUpFile {
  /** Path under the folder of the write-up, with `/` between its parts. */
  readonly path: string;
  readonly content: string | Uint8Array;
}

/** What is asked of the files. */
export interface FilesAsked {
  /** Paper of the documents that come on one paper only; the sheet comes on both. */
  readonly paper: Paper;
  /** Day that the page says it was published on. */
  readonly day?: string;
}

/** Width of a drawing as a picture: 300 dots an inch on the width of a sheet of 174 mm. */
const PICTURE_WIDTH = 2055;
/** Width of the picture that is shown where a page is shared. */
const PREVIEW_WIDTH = 1200;

const drawingFiles = (drawings: Readonly<Record<string, string>>): readonly WriteUpFile[] =>
  Object.entries(drawings).flatMap(([name, svg]) => [
    { path: `drawings/${name}.svg`, content: svg },
    { path: `drawings/${name}.png`, content: toPng(svg, PICTURE_WIDTH) },
  ]);

const photographFiles = ({ photographs = {} }: Document): readonly WriteUpFile[] =>
  Object.entries(photographs).map(([name, photograph]) => ({
    path: `photographs/${name}.${ending(photograph)}`,
    content: Buffer.from(photograph.base64, 'base64'),
  }));

const sheetFiles = (source: WriteUpSource, { day }: FilesAsked): readonly WriteUpFile[] => {
  const printed = writeUpDocument(source, { name: 'sheet', theme: 'print' });
  const page = writeUpDocument(source, { name: 'sheet', theme: 'page' });
  const shown = writeUpDocument(source, { name: 'sheet', theme: 'light' });
  const [drawing] = Object.values(shown.drawings);
  return [
    { path: 'sheet-a4.pdf', content: toPdf(printed, 'a4') },
    { path: 'sheet-letter.pdf', content: toPdf(printed, 'letter') },
    {
      path: 'sheet.html',
      content: toPage(page, { ...(day === undefined ? {} : { day }), preview: 'preview.png' }),
    },
    { path: 'sheet.md', content: toMarkdown(printed) },
    { path: 'preview.png', content: toPng(drawing ?? '', PREVIEW_WIDTH) },
    ...drawingFiles(shown.drawings),
    ...photographFiles(printed),
  ];
};

/** Documents that come as text too: what is said is changed before it is said. */
const asText: ReadonlySet<DocumentName> = new Set(['talk']);

/** Documents whose drawings come as files in another way. */
const hasOwnPictures: ReadonlySet<DocumentName> = new Set(['cards']);

const onePaper = (
  source: WriteUpSource,
  name: DocumentName,
  { paper }: FilesAsked,
): readonly WriteUpFile[] => {
  const printed = writeUpDocument(source, { name, theme: 'print' });
  const drawings = hasOwnPictures.has(name)
    ? []
    : Object.entries(printed.drawings).map(([key, content]) => ({ path: `drawings/${key}.svg`, content }));
  const texts = asText.has(name) ? [{ path: `${name}.md`, content: toMarkdown(printed) }] : [];
  return [{ path: `${name}.pdf`, content: toPdf(printed, paper) }, ...texts, ...drawings];
};

/** Documents that come on the workshop's own paper alone. */
const onOnePaper: readonly DocumentName[] = ['build', 'quote', 'care', 'talk', 'cards'];

/** Every file of a job's write-up. The same job gives the same bytes, whenever it is made. */
export const writeUpFiles = (source: WriteUpSource, asked: FilesAsked): readonly WriteUpFile[] => [
  ...sheetFiles(source, asked),
  ...onOnePaper.flatMap((name) => onePaper(source, name, asked)),
  ...cardFiles(newWriter(source, languageOf(source))),
  ...talkFiles(newWriter(source, languageOf(source))),
];
