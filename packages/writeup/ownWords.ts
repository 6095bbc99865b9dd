import { likeNames } from '@fettle/engine/quantities/spelling.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { Block, Document } from './content/document.ts';

type OwnWords = NonNullable<NonNullable<JobDocument['writeUp']>['words']>;

/** Blocks that words may stand in place of: whose content is nothing but text. */
const replaceable = new Set<Block['kind']>(['paragraph', 'heading', 'list']);

/** Where own words stand that came into a document before or after a block, or in its place. */
const addedId = /^(.*?)-(?:before|after)(?:-\d+)?$/;

/** The place of own words that a block is, or that a block of own words stands at. */
export const ownPlace = (
  block: Block,
): { readonly id: string; readonly replaceable: boolean } | undefined => {
  if (addedId.test(block.id)) return undefined;
  return { id: block.id, replaceable: replaceable.has(block.kind) };
};

const ownParagraphs = (id: string, text: string | undefined): readonly Block[] =>
  (text ?? '')
    .split(/\n\s*\n/)
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .map((part, at) => ({ kind: 'paragraph', id: at === 0 ? id : `${id}-${at + 1}`, text: part }));

const withWords = (block: Block, own: OwnWords[string] | undefined): readonly Block[] => {
  if (own === undefined) return [block];
  const kept =
    own.instead === undefined || !replaceable.has(block.kind)
      ? [block]
      : block.kind === 'heading'
        ? [{ ...block, text: own.instead.trim() }]
        : ownParagraphs(block.id, own.instead);
  return [
    ...ownParagraphs(`${block.id}-before`, own.before),
    ...kept,
    ...ownParagraphs(`${block.id}-after`, own.after),
  ];
};

/**
 * A document with the technician's own words: in place of a paragraph, a list or a heading, before it or after it.
 * Before and after go with every block; in place of a table, a drawing or a caution nothing goes.
 */
export const withOwnWords = (document: Document, words: OwnWords = {}): Document => {
  const own = new Map(Object.entries(words));
  return { ...document, blocks: document.blocks.flatMap((block) => withWords(block, own.get(block.id))) };
};

/** Own words for which no document has a place, each with places that are called nearly so. */
export const wordsWithoutPlace = (
  documents: readonly Document[],
  words: OwnWords = {},
): readonly { readonly name: string; readonly like: readonly string[] }[] => {
  const places = [...new Set(documents.flatMap(({ blocks }) => blocks.map(({ id }) => id)))];
  return Object.keys(words)
    .filter((name) => !places.includes(name))
    .map((name) => ({ name, like: likeNames(name, places) }));
};
