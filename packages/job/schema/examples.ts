import * as z from 'zod';
import { fieldFacts, inner } from './fields.ts';

/** How a value of a schema may be written, from the examples of its fields; `undefined` where none has any. */
export function exampleOf(schema: z.core.$ZodType): string | undefined {
  const bare = inner(schema);
  if (bare instanceof z.ZodArray) {
    const entry = exampleOf(bare.element);
    return entry === undefined ? undefined : entry.startsWith('{') ? `- ${entry}` : `[${entry}]`;
  }
  if (bare instanceof z.ZodObject) return groupExample(bare);
  const stated = fieldFacts.get(bare)?.example;
  if (stated !== undefined) return stated;
  if (bare instanceof z.ZodLiteral) return String(bare.value);
  if (bare instanceof z.ZodUnion) {
    return bare.options.map((option) => exampleOf(option)).find((each) => each !== undefined);
  }
  return undefined;
}

/** All that is needed, and the first of what may be left out. */
function groupExample(group: z.ZodObject): string | undefined {
  const fields = Object.entries(group.shape).flatMap(([name, schema]) => {
    const example = exampleOf(schema);
    if (example === undefined) return [];
    const inline = example.startsWith('- ') ? `[${example.slice(2)}]` : example;
    return [{ written: `${name}: ${inline}`, needed: !(schema instanceof z.ZodOptional) }];
  });
  const optional = fields.find(({ needed }) => !needed);
  const shown = fields.filter((field) => field.needed || field === optional);
  return shown.length === 0 ? undefined : `{ ${shown.map(({ written }) => written).join(', ')} }`;
}
