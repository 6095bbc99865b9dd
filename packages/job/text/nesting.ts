import { Lexer } from 'yaml';

/** Deepest nesting of fields and lists that is read. */
export const mostNesting = 24;

/** Most tokens (names, values, signs, runs of space) that are read. */
export const mostTokens = 100_000;

/** Why a text is not handed to the recursive reader, and the offset where that shows. */
export interface Unreadable {
  readonly code: 'nested-too-deep' | 'too-many-parts';
  readonly most: number;
  readonly offset: number;
}

/**
 * Finds from a text's flat row of tokens whether it nests too deeply or has too many parts, so that no
 * recursive reader meets it.
 */
export function unreadable(text: string): Unreadable | undefined {
  const columns: number[] = [];
  let flow = 0;
  let tokens = 0;
  let offset = 0;
  let lineStart = 0;
  /** True where a token here may open a block of its own. */
  let opens = true;
  for (const token of new Lexer().lex(text)) {
    if (isMarker(token)) continue;
    if (token === '{' || token === '[') flow++;
    if ((token === '}' || token === ']') && flow > 0) flow--;
    if (opens && !isSpace(token)) {
      if (flow === 0) enter(columns, offset - lineStart);
      opens = isIndicator(token);
    }
    tokens++;
    if (flow + columns.length > mostNesting) return { code: 'nested-too-deep', most: mostNesting, offset };
    if (tokens > mostTokens) return { code: 'too-many-parts', most: mostTokens, offset };
    offset += token.length;
    const newline = token.lastIndexOf('\n');
    if (newline >= 0) {
      lineStart = offset - (token.length - newline - 1);
      opens = true;
    }
  }
  return undefined;
}

/** Marks that the lexer adds and that are not in the text. */
function isMarker(token: string): boolean {
  return token === '\u0002' || token === '\u0018' || token === '\u001f';
}

function isSpace(token: string): boolean {
  return token.trim() === '' || token.startsWith('#');
}

function isIndicator(token: string): boolean {
  return token === '-' || token === '?' || token === ':';
}

function enter(columns: number[], column: number): void {
  while (columns.length > 0 && columns.at(-1)! > column) columns.pop();
  if (columns.at(-1) !== column) columns.push(column);
}
