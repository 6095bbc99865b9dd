import type { Stage } from '../../model/medium.ts';
import { stages } from '../../model/medium.ts';
import type { Compiled } from '../compiled.ts';

/** What a rule of cleaning names: every bed, those of a stage, or a chamber, a medium or a bed by its id. */
export interface CleaningRule {
  readonly what: 'all' | Stage | string;
  /** Days from one cleaning to the next; 1 to 730, whole. */
  readonly everyDays: number;
}

/**
 * When which beds are cleaned. `never`: nothing is. `usual`: whenever the cleaning interval ends, the bed that ended
 * it and every bed whose resistance has at least doubled, and every bed once a year. `parts`: by the calendar.
 * `flow`: whenever the flow at the tank is down by `lossShare` of clean (above 0, below 1), every bed whose resistance
 * has at least doubled, or all where none has.
 */
export type CleaningPattern =
  | { readonly kind: 'never' }
  | { readonly kind: 'usual' }
  | { readonly kind: 'parts'; readonly rules: readonly CleaningRule[] }
  | { readonly kind: 'flow'; readonly lossShare: number };

/** Most rules of one pattern, and the longest time between two cleanings, days. */
export const MOST_RULES = 20;
export const LONGEST_DAYS = 730;

/** A pattern as it was read, or the part of it that says nothing. */
export type PatternReading =
  | { readonly ok: true; readonly pattern: CleaningPattern }
  | { readonly ok: false; readonly found: string };

const flowPattern = (share: string): PatternReading => {
  const percent = /^(\d{1,2}(?:\.\d{1,3})?) ?%$/.exec(share)?.[1];
  const lossShare = Number(percent) / 100;
  return lossShare > 0 ? { ok: true, pattern: { kind: 'flow', lossShare } } : { ok: false, found: share };
};

const ruleOf = (text: string): CleaningRule | undefined => {
  const at = text.lastIndexOf('/');
  const [what, every] = [text.slice(0, at).trim(), text.slice(at + 1).trim()];
  const everyDays = /^\d{1,3}$/.test(every) ? Number(every) : 0;
  return at > 0 && what !== '' && everyDays >= 1 && everyDays <= LONGEST_DAYS
    ? { what, everyDays }
    : undefined;
};

/**
 * Reads a pattern as people write it: `never`, `usual`, `all/90`, `mechanical/30, all/90`, `basket-1/30`, `flow 25 %`.
 * Whether the filter has what a rule names is `bedsNamed`'s business.
 */
export const readPattern = (text: string): PatternReading => {
  const trimmed = text.trim();
  if (trimmed === 'never' || trimmed === 'usual') return { ok: true, pattern: { kind: trimmed } };
  const flow = /^flow\b(.*)$/.exec(trimmed)?.[1];
  if (flow !== undefined && !flow.includes('/')) return flowPattern(flow.trim());
  const parts = trimmed.split(',').map((part) => part.trim());
  if (parts.length > MOST_RULES) return { ok: false, found: trimmed };
  if (!parts.every((part) => part.includes('/'))) return { ok: false, found: trimmed };
  const rules = parts.map(ruleOf);
  const bad = rules.indexOf(undefined);
  if (bad >= 0) return { ok: false, found: parts[bad]! };
  return { ok: true, pattern: { kind: 'parts', rules: rules.filter((rule) => rule !== undefined) } };
};

/** A pattern as `readPattern` reads it. */
export const patternText = (pattern: CleaningPattern): string => {
  switch (pattern.kind) {
    case 'parts':
      return pattern.rules.map(({ what, everyDays }) => `${what}/${everyDays}`).join(', ');
    case 'flow':
      return `flow ${Number((100 * pattern.lossShare).toPrecision(6))} %`;
    default:
      return pattern.kind;
  }
};

/** Places of the beds that a rule names, in water order; none where the filter has nothing of that name. */
export const bedsNamed = ({ beds }: Compiled, what: CleaningRule['what']): number[] =>
  beds.flatMap(({ id, chamber, medium }, place) => {
    const names = [id, chamber, medium.id, ...(isStage(what) ? [medium.stage] : []), 'all'];
    return names.includes(what) ? [place] : [];
  });

const isStage = (what: string): what is Stage => stages.some((stage) => stage === what);

/** What of a pattern the filter does not have; nothing where it has all. */
export const unknownPlaces = (compiled: Compiled, pattern: CleaningPattern): string[] =>
  pattern.kind === 'parts'
    ? pattern.rules.map(({ what }) => what).filter((what) => bedsNamed(compiled, what).length === 0)
    : [];
