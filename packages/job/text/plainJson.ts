import { decode } from './decode.ts';
import { mostNesting } from './nesting.ts';

/** Longer texts are left to the reader that counts their parts, characters. */
const mostCharacters = 100_000;

/** A text of JSON, and whether a colon follows it, so that it is a name. */
const writtenText = /"(?:[^"\\]|\\.)*"(\s*:)?/g;

/** JSON takes a carriage return alone for space, YAML for a part of a text. */
const loneReturn = /\r(?!\n)/;

/** How many names of fields a text has; where one stands twice it counts twice. */
function namesWritten(text: string): number {
  let names = 0;
  for (const [, colon] of text.matchAll(writtenText)) if (colon !== undefined) names++;
  return names;
}

/** How many names of fields plain data has; not a number where it nests too deeply. */
function namesKept(value: unknown, depth = 0): number {
  if (typeof value !== 'object' || value === null) return 0;
  if (depth >= mostNesting) return Number.NaN;
  let names = Array.isArray(value) ? 0 : Object.keys(value).length;
  for (const inside of Object.values(value)) names += namesKept(inside, depth + 1);
  return names;
}

/**
 * The plain data of a short text of JSON in which no field is repeated and nothing nests too deeply, read in a fraction
 * of the time that the reader of YAML takes, which makes the same of it where it takes it at all. Undefined for every
 * other text, which that reader is to read.
 */
export function plainJson(source: string | Uint8Array): unknown {
  if (source.length > mostCharacters) return undefined;
  const decoded = decode(source);
  if (!decoded.ok || !/^\s*\{/.test(decoded.text) || loneReturn.test(decoded.text)) return undefined;
  try {
    const value: unknown = JSON.parse(decoded.text);
    return namesKept(value) === namesWritten(decoded.text) ? value : undefined;
  } catch {
    return undefined;
  }
}
