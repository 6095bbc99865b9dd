import type { ReportTable } from '@fettle/workflows/report/reportTable.ts';
import Table from 'cli-table3';
import type { Output } from '../output.ts';

/** Widest line, columns. */
export const WIDTH = 80;

const BOLD = ['\u001b[1m', '\u001b[22m'] as const;

export const heading = (output: Output, text: string): string => {
  const lines = wrap(text, 2);
  return `\n${output.colour ? `${BOLD[0]}${lines}${BOLD[1]}` : lines}`;
};

/** A figure and its unit, or a bracket and its figure, stay on one line. */
const figure = /(?<=\d) (?=(?:%|°|[A-Za-zµ]{1,3}(?:\d|\/\S+)?)(?![A-Za-z]))/g;
const NO_BREAK = '\u00a0';

const wordsOf = (text: string, widest: number): string[] =>
  text
    .trim()
    .replaceAll(figure, NO_BREAK)
    .split(/[^\S\u00a0]+/)
    .flatMap((word) => pieces(word.replaceAll(NO_BREAK, ' '), widest));

/** A word that no line holds, such as a long name of a file, in pieces that one does. */
const pieces = (word: string, widest: number): string[] => {
  const characters = [...word];
  const count = Math.max(1, Math.ceil(characters.length / widest));
  return Array.from({ length: count }, (_, place) =>
    characters.slice(place * widest, (place + 1) * widest).join(''),
  );
};

/** Text broken into lines of at most `WIDTH` columns; the first keeps its own indent, later ones take `indent`. */
export const wrap = (text: string, indent = 0): string => {
  const pad = ' '.repeat(indent);
  const start = /^\s*/.exec(text)?.[0] ?? '';
  const lines: string[] = [];
  let line = '';
  for (const word of wordsOf(text, WIDTH - Math.max(start.length, indent))) {
    const room = WIDTH - (lines.length === 0 ? start.length : indent);
    if (line !== '' && [...line].length + 1 + [...word].length > room) {
      lines.push(line);
      line = word;
    } else {
      line = line === '' ? word : `${line} ${word}`;
    }
  }
  lines.push(line);
  return lines.map((one, place) => (place === 0 ? start : pad) + one).join('\n');
};

/** A label in its own column, and text that stands beside it however many lines it takes. */
export const labelled = (label: string, text: string, width: number): string =>
  label.padEnd(width) + wrap(`${' '.repeat(width)}${text}`, width).slice(width);

/** Rules between rows and columns are left out: white space and one line under the head are enough. */
const chars = {
  top: '',
  'top-mid': '',
  'top-left': '',
  'top-right': '',
  bottom: '',
  'bottom-mid': '',
  'bottom-left': '',
  'bottom-right': '',
  left: '',
  'left-mid': '',
  mid: '',
  'mid-mid': '',
  right: '',
  'right-mid': '',
  middle: '  ',
};

/** What a column is: its head, its width and the side it keeps to. */
export interface Column {
  readonly head: string;
  readonly width: number;
  readonly align?: 'left' | 'right';
}

/** A table of at most `WIDTH` columns; long cells run over several lines. */
export const table = (columns: readonly Column[], rows: readonly (readonly string[])[]): string => {
  const made = new Table({
    head: columns.map(({ head }) => head),
    colWidths: columns.map(({ width }) => width),
    colAligns: columns.map(({ align }) => align ?? 'left'),
    wordWrap: true,
    chars,
    style: { head: [], border: [], 'padding-left': 0, 'padding-right': 0 },
  });
  made.push(columns.map(({ width }) => '-'.repeat(width)));
  made.push(...rows.map((row) => [...row]));
  return made
    .toString()
    .split('\n')
    .map((line) => line.trimEnd())
    .join('\n');
};

/** A table of the report, each column so many characters wide. */
export const reportTable = ({ columns, rows }: ReportTable, widths: readonly number[]): string =>
  table(
    columns.map((column, place) => ({ ...column, width: widths[place] ?? column.head.length })),
    rows,
  );
