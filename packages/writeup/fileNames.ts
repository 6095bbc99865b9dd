import type { Paper } from './forms/pdf/paper.ts';
import { type DocumentName, isDocumentName } from './writeUp.ts';

/** Which document, in which form. */
export interface NamedFile {
  readonly name: DocumentName;
  readonly form: 'pdf' | 'html' | 'md';
  /** Of a PDF. */
  readonly paper: Paper;
}

/**
 * The document that a file's name means: `sheet.html`, `care.pdf`, `build-letter.pdf`. A PDF is on A4 where its name
 * does not say which paper.
 *
 * @returns undefined where no document has such a file
 */
export const fileNamed = (path: string): NamedFile | undefined => {
  const [, name = '', paper, form] = /^([a-z]+)(?:-(a4|letter)(?=\.pdf$))?\.(pdf|html|md)$/.exec(path) ?? [];
  if (!isDocumentName(name) || form === undefined) return undefined;
  return { name, form: form as NamedFile['form'], paper: paper === 'letter' ? 'letter' : 'a4' };
};

/** Whether a document tells ranges, for which hundreds of filters have to be drawn. */
export const tellsRanges = (name: DocumentName): boolean => name === 'sheet' || name === 'build';

/** Whether a file shows photographs of the job: the sheet does, and so does the whole write-up where no file is named. */
export const showsPhotographs = (file?: NamedFile): boolean => file === undefined || file.name === 'sheet';

/** Kinds of the forms, for who is sent them. */
export const mediaTypes: Readonly<Record<NamedFile['form'], string>> = {
  pdf: 'application/pdf',
  html: 'text/html; charset=utf-8',
  md: 'text/markdown; charset=utf-8',
};
