import type { Context } from 'hono';
import type { ProblemCode } from '../problemCodes.ts';
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

const shownTag = (header: string): string => (header.length > 40 ? `${header.slice(0, 37)}…` : header);

const revisionOf = (tag: EntityTag): number | undefined => {
  const found = /^(0|[1-9]\d{0,8})(?:-yaml)?$/.exec(tag.opaque);
  // A weak tag never matches where strong comparison is asked for, and none of ours is weak.
  return found === null || tag.weak ? undefined : Number(found[1]);
};

/** The revisions that a change may begin from, as it named them, highest first; one at least. */
export type BasesWanted = readonly number[];

const howToSay =
  'send If-Match with the ETag that came with the document, a revision in double quotes, as If-Match: "3"';

const unsaid = (code: ProblemCode, detail: string): Refusal =>
  new Refusal({ status: 428, code, title: 'The revision is missing', detail });

/**
 * The revisions that a change says it began from.
 * @throws Refusal 428 where it does not say or says any (*), 400 where If-Match holds what is no ETag of a revision
 */
export const readIfMatch = (context: Context): BasesWanted => {
  const header = context.req.header('If-Match');
  if (header === undefined)
    throw unsaid('if-match-missing', `A change must say which revision it began from: ${howToSay}.`);
  const condition = readCondition(header);
  // RFC 9110 lets * stand for whatever is there; a change from whatever is there takes back what nobody looked at.
  if (condition?.any)
    throw unsaid(
      'if-match-any',
      `If-Match: * names no revision, and so the change could take back in silence what others changed; ${howToSay}.`,
    );
  const revisions = condition?.tags.map(revisionOf);
  if (!revisions?.every((revision) => revision !== undefined))
    throw badRequest(
      'if-match-malformed',
      `If-Match says ${shownTag(header)}, which is no ETag of a revision; allowed: revisions from 0 to 999999999 in double quotes, without W/ before them and with commas between, as If-Match: "3".`,
    );
  return revisions.toSorted((one, other) => other - one);
};

/** Whether the caller has what is named by this tag already (weak comparison, RFC 9110 section 13.1.2). */
export const hasAlready = (context: Context, tag: string): boolean => {
  const header = context.req.header('If-None-Match');
  const condition = header === undefined ? undefined : readCondition(header);
  if (condition === undefined) return false;
  return condition.any || condition.tags.some(({ opaque }) => `"${opaque}"` === tag);
};
