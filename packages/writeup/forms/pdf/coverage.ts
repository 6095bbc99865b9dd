/** Segments of a table of format 4: of letters in the first plane, each with its glyph by a difference or by a list. */
const firstPlane = (font: DataView, at: number, add: (letter: number) => void): void => {
  const size = font.getUint16(at + 6);
  for (let segment = 0; segment < size; segment += 2) {
    const end = font.getUint16(at + 14 + segment);
    const start = font.getUint16(at + 16 + size + segment);
    const difference = font.getUint16(at + 16 + 2 * size + segment);
    const listAt = at + 16 + 3 * size + segment;
    const list = font.getUint16(listAt);
    for (let letter = start; letter <= end && letter < 0xffff; letter += 1) {
      const listed = list === 0 ? letter : font.getUint16(listAt + list + 2 * (letter - start));
      if (listed !== 0 && ((listed + difference) & 0xffff) !== 0) add(letter);
    }
  }
};

/** Groups of a table of format 12: of letters in every plane. */
const everyPlane = (font: DataView, at: number, add: (letter: number) => void): void => {
  const groups = font.getUint32(at + 12);
  for (let group = 0; group < groups; group += 1) {
    const first = font.getUint32(at + 16 + 12 * group);
    const last = font.getUint32(at + 20 + 12 * group);
    const glyph = font.getUint32(at + 24 + 12 * group);
    for (let letter = first; letter <= last; letter += 1) if (glyph + letter - first !== 0) add(letter);
  }
};

const readers: Readonly<Record<number, typeof firstPlane>> = { 4: firstPlane, 12: everyPlane };

/** Where a table of a font begins, by its name of four letters. */
const tableAt = (font: DataView, name: string): number | undefined => {
  const wanted = [...name].reduce((code, letter) => code * 256 + letter.charCodeAt(0), 0);
  const records = Array.from({ length: font.getUint16(4) }, (_, at) => 12 + 16 * at);
  const record = records.find((at) => font.getUint32(at) === wanted);
  return record === undefined ? undefined : font.getUint32(record + 8);
};

/**
 * Letters that some fonts have, as code points, by their character maps of formats 4 and 12 (ISO/IEC 14496-22, cmap).
 *
 * @param fonts bytes of OpenType files
 */
export const lettersOf = (fonts: readonly Uint8Array[]): ReadonlySet<number> => {
  const letters = new Set<number>();
  for (const bytes of fonts) {
    const font = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
    const map = tableAt(font, 'cmap');
    if (map === undefined) continue;
    for (let table = 0; table < font.getUint16(map + 2); table += 1) {
      const at = map + font.getUint32(map + 8 + 8 * table);
      readers[font.getUint16(at)]?.(font, at, (letter) => letters.add(letter));
    }
  }
  return letters;
};

/** What stands for a letter that no font has. */
const STAND_IN = '\ufffd';

/**
 * A text with a stand-in for every letter that no font has: what can be read aloud by a reader of PDFs must have a shape.
 * Signs that have none by nature are left out where no font knows them.
 */
export const shownBy =
  (letters: ReadonlySet<number>) =>
  (text: string): string =>
    text.replace(/[^\n\t]/gu, (letter) => {
      if (letters.has(letter.codePointAt(0) ?? 0)) return letter;
      return /\p{Default_Ignorable_Code_Point}|\p{Z}/u.test(letter) ? letter.replace(/\P{Z}/u, '') : STAND_IN;
    });
