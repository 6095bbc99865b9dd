import type { Finding } from '@fettle/engine/assessment/assessment.ts';
import { placeSaid } from '@fettle/engine/assessment/placeName.ts';
import { type Language, nameIn } from '@fettle/engine/wording/language.ts';
import { type Fact, type Said, said } from '@fettle/engine/wording/said.ts';
import { type Wording, word, wordFact } from '@fettle/engine/wording/word.ts';
import type { Block } from '../content/document.ts';
import type { AssessedState, ForetoldState, WriteUpSource } from '../source.ts';
import { typeset } from './typeset.ts';

/** What every part is written with: the source, the language, and figures in both systems of units. */
export interface Writer {
  readonly source: WriteUpSource;
  readonly language: Language;
  /** A sentence by its code. */
  say(code: string, facts?: Readonly<Record<string, Fact>>): string;
  /** One fact alone, as a cell of a table has it. */
  fact(fact: Fact): string;
  /** A name in the language. */
  name(english: string): string;
}

export const newWriter = (source: WriteUpSource, language: Language): Writer => {
  const wording: Wording = { language, units: 'both' };
  return {
    source,
    language,
    say: (code, facts) => typeset(word(said(code, facts), wording)),
    fact: (fact) => typeset(wordFact(fact, wording)),
    name: (english) => typeset(nameIn(language, english)),
  };
};

/** A day of the calendar, `2026-11-20`, as the language writes it. */
export const dayIn = ({ language }: Pick<Writer, 'language'>, day: string): string =>
  new Intl.DateTimeFormat(language.code === 'en' ? 'en-GB' : language.code, {
    dateStyle: 'long',
    timeZone: 'UTC',
  }).format(new Date(`${day}T00:00:00Z`));

/** The state after the work: as left, else as planned, else as it was found. */
export const lastState = ({ found, after }: WriteUpSource): ForetoldState => after ?? found;

/** Which of three wordings a sentence about the change takes. */
export const tense = ({ after }: WriteUpSource): 'found' | 'planned' | 'left' =>
  after === undefined ? 'found' : after.state === 'as-left' ? 'left' : 'planned';

export const heading = (writer: Writer, id: string, level: 1 | 2 | 3 = 2): Block => ({
  kind: 'heading',
  id: `heading-${id}`,
  level,
  text: writer.say(`heading.${id}`),
});

/** A paragraph of sentences; none where there is nothing to say. */
export const paragraph = (
  id: string,
  sentences: readonly string[],
  tone?: 'lead' | 'soft',
): readonly Block[] => {
  const text = sentences.filter((sentence) => sentence !== '').join(' ');
  if (text === '') return [];
  return [{ kind: 'paragraph', id, text, ...(tone === undefined ? {} : { tone }) }];
};

/** Somebody's own words as a sentence that ends. */
export const ended = (words: string): string => {
  const text = words.trim();
  return /[.!?…:)]$/u.test(text) ? text : `${text}.`;
};

/** Several things that are said, in a row, as one fact. */
export const sayings = (all: readonly Said[]): Fact => ({ all });

/** A place for people, in the language. */
export const placeIn = (writer: Writer, { model, assessment }: AssessedState, place: string): string => {
  const test = model.tests.find(({ id }) => id === place);
  if (test === undefined) return writer.fact(placeSaid(model, assessment, place));
  return writer.say('place.test', { kind: said(`test.${test.kind}`), state: said(`state.${test.state}`) });
};

/** The faults, worst first: what is wrong beyond a note. */
export const faultsOf = ({ findings }: AssessedState): readonly Finding[] =>
  findings.filter(({ severity }) => severity === 'grave' || severity === 'marked' || severity === 'slight');
