/** What can be wrong with a written quantity; the codes are stable. */
export type QuantityProblemCode =
  | 'not-text'
  | 'empty'
  | 'too-long'
  | 'not-a-number'
  | 'too-large'
  | 'ambiguous-number'
  | 'range'
  | 'no-unit'
  | 'unknown-unit'
  | 'wrong-dimension'
  | 'ambiguous-unit'
  | 'unknown-basis'
  | 'bad-doubt'
  | 'below-absolute-zero'
  | 'below-least'
  | 'above-most'
  | 'not-above';

/** Why a written quantity was not taken. */
export interface QuantityProblem {
  readonly ok: false;
  readonly code: QuantityProblemCode;
  /** One sentence: what is wrong and what is allowed. */
  readonly says: string;
  /** What is allowed, alone. */
  readonly allowed: string;
}

/** Makes a problem of its code, what is wrong, and what is allowed. */
export function quantityProblem(code: QuantityProblemCode, wrong: string, allowed: string): QuantityProblem {
  return { ok: false, code, says: `${wrong}; allowed: ${allowed}.`, allowed };
}

/** Shortens what is quoted back in a message. */
export function quoted(text: string): string {
  return text.length > 40 ? `"${text.slice(0, 37)}…"` : `"${text}"`;
}
