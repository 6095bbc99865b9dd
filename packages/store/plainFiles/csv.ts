import { parse } from 'csv-parse/sync';
import { stringify } from 'csv-stringify/sync';

/** A cell: text, a number, or nothing at all. */
export type Cell = string | number | undefined;

/**
 * Signs at which programs for tables begin to reckon, and the one that says "text" to them, which itself needs one
 * then.
 */
const reckoned = /^[=+\-@\t\r'’＝＋－＠]/;

/**
 * Writes a table as CSV by RFC 4180 in UTF-8 with its mark. Every cell is in quotes. A cell that a program for tables
 * would take for a formula has an apostrophe before it, and so has one that begins with an apostrophe; a text that
 * is empty is an apostrophe alone, and a cell without anything holds nothing. `readTable` takes them off again.
 */
export function writtenTable(head: readonly string[], rows: readonly (readonly Cell[])[]): string {
  const cells = rows.map((row) => row.map(writtenCell));
  return stringify([[...head], ...cells], { bom: true, quoted: true, record_delimiter: '\r\n' });
}

function writtenCell(cell: Cell): string {
  if (cell === undefined) return '';
  const text = String(cell);
  return text === '' || reckoned.test(text) ? `'${text}` : text;
}

/** One row, by the names of its columns; a column is absent where the cell holds nothing. */
export type Row = Readonly<Record<string, string>>;

/**
 * Reads a table that `writtenTable` wrote.
 *
 * @param head the columns that it must have, in this order
 * @returns undefined where it is no such table
 */
export function readTable(text: string, head: readonly string[]): readonly Row[] | undefined {
  const records = recordsOf(text);
  const [first, ...rows] = records ?? [];
  if (first === undefined || JSON.stringify(first) !== JSON.stringify(head)) return undefined;
  return rows.map((cells) =>
    Object.fromEntries(
      cells.flatMap((cell, index) => (cell === '' ? [] : [[head[index]!, cell.replace(/^'/, '')]])),
    ),
  );
}

function recordsOf(text: string): readonly string[][] | undefined {
  try {
    return parse(text, { bom: true, record_delimiter: '\r\n', max_record_size: 10_000_000 });
  } catch {
    return undefined;
  }
}
