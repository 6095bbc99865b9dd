import type { Context } from 'hono';
import { badRequest, Refusal } from './refusal.ts';

/** One entity tag of a header, RFC 9110 section 8.8.3. */
interface EntityTag {
  readonly weak: boolean;
  /** What stands between the quotes. */
  readonly opaque: string;
}

/** What a condition names: anything that is there, or these. */
export type Condition = { readonly any: true } | { readonly any: false; readonly tags: readonly EntityTag[] };

const tagAhead = /^(W\/)?"([\x21\x23-\x7e\x80-\xff]*)"/;

/** Reads If-Match or If-None-Match; undefined where it is malformed. */
export const readCondition = (header: string): Condition | undefined => {
  if (header.trim() === '*') return { any: true };
  const tags: EntityTag[] = [];
  let rest = header.replace(/^[ \t,]+/, '');
  while (rest !== '') {
    const found = tagAhead.exec(rest);
    if (found === null) return undefined;
    tags.push({ weak: found[1] !== undefined, opaque: found[2] ?? '' });
    const after = rest.slice(found[0].length);
    const separator = /^[ \t]*(?:,[ \t,]*|$)/.exec(after);
    if (separator === null) return undefined;
    rest = after.slice(separator[0].length);
  }
  return tags.length === 0 ? undefined : { any: false, tags };
};

/** The strong tag of a revision; the YAML form of a document is another representation and has its own. */
export const revisionTag = (revision: number, form: 'json' | 'yaml' = 'json'): string =>
  form === 'json' ? `"${revision}"` : `"${revision}-yaml"`;

const revisionOf = (tag: EntityTag): number | undefined => {
  const found = /^(0|[1-9]\d{0,8})(?:-yaml)?$/.exec(tag.opaque);
  // A weak tag never matches where strong comparison is asked for.
  return found === null || tag.weak ? undefined : Number(found[1]);
};

/** Which revisions a change may begin from. */
export interface BaseWanted {
  readonly any: boolean;
  /** Those named, highest first. */
  readonly revisions: readonly number[];
}

/** Whether the change may begin from a revision. */
export const beginsFrom = ({ any, revisions }: BaseWanted, revision: number): boolean =>
  any || revisions.includes(revision);

/**
 * The revisions that a change says it began from.
 * @throws Refusal 428 where it does not say, 400 where If-Match is malformed
 */
export const readIfMatch = (context: Context): BaseWanted => {
  const header = context.req.header('If-Match');
  if (header === undefined)
    throw new Refusal({
      status: 428,
      code: 'if-match-missing',
      title: 'The revision is missing',
      detail:
        'A change must say which revision it began from: send If-Match with the ETag that came with the document, as If-Match: "3".',
    });
  const condition = readCondition(header);
  if (condition === undefined)
    throw badRequest(
      'if-match-malformed',
      'If-Match must hold * or revisions in double quotes, as If-Match: "3".',
    );
  if (condition.any) return { any: true, revisions: [] };
  const revisions = condition.tags.map(revisionOf).filter((revision) => revision !== undefined);
  return { any: false, revisions: revisions.toSorted((one, other) => other - one) };
};

/** Whether the caller has what is named by this tag already (weak comparison, RFC 9110 section 13.1.2). */
export const hasAlready = (context: Context, tag: string): boolean => {
  const header = context.req.header('If-None-Match');
  const condition = header === undefined ? undefined : readCondition(header);
  if (condition === undefined) return false;
  return condition.any || condition.tags.some(({ opaque }) => `"${opaque}"` === tag);
};
