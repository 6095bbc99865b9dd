import type { Block } from '../content/document.ts';
import { throughout } from '../forms/joints.ts';
import { paragraph, type Writer } from './writer.ts';

/** How a figure without a printed source is known, and the mark that stands for it where it is said again and again. */
const marks = [
  { of: 'trade', mark: '†' },
  { of: 'practice', mark: '‡' },
] as const;

/** In brackets, behind a stop, or at the end of what is said. */
const said = (phrase: string): RegExp => new RegExp(` \\(${phrase}\\)|[:,;] ${phrase}(?=[).,;]|$)`, 'g');

const countIn = (blocks: readonly Block[], phrase: string): number =>
  JSON.stringify(blocks).split(phrase).length - 1;

/** A document that says twice or more how figures are known says it once, in a note at its end, and marks the places. */
export const withSourceMarks = (writer: Writer, blocks: readonly Block[]): readonly Block[] => {
  const used = marks.flatMap(({ of, mark }) => {
    const phrase = writer.say(`source.${of}`);
    return countIn(blocks, phrase) > 1 ? [{ of, mark, phrase }] : [];
  });
  const marked = throughout(blocks, (text) =>
    used.reduce((marking, { phrase, mark }) => marking.replace(said(phrase), mark), text),
  );
  const notes = used.map(({ of, mark }) => writer.say(`source.${of}.note`, { mark }));
  return [...marked, ...paragraph('source-marks', notes, 'soft')];
};
