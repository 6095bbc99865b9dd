import type { NamedFile } from './fileNames.ts';
import { toPage } from './forms/html/page.ts';
import { toMarkdown } from './forms/markdown.ts';
import { toPdf } from './forms/pdf/pdf.ts';
import type { WriteUpSource } from './source.ts';
import { writeUpDocument } from './writeUp.ts';

/** One document of a job in one form: the text, or the bytes of a PDF. */
export const writeUpFile = (
  source: WriteUpSource,
  { name, form, paper }: NamedFile,
  day?: string,
): string | Uint8Array => {
  if (form === 'html')
    return toPage(writeUpDocument(source, { name, theme: 'page' }), day === undefined ? {} : { day });
  const printed = writeUpDocument(source, { name, theme: 'print' });
  return form === 'md' ? toMarkdown(printed) : toPdf(printed, paper);
};
