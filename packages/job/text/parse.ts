import {
  isAlias,
  isMap,
  isScalar,
  isSeq,
  LineCounter,
  type Node,
  parseAllDocuments,
  visit,
  type YAMLMap,
  type YAMLSeq,
} from 'yaml';
import { type FieldPath, writtenPath } from '../fieldPath.ts';
import { type Problem, problem } from '../problems.ts';
import { type CutNumber, cutNumber } from './decimalComma.ts';
import { decode, jobText, nothingIn, type TextKind } from './decode.ts';
import { unreadable } from './nesting.ts';

/** A place in a text, counted from 1. */
export interface TextPlace {
  readonly line: number;
  readonly column: number;
}

/** What a text holds: plain data, where each of its fields stands, and what was wrong on the way. */
export interface Parsed {
  readonly value: unknown;
  readonly places: ReadonlyMap<string, TextPlace>;
  readonly problems: readonly Problem[];
}

const mostSyntaxProblems = 20;

/**
 * Reads the text of a job file or a book (YAML 1.2, and so JSON too) into plain data without anchors, tags or
 * repeated fields.
 *
 * @param kind what the text is meant to be, a job file where left out
 * @returns `problems` is not empty where the text is not to be used as it stands; where only fields are
 *   repeated, `value` holds the first of each
 */
