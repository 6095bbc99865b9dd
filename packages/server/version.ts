import { existsSync, readFileSync } from 'node:fs';
import { z } from 'zod';

const packageSchema = z.object({ name: z.literal('fettle'), version: z.string() });

/** The program's version, from its package beside the bundle or in the repository. */
export const programVersion = (): string => {
  for (const place of ['./package.json', '../cli/package.json']) {
    const file = new URL(place, import.meta.url);
    const read = existsSync(file)
      ? packageSchema.safeParse(JSON.parse(readFileSync(file, 'utf8')))
      : undefined;
    if (read?.success) return read.data.version;
  }
  return 'unknown';
};
