import { media } from '@fettle/engine/catalogue/media.ts';
import { families, rulesOf } from '@fettle/engine/families/families.ts';
import { alterationKinds } from '@fettle/engine/planning/alterations.ts';
import { type Language, nameIn } from '@fettle/engine/wording/language.ts';
import { fieldFacts, inner } from '@fettle/job/schema/fields.ts';
import { jobSchema } from '@fettle/job/schema/job.ts';
import { listFields } from '@fettle/job/schema/walk.ts';
import { describe, expect, it } from 'vitest';
import { demoNames, demoSource, otherKinds } from '../testing/sources.ts';
import { type DocumentName, documentMakers, writeUpDocument } from '../writeUp.ts';
import { english } from './english/english.ts';
import { languages } from './languages.ts';

const others = Object.values(languages).filter(({ code }) => code !== 'en');

/** Every text of plain data; of markup the words between its tags. */
const textsIn = (value: unknown): readonly string[] => {
  if (typeof value === 'string')
    return value.startsWith('<svg') ? [...value.matchAll(/>([^<]+)</g)].map(([, text]) => text!) : [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(textsIn) : [];
};

/** Stretches of words between the holes of a language's sentences, and its names, that are long enough to be told by. */
const stretches = (of: Language): ReadonlySet<string> =>
  new Set(
    Object.values(of.sentences)
      .flatMap((template) => template.split(/\{\w+\}/))
      .map((stretch) => stretch.trim())
      .filter((stretch) => stretch.length > 12),
  );

/** A language that notes the names for which it has no word. */
const noting = (of: Language): { readonly language: Language; readonly missed: Set<string> } => {
  const missed = new Set<string>();
  const names = new Proxy(of.names, {
    get: (target, name) => {
      const own = typeof name === 'string' ? (target[name] ?? target[name.replace(/\d+/g, '#')]) : undefined;
      if (own === undefined) missed.add(String(name));
      return typeof name === 'string' ? target[name] : undefined;
    },
  });
  return { language: { ...of, names }, missed };
};

describe.each(others)('a write-up in $itself', (language) => {
  const own = [...stretches(language), ...Object.values(language.names)];
  const foreign = [
    ...stretches(english),
    ...Object.keys(language.names).filter((name) => name.length > 12),
  ].filter((stretch) => !own.some((text) => text.includes(stretch)));

  it.each([...demoNames, ...otherKinds])('%s: holds no sentence and no name in English', (name) => {
    const { language: listening, missed } = noting(language);
    for (const state of ['found', 'planned', 'left'] as const) {
      const source = demoSource(name, state);
      const { job, filter, owner, writeUp } = source.document;
      // What people wrote themselves stays as they wrote it.
      const written = textsIn([job, filter.name, filter.claims, owner, writeUp, source.document.quote]);
      for (const document of Object.keys(documentMakers) as DocumentName[]) {
        const made = writeUpDocument(source, { name: document, theme: 'print', language: listening });
        const texts = written
          .filter((text) => text.length > 2)
          .reduce((rest, text) => rest.replaceAll(text, ''), textsIn(made).join('\n'));
        expect(
          foreign.filter((stretch) => texts.includes(stretch)),
          `${document}, ${state}`,
        ).toEqual([]);
        expect(made.language).toBe(language.code);
      }
    }
    expect([...missed]).toEqual([]);
  });

  it('has no sentence that is left as it is in English', () => {
    const wordy = (template: string): boolean => /\p{L}{4}.*\p{L}{4}/u.test(template.replace(/\{\w+\}/g, ''));
    const left = Object.entries(language.sentences).filter(
      ([code, template]) => wordy(template) && template === english.sentences[code],
    );
    expect(left).toEqual([]);
  });

  it('has a word for every medium, family, place, measurement, caution and alteration', () => {
    const all = [
      ...Object.values(media).flatMap(({ name, stage, cautions }) => [name, stage, ...cautions]),
      ...families.flatMap((family) => [
        family.name,
        ...rulesOf(family),
        ...family.measurements.flatMap(({ label, assumed }) => [
          label,
          ...(assumed ? [assumed.because] : []),
        ]),
      ]),
      ...Object.values(alterationKinds).map(({ says }) => says),
    ];
    const without = all.filter((name) => nameIn(language, name) === name);
    expect(without).toEqual([]);
  });

  it('has a word for every field of filter, tank and money that may be assumed', () => {
    const asked = listFields(jobSchema)
      .filter(({ path }) => /^(?:filter\.pump|filter\.hoses|tank|money)\.[\w.]+$/.test(path))
      .flatMap(({ schema, path }) => {
        const says = fieldFacts.get(inner(schema))?.says;
        return says === undefined ||
          /fish|stock|fittings|waterChange|altitude|currency|curve|media|parts/.test(path)
          ? []
          : [says];
      });
    expect(asked.length).toBeGreaterThan(15);
    expect(asked.filter((says) => says !== 'pH' && nameIn(language, says) === says)).toEqual([]);
  });
});
