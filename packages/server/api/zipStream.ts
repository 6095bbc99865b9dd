import type { PlainWriter } from '@fettle/store/plainFiles/writer.ts';
import { Zip, ZipDeflate, ZipPassThrough } from 'fflate';

/**
 * More files than this have no place in a ZIP archive of the usual form: their number stands in 16 bits, of which
 * the highest means that it stands elsewhere, and a larger one would be written down as what is left of it.
 */
export const mostZipFiles = 65_534;

/**
 * Nor have more bytes: places in the archive are numbers of 32 bits, and what lies beyond would be written down under
 * a wrong one without a word. A little is left for the list of files.
 */
export const mostZipBytes = 4.2e9;

/** The archive came to more than its form can hold. */
export class TooLarge extends Error {}

/** The client left before the archive was whole. */
export class ClientLeft extends Error {}

/** Pictures are small already. */
const isPacked = (path: string): boolean => /\.(?:jpg|png)$/.test(path);

/** An archive that is sent while it is written, no faster than it is taken. */
export interface ZipStream {
  readonly stream: ReadableStream<Uint8Array>;
  readonly writer: PlainWriter;
  /** Writes the archive's list of files; nothing is put after it. */
  finish(): void;
  /** Breaks the stream off, so that nobody takes what came for the whole. */
  fail(error: unknown): void;
}

/** What an archive may hold; as much as its form can, where left out. */
interface ZipLimits {
  readonly mostBytes?: number;
  readonly mostFiles?: number;
}

export const zipStream = (
  at: Date,
  { mostBytes = mostZipBytes, mostFiles = mostZipFiles }: ZipLimits = {},
): ZipStream => {
  let written = 0;
  let files = 0;
  let goOn = (): void => undefined;
  let left = false;
  let controller: ReadableStreamDefaultController<Uint8Array> | undefined;
  const stream = new ReadableStream<Uint8Array>({
    start: (given) => {
      controller = given;
    },
    pull: () => goOn(),
    cancel: () => {
      left = true;
      goOn();
    },
  });
  const zip = new Zip((error, data, isLast) => {
    written += data.length;
    if (error !== null) controller?.error(error);
    else if (!left) controller?.enqueue(data);
    if (isLast && !left) controller?.close();
  });
  const taken = async (): Promise<void> => {
    while (!left && (controller?.desiredSize ?? 0) <= 0)
      await new Promise<void>((resolve) => {
        goOn = resolve;
      });
    if (left) throw new ClientLeft('The client left.');
  };
  return {
    stream,
    writer: {
      async put(path, bytes) {
        if (written + bytes.length > mostBytes)
          throw new TooLarge(`The archive would have more than ${mostBytes / 1e9} GB.`);
        if (files === mostFiles) throw new TooLarge(`The archive would have more than ${mostFiles} files.`);
        files++;
        const file = isPacked(path) ? new ZipPassThrough(path) : new ZipDeflate(path, { level: 6 });
        file.mtime = at;
        zip.add(file);
        file.push(bytes, true);
        await taken();
      },
    },
    finish: () => zip.end(),
    fail: (error) => {
      if (!left) controller?.error(error);
    },
  };
};
