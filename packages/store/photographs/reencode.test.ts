import { createHash } from 'node:crypto';
import exifReader from 'exif-reader';
import fc from 'fast-check';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { readCameraNotes } from './cameraNotes.ts';
import { pictureLimits, type Reencoded, reencode } from './reencode.ts';
import { atSea, plainPicture, pngChunk, pngOf, telephonePicture } from './testing/pictures.ts';

async function taken(bytes: Uint8Array): Promise<Reencoded> {
  const result = await reencode(bytes);
  if (!result.ok) throw new Error(`${result.code}: ${result.says}`);
  return result;
}

async function refusal(bytes: Uint8Array) {
  const result = await reencode(bytes);
  if (result.ok) throw new Error('the picture was taken');
  return result;
}

/** The names of the segments of a JPEG up to its first scan. */
function segmentsOf(jpeg: Uint8Array): readonly string[] {
  const found: string[] = [];
  for (let at = 2; jpeg[at + 1] !== 0xda; at += 2 + jpeg[at + 2]! * 256 + jpeg[at + 3]!) {
    found.push(jpeg[at + 1]!.toString(16));
  }
  return found;
}

describe('pictures that are taken', () => {
  test.each(['jpeg', 'png', 'webp', 'avif', 'gif', 'tiff'] as const)(
    '%s is written anew as JPEG',
    async (kind) => {
      const result = await taken(await plainPicture(64, 48).toFormat(kind).toBuffer());
      expect(result).toMatchObject({ mediaType: 'image/jpeg', widthPx: 64, heightPx: 48 });
      expect((await sharp(result.bytes).metadata()).format).toBe('jpeg');
    },
  );

  test('what can be seen through stays so, as PNG', async () => {
    const glass = {
      width: 20,
      height: 10,
      channels: 4,
      background: { r: 9, g: 9, b: 200, alpha: 0.4 },
    } as const;
    const result = await taken(await sharp({ create: glass }).webp().toBuffer());
    expect(result.mediaType).toBe('image/png');
    expect((await sharp(result.bytes).metadata()).hasAlpha).toBe(true);
    expect((await sharp(result.thumbnail).metadata()).format).toBe('jpeg');
  });

  test('an alpha channel that hides nothing is dropped', async () => {
    const result = await taken(await plainPicture(30, 20).ensureAlpha().png().toBuffer());
    expect(result.mediaType).toBe('image/jpeg');
  });

  test('a picture that lies on its side is turned upright', async () => {
    const lying = await plainPicture(60, 20).withMetadata({ orientation: 6 }).jpeg().toBuffer();
    expect(await taken(lying)).toMatchObject({ widthPx: 20, heightPx: 60 });
  });

  test('large ones are made smaller, small ones stay; the thumbnail is small', async () => {
    const wide = await taken(await plainPicture(5000, 100).jpeg().toBuffer());
    expect(wide).toMatchObject({ widthPx: pictureLimits.sidePx, heightPx: 82 });
    expect((await sharp(wide.thumbnail).metadata()).width).toBe(pictureLimits.thumbnailSidePx);
  });

  test('of an animation the first frame is kept', async () => {
    const frames = await sharp(
      [await plainPicture(16, 16, 3).png().toBuffer(), await plainPicture(16, 16, 90).png().toBuffer()],
      {
        join: { animated: true },
      },
    )
      .gif()
      .toBuffer();
    expect((await sharp(frames).metadata()).pages).toBe(2);
    expect(await taken(frames)).toMatchObject({ widthPx: 16, heightPx: 16 });
  });

  test('sixteen bits, grey and print colours become sRGB of eight bits', async () => {
    for (const odd of [
      plainPicture(20, 20).toColourspace('rgb16').png(),
      plainPicture(20, 20).toColourspace('b-w').jpeg(),
      plainPicture(20, 20).toColourspace('cmyk').jpeg(),
    ]) {
      const { bytes } = await taken(await odd.toBuffer());
      expect(await sharp(bytes).metadata()).toMatchObject({
        space: expect.stringMatching(/^(?:srgb|b-w)$/),
        depth: 'uchar',
      });
    }
  });

  test('equal pictures give equal bytes', async () => {
    const picture = await telephonePicture();
    const hashes = (await Promise.all([1, 2, 3].map(() => taken(picture)))).map(({ bytes }) =>
      createHash('sha256').update(bytes).digest('hex'),
    );
    expect(new Set(hashes).size).toBe(1);
  });
});

