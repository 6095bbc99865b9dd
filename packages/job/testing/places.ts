import type { FieldPath } from '../fieldPath.ts';
import { at, isFields } from '../schema/walk.ts';

/** Every place of a document that a listed path (`packing.*[].depth`) stands for. */
export function placesOf(document: unknown, listed: string): readonly FieldPath[] {
  const steps = listed.replaceAll('[]', '.[]').split('.');
  let found: readonly FieldPath[] = [[]];
  for (const step of steps) {
    found = found.flatMap((path) => {
      const inside = path.reduce<unknown>((value, each) => at(value, each), document);
      if (step === '[]') return Array.isArray(inside) ? inside.map((_entry, index) => [...path, index]) : [];
      if (!isFields(inside)) return [];
      if (step === '*') return Object.keys(inside).map((key) => [...path, key]);
      return Object.hasOwn(inside, step) ? [[...path, step]] : [];
    });
  }
  return found;
}

/** A copy of a document with another value at a place; `undefined` takes the field away. */
export function changed(document: unknown, path: FieldPath, value: unknown): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  if (Array.isArray(document)) {
    return document.map((entry: unknown, index) => (index === step ? changed(entry, rest, value) : entry));
  }
  if (!isFields(document)) return document;
  const next = rest.length === 0 ? value : changed(at(document, step), rest, value);
  const others = Object.entries(document).filter(([key]) => key !== String(step));
  return Object.fromEntries(next === undefined ? others : [...others, [String(step), next]]);
}

/** A copy of a document with a field under another name. */
export function renamed(document: unknown, path: FieldPath, name: string): unknown {
  const value = path.reduce<unknown>((inside, each) => at(inside, each), document);
  return changed(changed(document, path, undefined), [...path.slice(0, -1), name], value);
}

/** JSON text of a document in which the field at a place stands twice. */
export function textWithRepeat(value: unknown, path: FieldPath): string {
  const [step, ...rest] = path;
  if (Array.isArray(value)) {
    return `[${value.map((entry: unknown, index) => textWithRepeat(entry, index === step ? rest : [])).join(', ')}]`;
  }
  if (!isFields(value)) return JSON.stringify(value);
  const fields = Object.entries(value).flatMap(([key, inside]) => {
    const here = key === String(step);
    const text = `${JSON.stringify(key)}: ${textWithRepeat(inside, here ? rest : [])}`;
    return here && rest.length === 0 ? [text, text] : [text];
  });
  return `{${fields.join(', ')}}`;
}
