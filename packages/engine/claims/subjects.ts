import type { Dimension } from '../quantities/dimensions.ts';

/** What a maker's statement is about. */
export type Subject =
  | 'flow'
  | 'tank-volume'
  | 'head'
  | 'power'
  | 'media-volume'
  | 'weight'
  | 'surface'
  | 'unknown';

/** Dimensions in which makers state figures that can be held against something. */
export const claimedDimensions: readonly Dimension[] = [
  'flow',
  'volume',
  'length',
  'power',
  'mass',
  'specific-area',
  'area-per-mass',
  'area',
  'pressure',
  'temperature',
  'energy',
];

const bySort: Partial<Record<Dimension, Subject>> = {
  flow: 'flow',
  power: 'power',
  mass: 'weight',
  'specific-area': 'surface',
  'area-per-mass': 'surface',
};

const byWords: readonly {
  readonly dimension: Dimension;
  readonly words: RegExp;
  readonly subject: Subject;
}[] = [
  { dimension: 'length', words: /head|lift|delivery height|pump height|\bH ?max\b/i, subject: 'head' },
  {
    dimension: 'volume',
    words: /media|material|basket|canister|chamber|filter(?:ing)? volume|filter capacity/i,
    subject: 'media-volume',
  },
  {
    dimension: 'volume',
    words: /aquari|tank|pond|\bup to\b|\bfor\b|suit|recommend/i,
    subject: 'tank-volume',
  },
  { dimension: 'area', words: /surface|area|bacteria|coloni|media/i, subject: 'surface' },
];

/** Subject by the words that stand nearest to one end of a text; `undefined` where they say nothing. */
function subjectByWords(dimension: Dimension, text: string, nearest: 'end' | 'start'): Subject | undefined {
  const found = byWords.flatMap(({ dimension: each, words, subject }) => {
    if (each !== dimension) return [];
    const places = [...text.matchAll(new RegExp(words.source, 'gi'))].map(({ index }) => index);
    const at = nearest === 'end' ? places.at(-1) : places[0];
    return at === undefined ? [] : [{ at, subject }];
  });
  const sorted = found.sort((one, other) => (nearest === 'end' ? other.at - one.at : one.at - other.at));
  return sorted[0]?.subject;
}

/**
 * Guesses what a figure in a statement is about: by its dimension where that says it, else by the nearest words
 * before it, behind it, and anywhere in the statement.
 */
export function guessSubject(figure: {
  readonly dimension: Dimension;
  readonly before: string;
  readonly behind: string;
  readonly statement: string;
}): Subject {
  const { dimension, before, behind, statement } = figure;
  return (
    bySort[dimension] ??
    subjectByWords(dimension, before, 'end') ??
    subjectByWords(dimension, behind, 'start') ??
    subjectByWords(dimension, statement, 'start') ??
    'unknown'
  );
}

const pumpWords = /\b(?:pump|motor|output)/i;
const filterWords = /\bfilter(?:s|ing|ation|ed)?\b(?![ -]?pump)|circulat|throughput|at the tank/i;
const loadedWords = /circulat|loaded|filled|packed|with (?:the |its )?(?:media|filter)|at the tank/i;

/**
 * Whose flow a statement gives: that of the filter where it is said to be loaded, else by the words before the figure,
 * behind it, and anywhere in the statement; `undefined` where they do not say.
 */
export function flowOf(figure: {
  readonly before: string;
  readonly behind: string;
  readonly statement: string;
}): 'pump' | 'filter' | undefined {
  const { before, behind, statement } = figure;
  if (loadedWords.test(behind.split(/[,;]/)[0] ?? '')) return 'filter';
  for (const text of [before, behind, statement]) {
    if (filterWords.test(text)) return 'filter';
    if (pumpWords.test(text)) return 'pump';
  }
  return undefined;
}

const conditions =
  /with (?:the |its )?(?:media|filter material)|loaded|filled|packed|circulation|\bat \d[^,;)]*|\bmin(?:imum)?\b|\bfrom\b|empty|\bdry\b|\bwet\b|\bgross\b|\bnet\b/gi;

/** The conditions under which a statement holds, such as "with media"; statements under different ones are not one figure. */
export function conditionsOf(statement: string): string {
  return [...statement.matchAll(conditions)]
    .map(([words]) => words.toLowerCase())
    .sort()
    .join(', ');
}