describe('what is taken off', () => {
  test('nothing of place, moment, maker or profile is left in the bytes', async () => {
    const picture = await telephonePicture();
    const { bytes, thumbnail } = await taken(picture);
    for (const trace of [
      'Exif',
      'Invented',
      'Nobody',
      'secret',
      '2026:11',
      'adobe',
      'GPS',
      'ICC_PROFILE',
      'rdf',
    ]) {
      expect(picture.includes(trace), `${trace} before`).toBe(true);
      expect(Buffer.from(bytes).includes(trace), `${trace} in the picture`).toBe(false);
      expect(Buffer.from(thumbnail).includes(trace), `${trace} in the thumbnail`).toBe(false);
    }
    // Tables, frame and nothing of the kind APP1 to APP15 or comment.
    expect(segmentsOf(bytes).filter((name) => !/^(?:db|c4|c0|c2|dd|e0)$/.test(name))).toEqual([]);
  });

  test('texts in a PNG and what follows its end go too', async () => {
    const glass = {
      width: 20,
      height: 10,
      channels: 4,
      background: { r: 9, g: 9, b: 200, alpha: 0.4 },
    } as const;
    const png = await sharp({ create: glass }).png().toBuffer();
    const told = Buffer.concat([
      png.subarray(0, 33),
      pngChunk('tEXt', Buffer.from('Comment\0written by Nobody')),
      png.subarray(33),
      Buffer.from('<script>after the end</script>'),
    ]);
    const { bytes, mediaType } = await taken(told);
    expect(mediaType).toBe('image/png');
    for (const trace of ['Nobody', 'tEXt', 'script']) expect(Buffer.from(bytes).includes(trace)).toBe(false);
  });

  test('moment and place are told beside the picture, as an independent reader has them', async () => {
    const { notes } = await taken(await telephonePicture());
    expect(notes).toEqual({ takenAt: '2026-11-02T14:03:22+01:00', place: atSea });
    const { exif } = await sharp(await telephonePicture()).metadata();
    const other = exifReader(exif ?? Buffer.alloc(0));
    expect(other.Photo?.DateTimeOriginal?.toISOString()).toBe('2026-11-02T14:03:22.000Z');
    expect(other.GPSInfo?.GPSLatitude).toEqual([10, 30, 0]);
    expect(other.GPSInfo?.GPSLongitudeRef).toBe('W');
  });

  test('damaged camera data is no reason to fail, and gives nothing that is out of range', async () => {
    const { exif = Buffer.alloc(0) } = await sharp(await telephonePicture()).metadata();
    const hits = fc.array(fc.tuple(fc.nat(exif.length - 1), fc.nat(255)), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(hits, fc.nat(exif.length), (changes, length) => {
        const block = Buffer.from(exif);
        for (const [at, value] of changes) block[at] = value;
        const { takenAt, place } = readCameraNotes(block.subarray(0, length));
        if (takenAt !== undefined)
          expect(takenAt).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(?:[+-]\d\d:\d\d)?$/);
        if (place !== undefined) {
          expect(Math.abs(place.latitudeDeg)).toBeLessThanOrEqual(90);
          expect(Math.abs(place.longitudeDeg)).toBeLessThanOrEqual(180);
        }
      }),
      { numRuns: 2000 },
    );
  });
});