export function parseText(source: string | Uint8Array, kind: TextKind = jobText): Parsed {
  const decoded = decode(source, kind);
  if (!decoded.ok) return failed([decoded.problem]);
  const { text } = decoded;
  const lines = new LineCounter();
  const unfitText = unreadable(text);
  if (unfitText !== undefined) {
    const before = text.slice(0, unfitText.offset).split('\n');
    const at = { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
    return failed([{ ...problem(unfitText.code, [], { facts: { most: unfitText.most } }), at }]);
  }
  const documents = parseAllDocuments(text, {
    lineCounter: lines,
    prettyErrors: false,
    uniqueKeys: false,
    logLevel: 'silent',
    version: '1.2',
    schema: 'core',
  });
  const [document] = Array.isArray(documents) ? documents : [];
  if (document === undefined || documents.length === 0) return nothing(kind);
  const unfit = unfitDocument(documents.length, document.directives?.yaml);
  if (unfit !== undefined) return failed([unfit]);
  const wrong = document.errors.slice(0, mostSyntaxProblems).map((error) => ({
    ...problem('yaml-syntax', [], { facts: { detail: syntaxDetail(error.code, error.message) } }),
    at: placeOf(lines, error.pos[0]),
  }));
  // One slip upsets the reader more than once on a line, always in the same words.
  const once = wrong.filter(
    ({ says, at }, place) =>
      !wrong.slice(0, place).some((one) => one.says === says && one.at.line === at.line),
  );
  if (once.length > 0) return failed(once);
  if (document.contents === null) return nothing(kind);
  return readContents(document.contents, lines);
}

/** What comments alone are. */
function nothing(kind: TextKind): Parsed {
  return kind.empty === undefined
    ? failed([nothingIn(kind)])
    : { value: {}, places: new Map(), problems: [] };
}

function failed(problems: readonly Problem[]): Parsed {
  return { value: undefined, places: new Map(), problems };
}

function unfitDocument(
  count: number,
  yaml: { readonly version: string; readonly explicit?: boolean } | undefined,
): Problem | undefined {
  if (count > 1) return problem('yaml-several-documents', [], { facts: { count } });
  if (yaml?.explicit && yaml.version !== '1.2') {
    return problem('yaml-version', [], { facts: { version: yaml.version } });
  }
  return undefined;
}

/** The parser's messages that a reader of job files meets, in plain words; else the parser's own. */
const syntaxWords: Readonly<Record<string, string>> = {
  TAB_AS_INDENT: 'a tab stands where spaces must indent',
  MISSING_CHAR: 'a closing sign or a comma is missing',
  BAD_INDENT: 'a line is not indented as its neighbours are',
  BLOCK_AS_IMPLICIT_KEY: 'a field starts on the line of another field; put it on a line of its own',
  MULTILINE_IMPLICIT_KEY: 'a field name runs over several lines; is a colon missing',
  BAD_ALIAS: 'an alias (*) names nothing',
  UNEXPECTED_TOKEN: 'a sign stands where none may stand',
};

function syntaxDetail(code: string, message: string): string {
  const [first = message] = message.split('\n');
  return syntaxWords[code] ?? first.replace(/[.:]+$/, '');
}

function placeOf(lines: LineCounter, offset: number): TextPlace {
  const { line, col } = lines.linePos(offset);
  return { line: Math.max(1, line), column: Math.max(1, col) };
}

interface Reading {
  readonly lines: LineCounter;
  readonly places: Map<string, TextPlace>;
  readonly problems: Problem[];
}

function readContents(contents: Node, lines: LineCounter): Parsed {
  const reading: Reading = { lines, places: new Map(), problems: [] };
  visit(contents, {
    Node: (_key, node) => {
      const mark = isAlias(node)
        ? `*${node.source}`
        : node.anchor === undefined
          ? undefined
          : `&${node.anchor}`;
      const at = placeOf(lines, node.range?.[0] ?? 0);
      if (mark !== undefined) {
        reading.problems.push({ ...problem('yaml-alias', [], { facts: { mark: shortened(mark) } }), at });
      } else if (!isAlias(node) && node.tag !== undefined) {
        reading.problems.push({ ...problem('yaml-tag', [], { facts: { tag: shortened(node.tag) } }), at });
      }
    },
  });
  if (reading.problems.length > 0) return failed(reading.problems.slice(0, mostSyntaxProblems));
  const value = plain(contents, [], reading);
  return { value, places: reading.places, problems: reading.problems };
}

function shortened(text: string): string {
  return text.length > 40 ? `${text.slice(0, 37)}…` : text;
}

function plain(node: unknown, path: FieldPath, reading: Reading): unknown {
  if (isScalar(node)) return node.value;
  if (isSeq(node)) return plainList(node, path, reading);
  if (isMap(node)) return plainFields(node, path, reading);
  return null;
}

function plainList(list: YAMLSeq, path: FieldPath, reading: Reading): readonly unknown[] {
  const entries: unknown[] = [];
  for (let index = 0; index < list.items.length; index++) {
    const item = list.items[index];
    const inside = [...path, entries.length];
    notePlace(item, inside, reading);
    const cut = list.flow ? cutNumber(item, list.items[index + 1]) : undefined;
    // A list may hold bare numbers one behind the other; only a unit shows that one was cut.
    const joined = cut !== undefined && /\p{L}|[°%]/u.test(cut.found) ? cut : undefined;
    if (joined === undefined) entries.push(plain(item, inside, reading));
    else {
      entries.push(mended(joined, inside, reading));
      index++;
    }
  }
  return entries;
}

/** Goes on with the number that was meant, so that the rest of the document is checked against it. */
function mended({ found, meant, advice }: CutNumber, path: FieldPath, reading: Reading): string {
  reading.problems.push(problem('decimal-comma', path, { facts: { found, advice } }));
  return meant;
}

function isBare(value: unknown): boolean {
  return value === null || (isScalar(value) && value.value === null && !value.source);
}

function plainFields(map: YAMLMap, path: FieldPath, reading: Reading): unknown {
  const fields = new Map<string, unknown>();
  for (let index = 0; index < map.items.length; index++) {
    const { key, value } = map.items[index] ?? { key: undefined, value: undefined };
    const name = isScalar(key) ? key.value : undefined;
    if (typeof name !== 'string' && typeof name !== 'number') {
      reading.problems.push(problem('yaml-key', path, { facts: {} }));
      continue;
    }
    const inside = [...path, String(name)];
    if (fields.has(String(name))) {
      const at = nodePlace(key, reading.lines);
      reading.problems.push({ ...problem('duplicate-field', inside, { facts: {} }), ...(at && { at }) });
      continue;
    }
    notePlace(key, inside, reading);
    const next = map.items[index + 1];
    const cut = map.flow && next && isBare(next.value) ? cutNumber(value, next.key) : undefined;
    fields.set(
      String(name),
      cut === undefined ? plain(value, inside, reading) : mended(cut, inside, reading),
    );
    if (cut !== undefined) index++;
  }
  return fromEntries(fields);
}

/** Unlike assignment, this makes a plain field of `__proto__` too, which the schema then refuses. */
function fromEntries(fields: ReadonlyMap<string, unknown>): Record<string, unknown> {
  return Object.fromEntries(fields);
}

function nodePlace(node: unknown, lines: LineCounter): TextPlace | undefined {
  const start = isScalar(node) || isMap(node) || isSeq(node) ? node.range?.[0] : undefined;
  return start === undefined ? undefined : placeOf(lines, start);
}

function notePlace(node: unknown, path: FieldPath, reading: Reading): void {
  const place = nodePlace(node, reading.lines);
  if (place !== undefined) reading.places.set(writtenPath(path), place);
}
