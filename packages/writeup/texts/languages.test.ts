import { holesOf } from '@fettle/engine/wording/language.ts';
import { writeUpLanguages } from '@fettle/job/schema/writeUp.ts';
import { describe, expect, it } from 'vitest';
import { english } from './english/english.ts';
import { languages } from './languages.ts';

describe('languages of the write-up', () => {
  it('are those that a job may ask for', () => {
    expect(Object.keys(languages)).toEqual([...writeUpLanguages]);
  });

  it.each(Object.values(languages))(
    '$itself has every sentence of English, with the same holes',
    (language) => {
      const shape = (sentences: typeof english.sentences) =>
        Object.fromEntries(
          Object.entries(sentences)
            .map(([code, template]) => [code, holesOf(template).toSorted()] as const)
            .toSorted(([one], [other]) => one.localeCompare(other)),
        );
      expect(shape(language.sentences)).toEqual(shape(english.sentences));
    },
  );

  it('leave no sentence empty', () => {
    for (const { sentences } of Object.values(languages))
      for (const [code, template] of Object.entries(sentences)) expect(template.trim(), code).not.toBe('');
  });
});
