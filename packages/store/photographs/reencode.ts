import sharp, { type ResizeOptions, type Sharp } from 'sharp';
import type { Attachment, PictureProblemCode } from '../contract/attachments.ts';
import { mostPictureBytes } from '../contract/attachments.ts';
import { type CameraNotes, readCameraNotes } from './cameraNotes.ts';
import { pictureKindOf } from './pictureKind.ts';

// Of all the readers of the library only those of the kinds that are taken can be reached, from memory alone:
// drawings, documents and tables of numbers are no pictures here, whatever they pretend to be.
sharp.block({ operation: ['VipsForeignLoad'] });
sharp.unblock({
  operation: ['Jpeg', 'Png', 'Webp', 'Heif', 'Nsgif', 'Tiff'].map((name) => `VipsForeignLoad${name}Buffer`),
});
// Nothing is worth keeping from one picture for the next, and one thread gives the same bytes on every machine.
sharp.cache(false);
sharp.concurrency(1);

/** What a picture may be when it comes. */
export const pictureLimits = {
  bytes: mostPictureBytes,
  pixels: 100_000_000,
  /** AVIF is decoded as a whole, in about 18 bytes a pixel (measured). */
  avifPixels: 50_000_000,
  /** Longest side of what is kept; larger is made smaller. */
  sidePx: 4096,
  thumbnailSidePx: 480,
  printSidePx: 1000,
  seconds: 30,
} as const;

const takenKinds = 'JPEG, PNG, WebP, AVIF, GIF or TIFF';

/** A picture written anew, with nothing in it but what is seen. */
export interface Reencoded {
  readonly bytes: Uint8Array;
  readonly thumbnail: Uint8Array;
  readonly mediaType: Attachment['mediaType'];
  readonly widthPx: number;
  readonly heightPx: number;
  readonly notes: CameraNotes;
}

/** Why a picture is not taken. */
export interface PictureProblem {
  readonly code: PictureProblemCode;
  readonly says: string;
  readonly allowed: string;
}

export type Reencoding = ({ readonly ok: true } & Reencoded) | ({ readonly ok: false } & PictureProblem);

/**
 * Decodes a picture and writes it anew: turned upright, in sRGB, at most `pictureLimits.sidePx` a side, without any
 * metadata; JPEG where it is opaque, else PNG; of several frames the first. The same input gives the same bytes.
 *
 * One picture is worked on at a time, so that many at once take no more memory than one.
 */
export async function reencode(bytes: Uint8Array): Promise<Reencoding> {
  if (bytes.length > pictureLimits.bytes) return tooLarge(bytes.length);
  const sniffed = pictureKindOf(bytes);
  if (sniffed === undefined) return notAPicture('The file is not a picture that can be read');
  if ('refused' in sniffed) return kindNotTaken(sniffed);
  const most = sniffed.kind === 'avif' ? pictureLimits.avifPixels : pictureLimits.pixels;
  return oneAtATime(() => readAndWrite(bytes, most));
}

/** The small picture for lists, from one that was kept. It follows from the whole picture alone. */
export async function thumbnailOf(kept: Uint8Array): Promise<Uint8Array> {
  return opened(kept)
    .resize(fitting(pictureLimits.thumbnailSidePx))
    .flatten({ background: 'white' })
    .jpeg({ quality: 80 })
    .toBuffer();
}

/** The picture as large as half the width of a sheet prints it, from one that was kept. */
export async function forPrint(kept: Uint8Array): Promise<Uint8Array> {
  return opened(kept)
    .resize(fitting(pictureLimits.printSidePx))
    .flatten({ background: 'white' })
    .jpeg({ quality: 82 })
    .toBuffer();
}

let last: Promise<unknown> = Promise.resolve();

function oneAtATime<Result>(work: () => Promise<Result>): Promise<Result> {
  const next = last.then(work, work);
  last = next.catch(() => undefined);
  return next;
}

async function readAndWrite(bytes: Uint8Array, mostPixels: number): Promise<Reencoding> {
  try {
    // The header alone: no pixel is decoded before they are counted.
    const { width, height, exif } = await sharp(bytes, { limitInputPixels: false }).metadata();
    if (width * height > mostPixels) return tooManyPixels(mostPixels, { width, height });
    const whole = await written(bytes);
    return {
      ok: true,
      bytes: whole.data,
      thumbnail: await thumbnailOf(whole.data),
      mediaType: whole.info.format === 'png' ? 'image/png' : 'image/jpeg',
      widthPx: whole.info.width,
      heightPx: whole.info.height,
      notes: exif === undefined ? {} : readCameraNotes(exif),
    };
  } catch (error) {
    return problemOf(error, mostPixels);
  }
}

function opened(bytes: Uint8Array): Sharp {
  return sharp(bytes, {
    failOn: 'error',
    limitInputPixels: pictureLimits.pixels,
    limitInputChannels: 5,
    pages: 1,
  }).timeout({
    seconds: pictureLimits.seconds,
  });
}

async function written(bytes: Uint8Array) {
  const upright = opened(bytes).autoOrient().resize(fitting(pictureLimits.sidePx)).toColourspace('srgb');
  const { hasAlpha } = await sharp(bytes, { limitInputPixels: false }).metadata();
  if (hasAlpha !== true) return asJpeg(upright);
  const lossless = await upright.png({ compressionLevel: 9 }).toBuffer({ resolveWithObject: true });
  const { isOpaque } = await opened(lossless.data).stats();
  return isOpaque ? asJpeg(opened(lossless.data).removeAlpha()) : lossless;
}

function asJpeg(picture: Sharp) {
  return picture.jpeg({ quality: 88 }).toBuffer({ resolveWithObject: true });
}

function fitting(sidePx: number): ResizeOptions {
  return { width: sidePx, height: sidePx, fit: 'inside', withoutEnlargement: true };
}

function problemOf(error: unknown, mostPixels: number): Reencoding {
  const reason = error instanceof Error ? error.message : String(error);
  if (/pixel limit/i.test(reason)) return tooManyPixels(mostPixels);
  if (/timeout/i.test(reason)) {
    return notAPicture(`The picture takes longer than ${pictureLimits.seconds} s to decode`);
  }
  return notAPicture('The picture is damaged or cut short and cannot be decoded');
}

function notAPicture(says: string): Reencoding {
  return { ok: false, code: 'not-a-picture', says: `${says}.`, allowed: `a whole picture, ${takenKinds}` };
}

function kindNotTaken({
  refused,
  advice,
}: {
  readonly refused: string;
  readonly advice?: string;
}): Reencoding {
  const says = `The file is ${refused}, which is not taken${advice === undefined ? '' : `; ${advice}`}.`;
  return { ok: false, code: 'kind-not-taken', says, allowed: takenKinds };
}

function tooLarge(bytes: number): Reencoding {
  const megabytes = (bytes / 1e6).toFixed(1);
  const most = `${pictureLimits.bytes / 1e6} MB`;
  return {
    ok: false,
    code: 'too-large',
    says: `The picture has ${megabytes} MB.`,
    allowed: `at most ${most}`,
  };
}

function tooManyPixels(most: number, has?: { readonly width: number; readonly height: number }): Reencoding {
  const pixels = has === undefined ? 'too many pixels' : `${has.width} × ${has.height} pixels`;
  const allowed = `at most ${most / 1e6} million pixels`;
  return { ok: false, code: 'too-many-pixels', says: `The picture has ${pixels}.`, allowed };
}
