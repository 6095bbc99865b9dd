import { hashOf } from '../files/durable.ts';
import { type ExportManifest, exportEdition, manifestName } from './layout.ts';

/** Where an export goes: a folder, an archive, anything that takes files one after the other. */
export interface PlainWriter {
  /** @param path from the export's top, with slashes */
  put(path: string, bytes: Uint8Array): Promise<void>;
}

/** Puts files and notes what they are. */
export interface NotingWriter {
  text(path: string, text: string): Promise<void>;
  bytes(path: string, bytes: Uint8Array): Promise<void>;
  /** Writes the list of all files; nothing may be put after it. */
  close(about: Pick<ExportManifest, 'counts' | 'missing'>): Promise<void>;
}

/** A writer that notes size and hash of each file that goes through it. */
export function notingWriter(to: PlainWriter): NotingWriter {
  const files: Record<string, { readonly bytes: number; readonly sha256: string }> = {};
  const put = async (path: string, bytes: Uint8Array): Promise<void> => {
    files[path] = { bytes: bytes.length, sha256: hashOf(bytes) };
    await to.put(path, bytes);
  };
  return {
    bytes: put,
    text: (path, text) => put(path, Buffer.from(text)),
    close: async (about) => {
      const manifest: ExportManifest = { fettleExport: exportEdition, ...about, files };
      await to.put(manifestName, Buffer.from(`${JSON.stringify(manifest, null, 1)}\n`));
    },
  };
}
