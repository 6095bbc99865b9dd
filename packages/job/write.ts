import { Document, isMap, isScalar, Scalar, visit, type YAMLMap, type YAMLSeq } from 'yaml';
import type { JobDocument } from './schema/job.ts';
import { mostBytes } from './text/decode.ts';
import { mostTokens, unreadable } from './text/nesting.ts';

/** A list or group stands on one line up to this many characters, of single texts of up to so many. */
const shortLine = 76;
const shortText = 24;

/** What readers of YAML 1.1 take for yes, no, nothing, a number or a sign of their own, and we take for text. */
const otherwiseRead =
  /^(?:y|n|yes|no|on|off|true|false|null|~|=|<<|[-+]?(?=.*[:_])[\d_]+(?::[0-5]?\d)*(?:\.[\d_]*)?|[-+]?0b[01_]+|[-+]?0x[\da-f_]+)$/i;

/**
 * What cannot be seen, or changes how the text around it is seen: controls, signs that turn the direction of
 * writing, spaces without width, line signs that are not line ends, halves of characters.
 */
const unseen =
  /(?![\t\n])[\p{Cc}\p{Surrogate}\u061c\u200b\u200e\u200f\u2028-\u202e\u2060-\u206f\ufeff\ufff9-\uffff\u{e0000}-\u{e007f}]/gu;

/**
 * Writes a job document as the text of a job file: YAML 1.2 without anchors, aliases and tags, every quantity as it
 * was written. Text that could be read as something else stands in quotes, and what could not be seen in it is
 * written as an escape. `readJob` gives the same document again, and that written once more the same text. A document
 * that would have too many parts for a reader in lines of YAML, which only thousands of readings bring about, is
 * written as one line of JSON, which has fewer.
 *
 * @param document a document that has been read; whatever was wrong with it stays wrong
 */
export function writeJob(document: JobDocument): string {
  const lines = inLines(document).replace(unseen, escaped);
  return isReadable(lines) ? lines : `${JSON.stringify(document).replace(unseen, escaped)}\n`;
}

/** A part has at least one character, so a short text needs no counting. */
function isReadable(text: string): boolean {
  if (text.length <= mostTokens) return true;
  return new TextEncoder().encode(text).length <= mostBytes && unreadable(text) === undefined;
}

/** Text with a sign that `unseen` finds stands in double quotes, where an escape may take its place. */
function inLines(document: JobDocument): string {
  const yaml = new Document(document, { aliasDuplicateObjects: false, version: '1.2' });
  visit(yaml, {
    Scalar: (_key, node) => {
      if (typeof node.value === 'string') Object.assign(node, styleOf(node.value));
    },
    Seq: (_key, node) => {
      node.flow = isShortList(node);
      for (const entry of node.items) if (isMap(entry)) entry.flow = isShortGroup(entry);
    },
  });
  spaceParts(yaml.contents);
  return yaml.toString({ lineWidth: 0, doubleQuotedAsJSON: true, flowCollectionPadding: true });
}

function styleOf(text: string): Pick<Scalar, 'type'> {
  if (text.search(unseen) >= 0) return { type: Scalar.QUOTE_DOUBLE };
  if (isPlainLines(text)) return { type: Scalar.BLOCK_LITERAL };
  const quoted = text !== text.trim() || /[\t\n]/.test(text) || otherwiseRead.test(text);
  return { type: quoted ? Scalar.QUOTE_DOUBLE : Scalar.PLAIN };
}

/** Several lines that stay the same when a reader's editor takes spaces off the ends of lines. */
function isPlainLines(text: string): boolean {
  return /^\S[^\n]*\n/.test(text) && !/\t|[ \u00a0]$|\n{2}$(?!\n)/m.test(text) && /\S\n?$/.test(text);
}

function isShortList({ items }: YAMLSeq): boolean {
  return items.every(isShortText) && lengthOf(items) <= shortLine;
}

function isShortGroup({ items }: YAMLMap): boolean {
  return (
    items.every(({ value }) => isShortText(value)) &&
    lengthOf(items.flatMap(({ key, value }) => [key, value])) <= shortLine
  );
}

function isShortText(node: unknown): boolean {
  return isScalar(node) && node.type !== Scalar.BLOCK_LITERAL && String(node.value).length <= shortText;
}

function lengthOf(nodes: readonly unknown[]): number {
  return nodes.reduce<number>((sum, node) => sum + (isScalar(node) ? String(node.value).length + 2 : 0), 0);
}

/** An empty line before every part but the first. */
function spaceParts(contents: unknown): void {
  if (!isMap(contents)) return;
  for (const { key } of contents.items.slice(1)) if (isScalar(key)) key.spaceBefore = true;
}

function escaped(sign: string): string {
  const code = sign.codePointAt(0) ?? 0;
  const digits = code.toString(16);
  return code > 0xffff ? `\\U${digits.padStart(8, '0')}` : `\\u${digits.padStart(4, '0')}`;
}
