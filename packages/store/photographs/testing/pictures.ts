import { crc32, deflateSync } from 'node:zlib';
import sharp, { type Exif, type Sharp } from 'sharp';

/** Degrees and minutes that are nobody's place: in the open sea. */
export const atSea = { latitudeDeg: 10.5, longitudeDeg: -30.25 };

/** Metadata as a telephone writes it, in every block that a JPEG has for it. */
const cameraExif: Exif = {
  IFD0: { Make: 'Invented Camera', Artist: 'Nobody At All', ImageDescription: 'secret description' },
  IFD2: { DateTimeOriginal: '2026:11:02 14:03:22', OffsetTimeOriginal: '+01:00' },
  IFD3: {
    GPSLatitudeRef: 'N',
    GPSLatitude: '10/1 30/1 0/1',
    GPSLongitudeRef: 'W',
    GPSLongitude: '30/1 15/1 0/1',
  },
};

const cameraXmp =
  '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">' +
  '<rdf:Description xmlns:exif="http://ns.adobe.com/exif/1.0/" exif:GPSLatitude="10,30.0N"/></rdf:RDF></x:xmpmeta>';

/** An opaque picture of a colour, with a pattern by which pictures differ. */
export function plainPicture(widthPx: number, heightPx: number, seed = 1): Sharp {
  const data = Buffer.alloc(widthPx * heightPx * 3);
  for (let index = 0; index < data.length; index++) data[index] = (index * seed + (index >> 8) * 7) & 0xff;
  return sharp(data, { raw: { width: widthPx, height: heightPx, channels: 3 } });
}

/** A photograph as a telephone hands it over: place, moment, maker and a colour profile in it. */
export function telephonePicture(widthPx = 320, heightPx = 240): Promise<Buffer> {
  return plainPicture(widthPx, heightPx)
    .withExif(cameraExif)
    .withXmp(cameraXmp)
    .withIccProfile('p3')
    .jpeg()
    .toBuffer();
}

/** The bytes of a PNG, from its size and its lines before compression. */
export function pngOf(widthPx: number, heightPx: number, lines: Uint8Array): Buffer {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(widthPx, 0);
  header.writeUInt32BE(heightPx, 4);
  // Eight bits, grey.
  header.set([8, 0, 0, 0, 0], 8);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    signature,
    pngChunk('IHDR', header),
    pngChunk('IDAT', deflateSync(lines)),
    pngChunk('IEND', Buffer.alloc(0)),
  ]);
}

/** One piece of a PNG. */
export function pngChunk(type: string, data: Uint8Array): Buffer {
  const named = Buffer.concat([Buffer.from(type, 'latin1'), data]);
  const around = Buffer.alloc(8);
  around.writeUInt32BE(data.length, 0);
  around.writeUInt32BE(crc32(named), 4);
  return Buffer.concat([around.subarray(0, 4), named, around.subarray(4)]);
}
