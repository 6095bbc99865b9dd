import type { Given, Model } from '@fettle/engine/model/model.ts';
import { readPath } from '../fieldPath.ts';
import { readDocument } from '../read.ts';
import { fullJob } from './fullJob.ts';
import { changed } from './places.ts';

/** A document with some of its fields changed, by path; `undefined` takes a field away. */
export function withChanges(document: unknown, changes: Readonly<Record<string, unknown>>): unknown {
  return Object.entries(changes).reduce<unknown>(
    (before, [path, value]) => changed(before, readPath(path), value),
    document,
  );
}

/** Reads the full job with some of its fields changed. */
export function readWith(changes: Readonly<Record<string, unknown>>, document: unknown = fullJob) {
  return readDocument(withChanges(document, changes));
}

/** A canister of which only the necessary is stated; invented. */
export const leastCanister = {
  fettle: 1,
  tank: { volume: '100 L' },
  filter: {
    family: 'basket-stack-canister',
    measurements: { baskets: 2, basketWidth: '100 mm', basketDepth: '100 mm', basketHeight: '50 mm' },
    pump: { ratedFlow: '600 L/h' },
  },
} as const;

/** The model of the full job with some of its fields changed; the document must read clean. */
export function modelWith(changes: Readonly<Record<string, unknown>>, document: unknown = fullJob): Model {
  const reading = readWith(changes, document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.model;
}

/** The notes on the full job with some of its fields changed, as `code path`. */
export function notesWith(
  changes: Readonly<Record<string, unknown>>,
  document: unknown = fullJob,
): readonly string[] {
  const reading = readWith(changes, document);
  return reading.ok ? reading.notes.map(({ code, path }) => `${code} ${path}`) : [];
}

/** What the model lists about one field of the document. */
export function givenOf(model: Model, path: string): Given | undefined {
  return model.givens.find((given) => given.path === path);
}

export const perDay = 1 / 86_400;
export const litresPerHour = 1 / 3_600_000;
