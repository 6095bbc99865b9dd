import { readdirSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { extname, join, relative, sep } from 'node:path';
import type { Context } from 'hono';

const mediaTypes: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.jpg': 'image/jpeg',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json',
  '.map': 'application/json',
  '.png': 'image/png',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
};

/** A name that changes with what is in the file: what is under it never changes. */
const hashedName = /[-.][A-Za-z0-9_-]{8,}\.[a-z0-9]+$/;

/** Files of a folder by their address, as they were when the server started. */
export interface StaticFiles {
  has(address: string): boolean;
  answer(context: Context, address: string): Promise<Response>;
}

/** Plain files below a folder; links, and names that begin with a dot, are passed over. */
const plainFiles = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    if (entry.name.startsWith('.')) return [];
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return plainFiles(path);
    return entry.isFile() ? [path] : [];
  });

/**
 * Serves the files of a folder. Only what was found in it is ever opened: no address is turned into a path.
 */
export const staticFiles = (folder: string): StaticFiles => {
  const found = new Map(
    plainFiles(folder).map((path) => [`/${relative(folder, path).split(sep).join('/')}`, path]),
  );
  return {
    has: (address) => found.has(address),
    async answer(context, address) {
      const path = found.get(address);
      if (path === undefined) return context.notFound();
      const extension = extname(path).toLowerCase();
      const type = mediaTypes[extension] ?? 'application/octet-stream';
      const lasting = extension !== '.html' && hashedName.test(address);
      return context.body(new Uint8Array(await readFile(path)), 200, {
        'Content-Type': type,
        'Cache-Control': lasting ? 'public, max-age=31536000, immutable' : 'no-cache',
      });
    },
  };
};
