import type { Constant } from './literals.ts';

/** A constant that may change unnoticed, with the reason why that is no gap in the checks. */
export interface Allowed {
  readonly path: string;
  /** Text of its line without indentation. */
  readonly line: string;
  readonly literal: string;
  readonly reason: string;
}

/** What is left when the reasons are held against the constants that went unnoticed. */
export interface Verdict {
  readonly unexplained: readonly Constant[];
  /** Reasons for a constant that is gone, or whose change is noticed now. */
  readonly stale: readonly Allowed[];
}

/** Matches unnoticed constants with reasons; both ways, so that the list shrinks as the checks grow. */
export function judge(unnoticed: readonly Constant[], allowed: readonly Allowed[]): Verdict {
  const explains = (reason: Allowed, constant: Constant) =>
    reason.path === constant.path && reason.line === constant.lineText && reason.literal === constant.literal;
  return {
    unexplained: unnoticed.filter((constant) => !allowed.some((reason) => explains(reason, constant))),
    stale: allowed.filter((reason) => !unnoticed.some((constant) => explains(reason, constant))),
  };
}

/** Reads the list of reasons; throws where an entry lacks one. */
export function readAllowed(text: string): Allowed[] {
  const read: unknown = JSON.parse(text);
  if (!Array.isArray(read) || !read.every(isAllowed))
    throw new Error(
      'The list of allowed constants holds entries of path, line, literal and reason, all of them text',
    );
  return read;
}

function isAllowed(entry: unknown): entry is Allowed {
  if (typeof entry !== 'object' || entry === null) return false;
  const fields: Readonly<Record<string, unknown>> = { ...entry };
  return ['path', 'line', 'literal', 'reason'].every((name) => {
    const value = fields[name];
    return typeof value === 'string' && value !== '';
  });
}
