import { visitorKeys } from 'oxc-parser';
import { lineAt } from '../breach.ts';
import { parsedProgram } from '../parsed.ts';
import type { Source } from '../sources.ts';

/** One number written in a source, as a place that can be changed. */
export interface Constant {
  readonly path: string;
  readonly line: number;
  /** The line's text without its indentation: what tells it from others when lines move. */
  readonly lineText: string;
  readonly literal: string;
  /** Offsets of the literal in the text: its first character, and the one after its last. */
  readonly start: number;
  readonly end: number;
}

/** Numbers that say nothing by themselves: none, one of, two of. */
const trivial: ReadonlySet<number> = new Set([0, 1, 2]);

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly [key: string]: unknown;
}

/**
 * Numbers of a source that decide a result: not the trivial ones, not those that only find a place in a list,
 * and not what is said about a law or a figure without being part of it: bounds of a valid range, and stated
 * doubts, which are rounded far above 1 %.
 */
export function constantsIn(source: Source): Constant[] {
  const found: Constant[] = [];
  const visit = (node: Node) => {
    if (isAside(node)) return;
    if (node.type === 'Literal' && typeof node.value === 'number' && !trivial.has(node.value))
      found.push(constantAt(source, node));
    for (const child of childrenOf(node)) visit(child);
  };
  visit({ ...parsedProgram(source) });
  return found;
}

function constantAt({ path, text }: Source, { start, end }: Node): Constant {
  const line = lineAt(text, start);
  const lineText = (text.split('\n')[line - 1] ?? '').trim();
  return { path, line, lineText, literal: text.slice(start, end), start, end };
}

/** Whether nothing below a node decides a result: a type, a doubt, or what is held to be a valid range. */
function isAside(node: Node): boolean {
  if (node.type === 'Property' && isNode(node.key) && node.key.name === 'doubt') return true;
  if (node.type.startsWith('TS') && !holdsValues.has(node.type)) return true;
  if (node.type !== 'TSSatisfiesExpression' || !isNode(node.typeAnnotation)) return false;
  const { typeName } = node.typeAnnotation;
  return isNode(typeName) && typeName.name === 'ValidRange';
}

/** Nodes of the type system that have a value within. */
const holdsValues: ReadonlySet<string> = new Set([
  'TSAsExpression',
  'TSSatisfiesExpression',
  'TSNonNullExpression',
]);

function childrenOf(node: Node): Node[] {
  const keys = visitorKeys[node.type] ?? [];
  return keys.filter((key) => !isName(node, key)).flatMap((key) => [node[key]].flat().filter(isNode));
}

/** Whether a child only names a property or an element: `{ 3: … }`, `all[3]`. */
function isName(node: Node, key: string): boolean {
  if (node.type === 'MemberExpression') return key === 'property';
  return node.type === 'Property' && key === 'key' && node.computed !== true;
}

function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && 'type' in value && typeof value.type === 'string';
}
