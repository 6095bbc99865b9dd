import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { engineEnglish } from '@fettle/engine/wording/english/english.ts';
import type { Language } from '@fettle/engine/wording/language.ts';
import { type Fact, said } from '@fettle/engine/wording/said.ts';
import { asWritten, word } from '@fettle/engine/wording/word.ts';
import { printLength } from './lengths.ts';

/** In what a drawing speaks. */
export interface Speech {
  /** `both`: metric with inches behind. */
  readonly units: System | 'both';
  /** English where absent. */
  readonly language?: Language;
}

/** A drawing's own words, by their code. */
export const spoken = (
  { language = engineEnglish }: Pick<Speech, 'language'>,
  code: string,
  facts: Readonly<Record<string, Fact>> = {},
): string => word(said(code, facts), { language, units: 'metric' });

/** A length as a drawing has it, in each of the systems that are wanted. */
export const spokenLengths = (
  lengthM: number,
  { units, language = engineEnglish }: Speech,
): readonly string[] =>
  (units === 'both' ? (['metric', 'us'] as const) : [units]).map((each) =>
    asWritten(printLength({ lengthM, units: each }), language),
  );

/** The same in a row: `172 mm`, or `172 mm (6.77 in)`. */
export const spokenLength = (lengthM: number, speech: Speech): string => {
  const [first = '', second] = spokenLengths(lengthM, speech);
  return second === undefined ? first : `${first} (${second})`;
};
