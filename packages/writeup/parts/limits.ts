import { familyById } from '@fettle/engine/families/families.ts';
import type { BenchTest } from '@fettle/engine/model/model.ts';
import type { Block } from '../content/document.ts';
import { madeAlterations } from './changes.ts';
import { measureNextSaid } from './doubt.ts';
import { heading, lastState, type Writer } from './writer.ts';

const kinds: readonly BenchTest['kind'][] = ['timed-volume', 'power', 'shutoff-head'];

/** What these figures cannot say. */
export const limitsPart = (writer: Writer): readonly Block[] => {
  const { source } = writer;
  const { model } = lastState(source);
  const tested = new Set((source.document.tests ?? []).map(({ kind }) => kind));
  const missing = [...kinds, 'dye', 'ammonia-challenge'].filter((kind) => !tested.has(kind as never));
  const assumed = model.givens.filter(({ assumedBecause }) => assumedBecause !== undefined).length;
  const next = measureNextSaid(writer);
  const items = [
    writer.say('limits.one-unit'),
    ...(missing.length === 0
      ? []
      : [
          writer.say('limits.not-measured', {
            what: { all: missing.map((kind) => writer.say(`test.${kind}`)) },
          }),
        ]),
    ...(next === undefined ? [] : [writer.say('limits.measure-next', { how: next })]),
    ...(assumed > 0 ? [writer.say('limits.assumed', { count: assumed })] : []),
    writer.say('limits.model'),
    writer.say('limits.advice'),
  ];
  return [heading(writer, 'limits'), { kind: 'list', id: 'limits', items }];
};

/** What must never be done to a filter of this kind, and in the alterations that are made to it. */
export const forbiddenPart = (writer: Writer): readonly Block[] => {
  const { forbidden = [], forbiddenIn = {} } = familyById(writer.source.document.filter.family) ?? {};
  const altered = madeAlterations(writer.source).flatMap(({ id }) => forbiddenIn[id] ?? []);
  const items = [...altered, ...forbidden].map((says) => writer.name(says));
  return items.length === 0 ? [] : [heading(writer, 'never', 3), { kind: 'list', id: 'never', items }];
};
