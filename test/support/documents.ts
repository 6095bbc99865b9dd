import { readFileSync } from 'node:fs';
import { parseText } from '@fettle/job/text/parse.ts';
import { demo } from './program.ts';

/** A demo's document as plain data. */
export function documentOf(name: string): unknown {
  return parseText(readFileSync(demo(name))).value;
}

type Step = string | number;

/** A path as `packing.basket-1[0].depth`, in steps. */
export function stepsOf(path: string): readonly Step[] {
  return [...path.matchAll(/([^.[\]]+)|\[(\d+)\]/g)].map(([, name, index]) => name ?? Number(index));
}

type Entries = readonly (readonly [name: string, value: unknown])[];

/** Entries of one group of fields, in its place. */
function edited(
  value: unknown,
  [step, ...rest]: readonly Step[],
  edit: (entries: Entries) => Entries,
): string {
  if (Array.isArray(value)) {
    const entries: Entries = value.map((each, index) => [String(index), each]);
    const parts = (step === undefined || rest.length === 0 ? edit(entries) : entries).map(([name, each]) =>
      Number(name) === step && rest.length > 0 ? edited(each, rest, edit) : written(each),
    );
    return `[${parts.join(', ')}]`;
  }
  if (typeof value !== 'object' || value === null) return written(value);
  const entries = Object.entries(value);
  const parts = (rest.length === 0 ? edit(entries) : entries).map(
    ([name, each]) =>
      `${JSON.stringify(name)}: ${name === step && rest.length > 0 ? edited(each, rest, edit) : written(each)}`,
  );
  return `{ ${parts.join(', ')} }`;
}

/** YAML that stands as it is in place of a value. */
class Raw {
  readonly text: string;
  constructor(text: string) {
    this.text = text;
  }
}

const written = (value: unknown): string => (value instanceof Raw ? value.text : JSON.stringify(value));

/** A document's text with the field at a path holding this YAML. */
export function withValue(document: unknown, path: string, yaml: string): string {
  const steps = stepsOf(path);
  const last = String(steps.at(-1));
  return edited(document, steps, (entries) => {
    if (!entries.some(([name]) => name === last)) return [...entries, [last, new Raw(yaml)]];
    return entries.map(([name, value]) => [name, name === last ? new Raw(yaml) : value]);
  });
}

export function without(document: unknown, path: string): string {
  const steps = stepsOf(path);
  return edited(document, steps, (entries) => entries.filter(([name]) => name !== String(steps.at(-1))));
}

export function renamed(document: unknown, path: string, to: string): string {
  const steps = stepsOf(path);
  const last = String(steps.at(-1));
  return edited(document, steps, (entries) =>
    entries.map(([name, value]) => [name === last ? to : name, value]),
  );
}

export function twice(document: unknown, path: string): string {
  const steps = stepsOf(path);
  const last = String(steps.at(-1));
  return edited(document, steps, (entries) => [...entries, ...entries.filter(([name]) => name === last)]);
}

/** The same document with the fields of every group in another order, repeatable by its seed. */
export function shuffled(value: unknown, seed: number): unknown {
  if (Array.isArray(value)) return value.map((each, index) => shuffled(each, seed + index));
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).map(([name, each], index) => ({
    name,
    value: shuffled(each, seed + 31 * index),
    rank: Math.imul(seed + 1, 2654435761) ^ Math.imul(index + 7 * seed, 40503 * (seed + 3)),
  }));
  entries.sort((one, other) => (one.rank % 1009) - (other.rank % 1009));
  return Object.fromEntries(entries.map((entry) => [entry.name, entry.value]));
}
