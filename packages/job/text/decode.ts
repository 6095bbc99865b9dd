import { type Problem, problem } from '../problems.ts';

/** Largest job file that is read, bytes. */
export const mostBytes = 2_000_000;

export type Decoded =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly problem: Problem };

/** Turns the bytes of a file into text, or says what kind of file it is instead. */
export function decode(source: string | Uint8Array): Decoded {
  const text = typeof source === 'string' ? checkedLength(source) : decodeBytes(source);
  return typeof text === 'string' ? checkCharacters(text) : { ok: false, problem: text };
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

function decodeBytes(bytes: Uint8Array): string | Problem {
  if (bytes.length > mostBytes) return tooLarge(bytes.length);
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
  return start.length >= 4 && start.filter((byte) => byte === 0).length * 3 > start.length;
}

function checkCharacters(withMark: string): Decoded {
  const text = withMark.startsWith('\uFEFF') ? withMark.slice(1) : withMark;
  if (text.trim() === '') return { ok: false, problem: problem('file-empty', [], { facts: {} }) };
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
