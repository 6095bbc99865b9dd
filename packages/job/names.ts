import { likeNames } from '@fettle/engine/quantities/spelling.ts';

/** Above so many names a list is long, and stands in the catalogue. */
const longList = 15;

/** What a message says about a name that is not known. */
export interface NameAdvice {
  /** Up to three known names that may be meant. */
  readonly nearest: string | undefined;
  readonly allowed: string;
}

/** Advice on a name that is not among the known ones; a long list is left to the catalogue where a name is like it. */
export function adviceOn(typed: unknown, known: readonly string[]): NameAdvice {
  const like = typeof typed === 'string' ? likeNames(typed, known) : [];
  const nearest = like.length === 0 ? undefined : like.join(', ');
  const inCatalogue = nearest !== undefined && known.length > longList;
  return {
    nearest,
    allowed: inCatalogue ? `see docs/catalogue.md for all ${known.length}` : known.join(', '),
  };
}

/** A list of names longer than this many characters is printed only once. */
const longText = 160;

/** Leaves out what is allowed where the same long list stands with an earlier problem. */
export function listedOnce<Listed extends { readonly path: string; readonly allowed?: string }>(
  problems: readonly Listed[],
): readonly Listed[] {
  const first = new Map<string, string>();
  return problems.map((each) => {
    const { allowed } = each;
    if (allowed === undefined || allowed.length <= longText) return each;
    const before = first.get(allowed);
    if (before !== undefined) return { ...each, allowed: `as listed for ${before}` };
    first.set(allowed, each.path);
    return each;
  });
}

/** Leaves out problems of which an earlier one says the same of the same place. */
export function withoutRepeats<Told extends { readonly path: string; readonly says: string }>(
  problems: readonly Told[],
): readonly Told[] {
  const seen = new Set<string>();
  return problems.filter(({ path, says }) => {
    const key = `${path}\n${says}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
