/** What a camera wrote about a picture that may be kept. */
export interface CameraNotes {
  /** ISO 8601 by the camera's own clock, with its offset from UTC only where the camera wrote one. */
  readonly takenAt?: string;
  /** Degrees, north and east positive. */
  readonly place?: { readonly latitudeDeg: number; readonly longitudeDeg: number };
}

/** Tags of Exif 2.32. */
const tag = {
  photo: 0x8769,
  place: 0x8825,
  takenAt: 0x9003,
  offset: 0x9011,
  latitudeRef: 1,
  latitude: 2,
  longitudeRef: 3,
  longitude: 4,
} as const;

/** A directory has a few dozen entries; more is not a camera's. */
const mostEntries = 512;

interface Entry {
  /** Of Exif: 2 text, 4 whole number of four bytes, 5 pair of these as a fraction. */
  readonly type: number;
  readonly count: number;
  /** Where the value begins. */
  readonly at: number;
}

type Directory = ReadonlyMap<number, Entry>;

/**
 * Reads moment and place from a block of Exif data. It looks at these few tags alone, each of bounded length, so
 * that a block made to take up memory or time does neither; what cannot be read is absent.
 *
 * @param exif begins with `Exif\0\0` or with the mark of its byte order
 */
export function readCameraNotes(exif: Uint8Array): CameraNotes {
  const lead = Buffer.from(exif.subarray(0, 6)).toString('latin1') === 'Exif\0\0' ? 6 : 0;
  const reader = readerOf(exif.subarray(lead));
  if (reader === undefined) return {};
  const first = reader.directory(reader.number(4, 4));
  const photo = reader.directory(pointer(reader, first.get(tag.photo)));
  const takenAt = momentOf(reader.text(photo.get(tag.takenAt)), reader.text(photo.get(tag.offset)));
  const place = placeOf(reader, reader.directory(pointer(reader, first.get(tag.place))));
  return { ...(takenAt === undefined ? {} : { takenAt }), ...(place === undefined ? {} : { place }) };
}

interface Reader {
  /** A whole number of 2 or 4 bytes; undefined beyond the end. */
  number(at: number, bytes: 2 | 4): number | undefined;
  text(entry: Entry | undefined): string | undefined;
  directory(at: number | undefined): Directory;
}

function readerOf(block: Uint8Array): Reader | undefined {
  const view = new DataView(block.buffer, block.byteOffset, block.byteLength);
  const order = Buffer.from(block.subarray(0, 2)).toString('latin1');
  if (order !== 'II' && order !== 'MM') return undefined;
  const little = order === 'II';
  const number = (at: number, bytes: 2 | 4): number | undefined => {
    if (at + bytes > view.byteLength) return undefined;
    return bytes === 2 ? view.getUint16(at, little) : view.getUint32(at, little);
  };
  if (number(2, 2) !== 42) return undefined;
  return {
    number,
    text: (entry) => {
      if (entry?.type !== 2 || entry.count > 64) return undefined;
      const bytes = block.subarray(entry.at, entry.at + entry.count);
      return Buffer.from(bytes).toString('latin1').replace(/\0.*$/s, '');
    },
    directory: (at) => (at === undefined ? new Map() : readDirectory(number, at)),
  };
}

function readDirectory(number: Reader['number'], at: number): Directory {
  const found = new Map<number, Entry>();
  const entries = Math.min(number(at, 2) ?? 0, mostEntries);
  for (let index = 0; index < entries; index++) {
    const start = at + 2 + 12 * index;
    const [id, type, count] = [number(start, 2), number(start + 2, 2), number(start + 4, 4)];
    if (id === undefined || type === undefined || count === undefined) break;
    const bytes = ({ 2: 1, 4: 4, 5: 8 }[type] ?? 1) * count;
    const valueAt = bytes <= 4 ? start + 8 : number(start + 8, 4);
    if (valueAt !== undefined) found.set(id, { type, count, at: valueAt });
  }
  return found;
}

function pointer(reader: Reader, entry: Entry | undefined): number | undefined {
  return entry === undefined ? undefined : reader.number(entry.at, 4);
}

function momentOf(written: string | undefined, offset: string | undefined): string | undefined {
  const parts = /^(\d{4}):(\d\d):(\d\d) (\d\d:\d\d:\d\d)$/.exec(written?.trim() ?? '');
  if (parts === null) return undefined;
  const moment = `${parts[1]}-${parts[2]}-${parts[3]}T${parts[4]}`;
  const asUtc = new Date(`${moment}Z`);
  if (Number.isNaN(asUtc.getTime()) || asUtc.toISOString().slice(0, 19) !== moment) return undefined;
  return moment + (/^[+-](?:0\d|1[0-4]):[0-5]\d$/.test(offset ?? '') ? offset : '');
}

function placeOf(reader: Reader, directory: Directory): CameraNotes['place'] {
  const latitudeDeg = degreesOf(reader, directory.get(tag.latitude));
  const longitudeDeg = degreesOf(reader, directory.get(tag.longitude));
  const north = { N: 1, S: -1 }[reader.text(directory.get(tag.latitudeRef)) ?? ''];
  const east = { E: 1, W: -1 }[reader.text(directory.get(tag.longitudeRef)) ?? ''];
  if (latitudeDeg === undefined || longitudeDeg === undefined || north === undefined || east === undefined)
    return undefined;
  if (latitudeDeg > 90 || longitudeDeg > 180) return undefined;
  return { latitudeDeg: north * latitudeDeg, longitudeDeg: east * longitudeDeg };
}

/** Degrees, minutes and seconds as three fractions, to a millionth of a degree (11 cm). */
function degreesOf(reader: Reader, entry: Entry | undefined): number | undefined {
  if (entry?.type !== 5 || entry.count !== 3) return undefined;
  const parts = [0, 1, 2].map((index) => {
    const [above, below] = [
      reader.number(entry.at + 8 * index, 4),
      reader.number(entry.at + 8 * index + 4, 4),
    ];
    return above === undefined || below === undefined ? Number.NaN : above === 0 ? 0 : above / below;
  });
  const degrees = parts[0]! + parts[1]! / 60 + parts[2]! / 3600;
  return Number.isFinite(degrees) ? Math.round(degrees * 1e6) / 1e6 : undefined;
}
