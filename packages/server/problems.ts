import type { Context } from 'hono';
import type { FieldCode, ProblemCode } from './problemCodes.ts';

/** One field that is wrong, as in the messages of `check`. */
export interface FieldProblem {
  readonly code: FieldCode;
  readonly path: string;
  readonly says: string;
  readonly allowed?: string;
  readonly at?: { readonly line: number; readonly column: number };
}

/** What went wrong with a request, RFC 9457. */
export interface ProblemDetails {
  readonly status:
    | 400
    | 401
    | 403
    | 404
    | 405
    | 406
    | 408
    | 409
    | 412
    | 413
    | 415
    | 421
    | 422
    | 428
    | 429
    | 500
    | 503
    | 507;
  /** Stable code; the problem's type is `urn:fettle:problem:` with it. */
  readonly code: ProblemCode;
  /** The same few words for every problem of this code. */
  readonly title: string;
  /** One sentence about this one: what is wrong and what is allowed. */
  readonly detail: string;
  readonly problems?: readonly FieldProblem[];
  /** More members, as the code defines them. */
  readonly more?: Readonly<Record<string, unknown>>;
}

/** A sentence repeats what was asked for: signs that are not seen, line ends too, would make it another one. */
const onOneLine = (text: string): string => text.replaceAll(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]+/gu, ' ');

/** Answers with problem details. */
export const answerProblem = (context: Context, problem: ProblemDetails): Response => {
  const { status, code, title, detail, problems, more } = problem;
  const body = {
    type: `urn:fettle:problem:${code}`,
    title,
    status,
    detail: onOneLine(detail),
    code,
    ...(problems === undefined ? {} : { problems }),
    ...more,
  };
  return context.body(JSON.stringify(body, null, 2), status, { 'Content-Type': 'application/problem+json' });
};
