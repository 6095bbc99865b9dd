import { type Problem, problem } from '../problems.ts';

/** Largest job file that is read, bytes. */
export const mostBytes = 2_000_000;

export type Decoded =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly problem: Problem };

/** What a text is meant to be. */
export interface TextKind {
  /** What is told of a file that looks like something else, such as `a PNG picture`. */
  readonly notOfIt: (looksLike: string) => Problem;
  /** How nothing is written, where it may be: comments alone are nothing then, too. */
  readonly empty?: string;
}

/** A text that is meant to be a job file. */
export const jobText: TextKind = {
  notOfIt: (looksLike) =>
    problem('not-a-job-file', [], {
      facts: { looksLike },
      allowed: 'a job file; fettle new --family <family> writes one to start from',
    }),
};

/** That there is nothing in a file, with how nothing is written. */
export function nothingIn({ empty }: TextKind): Problem {
  return problem('file-empty', [], { facts: {}, ...(empty === undefined ? {} : { allowed: empty }) });
}

/** Turns the bytes of a file into text, or says what kind of file it is instead. */
export function decode(source: string | Uint8Array, kind: TextKind = jobText): Decoded {
  const text = typeof source === 'string' ? checkedLength(source) : decodeBytes(source, kind);
  return typeof text === 'string' ? checkCharacters(text, kind) : { ok: false, problem: text };
}

function tooLarge(bytes: number): Problem {
  return problem('file-too-large', [], {
    facts: { bytes, most: mostBytes },
    allowed: `at most ${mostBytes} bytes`,
  });
}

function checkedLength(text: string): string | Problem {
  if (text.length > mostBytes) return tooLarge(text.length);
  const bytes = new TextEncoder().encode(text).length;
  return bytes > mostBytes ? tooLarge(bytes) : text;
}

function decodeBytes(bytes: Uint8Array, kind: TextKind): string | Problem {
  if (bytes.length > mostBytes) return tooLarge(bytes.length);
  const foreign = foreignKind(bytes);
  if (foreign !== undefined) return kind.notOfIt(foreign);
  if (looksUtf16(bytes)) return problem('file-utf16', [], { facts: {}, allowed: 'UTF-8' });
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return problem('file-not-utf8', [], { facts: {}, allowed: 'UTF-8' });
  }
}

function looksUtf16(bytes: Uint8Array): boolean {
  const [first, second] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)) return true;
  const start = bytes.subarray(0, 64);
  const noughts = (side: 0 | 1) => start.filter((byte, at) => byte === 0 && at % 2 === side).length;
  const [even, odd] = [noughts(0), noughts(1)];
  // In text of our scripts one byte of each pair is 0, and always the same one.
  return start.length >= 4 && Math.max(even, odd) * 3 > start.length && Math.min(even, odd) === 0;
}

/** How files of other kinds begin, as their formats fix it. */
const beginnings: readonly (readonly [kind: string, bytes: readonly number[]])[] = [
  ['a program', [0x7f, 0x45, 0x4c, 0x46]],
  ['a program', [0x4d, 0x5a, 0x90]],
  ['a PNG picture', [0x89, 0x50, 0x4e, 0x47]],
  ['a JPEG picture', [0xff, 0xd8, 0xff]],
  ['a GIF picture', [0x47, 0x49, 0x46, 0x38]],
  ['a PDF', [0x25, 0x50, 0x44, 0x46]],
  ['a ZIP archive or an office document', [0x50, 0x4b, 0x03, 0x04]],
  ['a compressed file', [0x1f, 0x8b]],
];

function foreignKind(bytes: Uint8Array): string | undefined {
  const known = beginnings.find(([, beginning]) => beginning.every((byte, at) => bytes[at] === byte));
  if (known !== undefined) return known[0];
  return bytes.subarray(0, 512).includes(0) && !looksUtf16(bytes) && !isText(bytes)
    ? 'a binary file'
    : undefined;
}

function isText(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
}

/** Mark-up starts with an angle bracket, which no YAML mapping does. */
function markupKind(text: string): string | undefined {
  const start = text.trimStart().slice(0, 300);
  if (!/^<[!?a-z]/i.test(start)) return undefined;
  if (/<svg\b/i.test(start)) return 'an SVG drawing';
  return /<(?:!doctype )?html\b/i.test(start) ? 'a web page' : 'XML';
}

function checkCharacters(withMark: string, kind: TextKind): Decoded {
  const text = withMark.startsWith('\uFEFF') ? withMark.slice(1) : withMark;
  if (text.trim() === '') return { ok: false, problem: nothingIn(kind) };
  const markup = markupKind(text);
  if (markup !== undefined) return { ok: false, problem: kind.notOfIt(markup) };
  const at = text.search(/\p{Surrogate}|(?![\t\n\r])[\p{Cc}\uFFFE\uFFFF]/u);
  if (at < 0) return { ok: true, text };
  const before = text.slice(0, at).split('\n');
  const character = `U+${text.charCodeAt(at).toString(16).toUpperCase().padStart(4, '0')}`;
  const found = problem('file-control-character', [], { facts: { character } });
  return {
    ok: false,
    problem: { ...found, at: { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 } },
  };
}
