import type { Block, Document, Photograph } from '../content/document.ts';
import { withSourceMarks } from '../parts/sourceMarks.ts';
import { filterName } from '../parts/summary.ts';
import { lastState, type Writer } from '../parts/writer.ts';

/** What a document is made of beside what every document has. */
interface Made {
  readonly id: string;
  readonly title: string;
  readonly subtitle: string;
  readonly description: string;
  readonly blocks: readonly Block[];
  readonly drawings?: Readonly<Record<string, string>>;
  readonly photographs?: Readonly<Record<string, Photograph>>;
}

/** A document with the language and the foot that all documents of a job have. */
export const documentOf = (writer: Writer, { drawings = {}, ...made }: Made): Document => {
  const { job, writeUp } = writer.source.document;
  const number = job?.number;
  const by = writeUp?.by ?? writer.source.workshop;
  return {
    ...made,
    blocks: withSourceMarks(writer, made.blocks),
    language: writer.language.code,
    direction: writer.language.direction,
    foot: writer.say('sheet.foot', {
      filter: filterName(writer),
      number: number === undefined ? '' : writer.say('sheet.number', { number }),
      by: by === undefined ? '' : writer.say('sheet.by', { by }),
      edition: lastState(writer.source).assessment.edition,
    }),
    drawings,
  };
};
