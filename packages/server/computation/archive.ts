import { zipSync } from 'fflate';
import type { MadeFile } from './tasks.ts';

/** Files in one archive; the same files give the same bytes, on whatever day. */
export const archiveOf = (files: readonly MadeFile[]): Uint8Array => {
  const bytes = new TextEncoder();
  return zipSync(
    Object.fromEntries(
      files.map(({ path, content }) => [
        path,
        typeof content === 'string' ? bytes.encode(content) : new Uint8Array(content),
      ]),
    ),
    { mtime: '1980-01-01' },
  );
};
