import type { Theme } from '@fettle/drawing/tokens.ts';
import type { Language } from '@fettle/engine/wording/language.ts';
import type { Document } from './content/document.ts';
import { buildDocument } from './documents/build.ts';
import { cardsDocument } from './documents/cards.ts';
import { careDocument } from './documents/care.ts';
import { quoteDocument } from './documents/quote.ts';
import { sheetDocument } from './documents/sheet.ts';
import { talkDocument } from './documents/talk.ts';
import { withOwnWords, wordsWithoutPlace } from './ownWords.ts';
import { newWriter, type Writer } from './parts/writer.ts';
import type { WriteUpSource } from './source.ts';
import { languages } from './texts/languages.ts';

/** A kind of document: adding one is adding an entry. */
export type DocumentMaker = (writer: Writer, theme: Theme) => Document;

/** Every document that a job is written up in, by its short name. */
export const documentMakers = {
  sheet: sheetDocument,
  build: buildDocument,
  quote: quoteDocument,
  care: careDocument,
  talk: talkDocument,
  cards: cardsDocument,
} as const satisfies Readonly<Record<string, DocumentMaker>>;

export type DocumentName = keyof typeof documentMakers;

/** Whether a document is called so. */
export const isDocumentName = (name: string): name is DocumentName => Object.hasOwn(documentMakers, name);

/** The language of a job's write-up. */
export const languageOf = ({ document }: WriteUpSource): Language =>
  languages[document.writeUp?.language ?? 'en']!;

/**
 * One document of a job's write-up, with the technician's own words in it.
 *
 * @param theme how its drawings are inked: `print` for paper, `page` for a page whose colours follow its reader
 */
export const writeUpDocument = (
  source: WriteUpSource,
  {
    name,
    theme,
    language,
  }: { readonly name: DocumentName; readonly theme: Theme; readonly language?: Language },
): Document => {
  const writer = newWriter(source, language ?? languageOf(source));
  return withOwnWords(documentMakers[name](writer, theme), source.document.writeUp?.words);
};

/** Own words of a job that no document of its write-up has a place for. */
export const wordsLeftOver = (source: WriteUpSource): ReturnType<typeof wordsWithoutPlace> => {
  const { words } = source.document.writeUp ?? {};
  if (words === undefined) return [];
  const writer = newWriter(source, languageOf(source));
  const documents = Object.values(documentMakers).map((make) => make(writer, 'print'));
  return wordsWithoutPlace(documents, words);
};