describe('what is refused', () => {
  test.each([
    ['an SVG drawing', '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><script/></svg>'],
    [
      'an SVG drawing',
      '<?xml version="1.0"?>\n<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/passwd">]>\n<svg/>',
    ],
    ['a PDF document', '%PDF-1.7\n'],
    ['an HEIC picture', '\0\0\0\x18ftypheic\0\0\0\0mif1heic'],
    ['an HEIC picture', '\0\0\0\x18ftypmif1\0\0\0\0mif1heic'],
    ['a film', '\0\0\0\x18ftypisom\0\0\0\0isomavc1'],
    ['a BMP picture', 'BM\x36\0\0\0\0\0\0\0'],
  ])('%s, by its content', async (name, content) => {
    const { code, says } = await refusal(Buffer.from(content, 'latin1'));
    expect(code).toBe('kind-not-taken');
    expect(says).toContain(name);
  });

  test('HEIC, with what to do about it', async () => {
    const { says } = await refusal(Buffer.from('\0\0\0\x18ftypheic\0\0\0\0', 'latin1'));
    expect(says).toContain('can be set to take JPEG');
  });

  test.each([
    ['nothing', ''],
    ['text', 'hello'],
    ['a table of numbers, which the library could read', '1,2,3\n4,5,6\n'],
    ['a page', '<!doctype html><img src=x onerror=alert(1)>'],
    ['the mere beginning of a JPEG', '\xff\xd8\xff\xe0'],
    ['the mere beginning of a PNG', '\x89PNG\r\n\x1a\n'],
    ['the mere beginning of a WebP', 'RIFF\x10\0\0\0WEBPVP8 '],
    ['the mere beginning of an AVIF', '\0\0\0\x18ftypavif\0\0\0\0'],
    ['the mere beginning of a TIFF', 'II*\0\x08\0\0\0'],
  ])('%s', async (_name, content) => {
    expect((await refusal(Buffer.from(content, 'latin1'))).code).toBe('not-a-picture');
  });

  test('a JPEG cut short, wherever', async () => {
    const whole = await plainPicture(300, 200).jpeg().toBuffer();
    for (const part of [0.3, 0.6, 0.9]) {
      expect((await refusal(whole.subarray(0, whole.length * part))).code).toBe('not-a-picture');
    }
  });

  test('more bytes than are taken, before any is looked at', async () => {
    expect((await refusal(new Uint8Array(pictureLimits.bytes + 1))).code).toBe('too-large');
  });

  test('a few bytes that say they are 60,000 by 60,000', async () => {
    const bomb = pngOf(60_000, 60_000, new Uint8Array(1000));
    expect(bomb.length).toBeLessThan(200);
    expect(await refusal(bomb)).toMatchObject({
      code: 'too-many-pixels',
      says: 'The picture has 60000 × 60000 pixels.',
      allowed: 'at most 100 million pixels',
    });
  });

  test('a whole picture of more pixels than are taken, in a hundredth of its size', async () => {
    const bomb = pngOf(10_100, 10_000, new Uint8Array(10_101 * 10_000));
    expect(bomb.length).toBeLessThan(1e6);
    expect((await refusal(bomb)).code).toBe('too-many-pixels');
  });

  test('an animation on a huge canvas', async () => {
    const gif = await plainPicture(16, 16).gif().toBuffer();
    const frame = gif.indexOf(0x2c, 13 + 3 * 2 ** ((gif[10]! & 7) + 1));
    for (const at of [6, 8, frame + 5, frame + 7]) gif.writeUInt16LE(65_000, at);
    expect((await refusal(gif)).code).toBe('too-many-pixels');
  });

  test('a page dressed as a picture: the picture is kept, the page is not', async () => {
    const picture = await plainPicture(40, 40).jpeg().toBuffer();
    const page = Buffer.from('<html><script>alert(1)</script></html>');
    const comment = Buffer.concat([Buffer.from([0xff, 0xfe, 0, page.length + 2]), page]);
    const dressed = Buffer.concat([picture.subarray(0, 2), comment, picture.subarray(2), page]);
    const { bytes } = await taken(dressed);
    expect(Buffer.from(bytes).includes('script')).toBe(false);
  });

  test('no mutation of a picture brings the program down', async () => {
    const whole = [
      await telephonePicture(48, 32),
      await plainPicture(48, 32).webp().toBuffer(),
      await plainPicture(48, 32).gif().toBuffer(),
    ];
    const hits = fc.array(fc.tuple(fc.nat(), fc.nat(255)), { minLength: 1, maxLength: 12 });
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...whole), hits, async (picture, changes) => {
        const mutant = Buffer.from(picture);
        for (const [at, value] of changes) mutant[at % mutant.length] = value;
        const result = await reencode(mutant);
        if (result.ok) expect((await sharp(result.bytes).metadata()).width).toBe(result.widthPx);
        else expect(result.says).toMatch(/^The .*\.$/);
      }),
      { numRuns: 150 },
    );
  });
});
