/** The kinds of picture that are taken, by what the bytes say. */
export type PictureKind = 'jpeg' | 'png' | 'webp' | 'avif' | 'gif' | 'tiff';

/** What a file's first bytes say that it is: a kind that is taken, one that is known and not taken, or neither. */
export type Sniffed =
  | { readonly kind: PictureKind }
  | { readonly refused: string; readonly advice?: string }
  | undefined;

const heicAdvice =
  'most telephones can be set to take JPEG ("most compatible"), and send JPEG when the picture is shared';

interface Signature {
  readonly begins: RegExp;
  readonly is: NonNullable<Sniffed>;
}

// The bytes are read as Latin-1, one character a byte.
const signatures: readonly Signature[] = [
  { begins: /^\xff\xd8\xff/, is: { kind: 'jpeg' } },
  { begins: /^\x89PNG\r\n/, is: { kind: 'png' } },
  { begins: /^RIFF.{4}WEBP/s, is: { kind: 'webp' } },
  { begins: /^GIF8[79]a/, is: { kind: 'gif' } },
  { begins: /^(?:II\*\0|MM\0\*)/, is: { kind: 'tiff' } },
  { begins: /^.{4}ftyp(?:avif|avis)/s, is: { kind: 'avif' } },
  { begins: /^.{4}ftyp(?:mif1|msf1|miaf).{0,64}?avi[fs]/s, is: { kind: 'avif' } },
  {
    begins: /^.{4}ftyp(?:hei[cxms]|hev[cms]|mif1|msf1)/s,
    is: { refused: 'an HEIC picture', advice: heicAdvice },
  },
  { begins: /^.{4}ftyp/s, is: { refused: 'a film' } },
  { begins: /^(?:.E\xdf\xa3|RIFF.{4}AVI )/s, is: { refused: 'a film' } },
  { begins: /^%PDF/, is: { refused: 'a PDF document' } },
  { begins: /^BM/, is: { refused: 'a BMP picture' } },
  { begins: /^(?:\xff\n|\0{3}.JXL )/s, is: { refused: 'a JPEG XL picture' } },
  { begins: /^\0{3}.jP {2}/s, is: { refused: 'a JPEG 2000 picture' } },
  {
    begins: /^(?:\xef\xbb\xbf)?\s*<(?:[?!].*<)?svg/is,
    is: { refused: 'an SVG drawing' },
  },
];

/**
 * Tells the kind of a picture by its content. What it is called and what it was declared as counts for nothing.
 *
 * @param bytes the whole file; its first 512 bytes are looked at
 */
export function pictureKindOf(bytes: Uint8Array): Sniffed {
  const start = Buffer.from(bytes.buffer, bytes.byteOffset, Math.min(bytes.length, 512)).toString('latin1');
  return signatures.find(({ begins }) => begins.test(start))?.is;
}
