import sharp from 'sharp';
import type { Kept } from '../contract/attachments.ts';
import { keepPicture, type PictureToKeep } from './pictureFiles.ts';
import { pictureKindOf } from './pictureKind.ts';
import { pictureLimits, type Reencoded, reencode, thumbnailOf } from './reencode.ts';

/**
 * Keeps a picture that comes from the records themselves, by an export. Bytes in which there is nothing but the
 * parts that `reencode` writes stay as they are, so that their hash does; any others are written anew.
 */
export async function keepKept(pictures: string, bytes: Uint8Array): Promise<Kept> {
  const own = await asOwn(bytes);
  const picture = own ?? (await reencode(bytes));
  if (!picture.ok) return picture;
  const { mediaType, widthPx, heightPx } = picture;
  const hash = await keepPicture(pictures, picture);
  return { ok: true, hash, mediaType, bytes: picture.bytes.length, widthPx, heightPx };
}

type Own = PictureToKeep & Pick<Reencoded, 'widthPx' | 'heightPx'> & { readonly ok: true };

async function asOwn(bytes: Uint8Array): Promise<Own | undefined> {
  if (bytes.length > pictureLimits.bytes) return undefined;
  const sniffed = pictureKindOf(bytes);
  if (sniffed === undefined || 'refused' in sniffed) return undefined;
  const bare = sniffed.kind === 'jpeg' ? isBareJpeg(bytes) : sniffed.kind === 'png' && isBarePng(bytes);
  if (!bare) return undefined;
  try {
    const { width, height } = await sharp(bytes).metadata();
    if (Math.max(width, height) > pictureLimits.sidePx) return undefined;
    const mediaType = sniffed.kind === 'png' ? 'image/png' : 'image/jpeg';
    // The thumbnail is made from the decoded picture: what cannot be decoded fails here.
    const thumbnail = await thumbnailOf(bytes);
    return { ok: true, bytes, mediaType, thumbnail, widthPx: width, heightPx: height };
  } catch {
    return undefined;
  }
}

/** Tables, frame, restart interval, scan and end. Not 0xe0 to 0xef (application) and 0xfe (comment). */
const bareSegments: ReadonlySet<number> = new Set([0xc0, 0xc2, 0xc4, 0xda, 0xdb, 0xdd]);

/** Whether a JPEG has no segment that holds metadata, and nothing after its end. */
function isBareJpeg(bytes: Uint8Array): boolean {
  let at = 2;
  while (at + 4 <= bytes.length) {
    if (bytes[at] !== 0xff || !bareSegments.has(bytes[at + 1]!)) return false;
    const isScan = bytes[at + 1] === 0xda;
    at += 2 + bytes[at + 2]! * 256 + bytes[at + 3]!;
    if (isScan) at = endOfScan(bytes, at);
    if (bytes[at] === 0xff && bytes[at + 1] === 0xd9) return at + 2 === bytes.length;
  }
  return false;
}

/** The next marker after coded data, in which 0xff is followed by 0 or by a restart's number. */
function endOfScan(bytes: Uint8Array, from: number): number {
  for (let at = from; at + 1 < bytes.length; at++) {
    const after = bytes[at + 1]!;
    if (bytes[at] === 0xff && after !== 0 && !(after >= 0xd0 && after <= 0xd7)) return at;
  }
  return bytes.length;
}

const barePieces: ReadonlySet<string> = new Set(['IHDR', 'PLTE', 'tRNS', 'pHYs', 'bKGD', 'IDAT', 'IEND']);

/** Whether a PNG has no piece that holds metadata, and nothing after its end. */
function isBarePng(bytes: Uint8Array): boolean {
  const view = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length);
  let at = 8;
  while (at + 12 <= view.length) {
    const type = view.toString('latin1', at + 4, at + 8);
    if (!barePieces.has(type)) return false;
    at += 12 + view.readUInt32BE(at);
    if (type === 'IEND') return at === view.length;
  }
  return false;
}
