import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A new folder that stays from test to test, until it is removed. */
export const keptFolder = (): { readonly path: string; remove(): void } => {
  const path = mkdtempSync(join(tmpdir(), 'fettle-data-'));
  return { path, remove: () => rmSync(path, { recursive: true, force: true }) };
};
