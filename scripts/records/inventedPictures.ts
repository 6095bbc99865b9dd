import { crc32, deflateSync } from 'node:zlib';
import { chanceFrom } from './chance.ts';

const signature = Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a);

function chunk(kind: string, data: Uint8Array): Buffer {
  const body = Buffer.concat([Buffer.from(kind, 'latin1'), data]);
  const framed = Buffer.alloc(body.length + 8);
  framed.writeUInt32BE(data.length, 0);
  body.copy(framed, 4);
  framed.writeUInt32BE(crc32(body), body.length + 4);
  return framed;
}

const head = (widthPx: number, heightPx: number): Buffer => {
  const data = Buffer.alloc(13);
  data.writeUInt32BE(widthPx, 0);
  data.writeUInt32BE(heightPx, 4);
  data.set([8, 2, 0, 0, 0], 8);
  return chunk('IHDR', data);
};

/** A whole PNG whose pixels come from the seed: a picture of nothing, different for every seed. */
export function inventedPicture(seed: number, widthPx = 48, heightPx = 36): Buffer {
  const chance = chanceFrom(seed);
  const rows = Buffer.alloc(heightPx * (1 + 3 * widthPx));
  const [red, green, blue] = [chance.below(256), chance.below(256), chance.below(256)];
  for (let row = 0; row < heightPx; row++) {
    const start = row * (1 + 3 * widthPx) + 1;
    for (let column = 0; column < widthPx; column++) {
      const grain = chance.below(40);
      rows.set([red ^ (row & 0xff), green ^ (column & 0xff), (blue + grain) & 0xff], start + 3 * column);
    }
  }
  const pixels = chunk('IDAT', deflateSync(rows));
  return Buffer.concat([signature, head(widthPx, heightPx), pixels, chunk('IEND', new Uint8Array())]);
}

/** A PNG of a few hundred bytes that says it holds as many pixels as asked, all of one colour. */
export function pictureBomb(widthPx: number, heightPx: number): Buffer {
  const pixels = chunk('IDAT', deflateSync(Buffer.alloc(4096)));
  return Buffer.concat([signature, head(widthPx, heightPx), pixels, chunk('IEND', new Uint8Array())]);
}
