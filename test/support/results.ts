import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { inProject } from './program.ts';

const published = JSON.parse(readFileSync(inProject('packages/workflows/results.schema.json'), 'utf8'));
const validator = new Ajv2020({ allErrors: true, strict: true }).addSchema(published, 'results');

/** What an independent validator has against a result, by the published schema; nothing where it fits. */
export function breachesOf(name: string, result: unknown): readonly string[] {
  const validate = validator.getSchema(`results#/$defs/${name}`);
  if (validate === undefined) throw new Error(`the published schema has no ${name}`);
  return validate(result)
    ? []
    : (validate.errors ?? []).map((each) => `${each.instancePath} ${each.message}`);
}

/** A figure of a result and where it stands. */
export interface PlacedFigure {
  readonly path: string;
  readonly value: number;
  readonly unit: string;
  readonly keys: readonly string[];
}

/** Every `{ value, unit }` of a result. */
export function figuresOf(result: unknown, path = ''): readonly PlacedFigure[] {
  if (typeof result !== 'object' || result === null) return [];
  const inside = Object.entries(result).flatMap(([key, value]) => figuresOf(value, `${path}/${key}`));
  const { value, unit } = result as { value?: unknown; unit?: unknown };
  return typeof value === 'number' && typeof unit === 'string'
    ? [{ path, value, unit, keys: Object.keys(result) }, ...inside]
    : inside;
}

/** Numbers of a result that are neither a figure's value nor among those named, by path. */
export function bareNumbersOf(result: unknown, path = ''): readonly string[] {
  if (typeof result === 'number') return [path];
  if (typeof result !== 'object' || result === null) return [];
  const isFigure = 'value' in result && 'unit' in result;
  return Object.entries(result).flatMap(([key, value]) =>
    isFigure && ['value', 'low', 'high'].includes(key) ? [] : bareNumbersOf(value, `${path}/${key}`),
  );
}
