import { media } from '@fettle/engine/catalogue/media.ts';
import { families, rulesOf } from '@fettle/engine/families/families.ts';
import { alterationKinds, partPrices } from '@fettle/engine/planning/alterations.ts';
import { handlingKinds } from '@fettle/engine/planning/handling.ts';
import { nameIn } from '@fettle/engine/wording/language.ts';
import { newJob } from '@fettle/job/newJob.ts';
import { readJob } from '@fettle/job/read.ts';
import { describe, expect, it } from 'vitest';
import { sourceOf } from '../testing/sources.ts';
import { type DocumentName, documentMakers, writeUpDocument } from '../writeUp.ts';
import { languages } from './languages.ts';

const all = Object.values(languages);

/** Every way of reaching into a filter has its own sentence where hands do something else with it. */
const byHandling = [
  'step.photograph',
  'step.open',
  'step.close',
  'step.start',
  'step.check.surface',
  'care.step.open',
  'care.step.start',
  'care.step.look',
  'plan-step.open',
];

/** The job that a family begins with, as its write-up's source. */
const sourceFor = (family: string) => {
  const made = newJob(family);
  if (!made.ok) throw new Error(made.problem.says);
  const read = readJob(new TextEncoder().encode(made.text));
  if (!read.ok) throw new Error(`the new job of ${family} does not read`);
  return sourceOf(read.document);
};

describe.each(all)('in $itself', (language) => {
  it('every way of reaching into a filter has its sentences', () => {
    const missing = byHandling.flatMap((code) =>
      handlingKinds
        .map((kind) => `${code}.${kind}`)
        .filter((wanted) => language.sentences[wanted] === undefined),
    );
    expect(missing, `write these sentences in ${language.itself}: ${missing.join(', ')}`).toEqual([]);
  });

  it('every alteration has its step, and every part that one needs its name', () => {
    const wanted = [
      ...Object.keys(alterationKinds).map((id) => `step.alter.${id}`),
      ...Object.keys(partPrices).map((part) => `part.${part}`),
    ];
    const missing = wanted.filter((code) => language.sentences[code] === undefined);
    expect(missing, `write these sentences in ${language.itself}: ${missing.join(', ')}`).toEqual([]);
  });

  it('no rule, reason, medium or caution has a metric size without its US one', () => {
    const all = [
      ...families.flatMap((family) => [
        ...rulesOf(family),
        ...family.measurements.flatMap(({ assumed }) => (assumed ? [assumed.because] : [])),
      ]),
      ...Object.values(media).flatMap(({ name, cautions }) => [name, ...cautions]),
    ].map((english) => nameIn(language, english));
    const unpaired = all.filter((text) => /\d (?:mm|cm|m|L|L\/h)(?![\p{L}/]| \()/u.test(text));
    expect(unpaired, `write both sizes in ${language.itself}: ${unpaired.join('; ')}`).toEqual([]);
  });

  it.each(families.map(({ id }) => id))('every document of a %s can be said', (family) => {
    const source = sourceFor(family);
    const names = new Set<string>();
    const listening = {
      ...language,
      names: new Proxy(language.names, {
        get: (own, name) => {
          if (typeof name !== 'string') return undefined;
          if (own[name] === undefined && own[name.replace(/\d+/g, '#')] === undefined) names.add(name);
          return own[name];
        },
      }),
    };
    for (const document of Object.keys(documentMakers) as DocumentName[])
      writeUpDocument(source, { name: document, theme: 'print', language: listening });
    const missing =
      language.code === 'en' ? [] : [...names].filter((name) => name !== source.document.filter.name);
    expect(missing, `${family} has no word in ${language.itself} for: ${missing.join('; ')}`).toEqual([]);
  });
});
