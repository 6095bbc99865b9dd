/** Signs that a text drawing is made of. */
export interface Signs {
  readonly down: string;
  readonly line: string;
  readonly corners: {
    readonly topLeft: string;
    readonly topRight: string;
    readonly lowLeft: string;
    readonly lowRight: string;
  };
  readonly level: string;
  readonly leaves: string;
  readonly joins: string;
}

export const boxSigns: Signs = {
  down: '▼',
  line: '│',
  corners: { topLeft: '┌', topRight: '┐', lowLeft: '└', lowRight: '┘' },
  level: '─',
  leaves: '├╌╌▶',
  joins: '├◀╌╌',
};

export const asciiSigns: Signs = {
  down: 'v',
  line: '|',
  corners: { topLeft: '+', topRight: '+', lowLeft: '+', lowRight: '+' },
  level: '-',
  leaves: '|-->',
  joins: '|<--',
};

/** Text without control or direction signs, with plain spaces; in ASCII alone where asked for. */
export function plainText(content: string, ascii: boolean): string {
  const plain = content.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, ' ').replace(/\p{Zs}/gu, ' ');
  if (!ascii) return plain;
  const unaccented = plain.normalize('NFKD').replace(/\p{M}/gu, '');
  return unaccented.replace(/[‘’]/g, "'").replace(/[^ -~]/gu, '?');
}

/** Columns that a text takes in a terminal: two for wide signs, none for combining marks. */
export function columnsOf(content: string): number {
  return Array.from(content).reduce((columns, sign) => columns + columnsOfSign(sign), 0);
}

const wide =
  /\p{Script=Han}|\p{Script=Hiragana}|\p{Script=Katakana}|\p{Script=Hangul}|\p{Emoji_Presentation}|[\u3000-\u303f\uff01-\uff60]/u;

function columnsOfSign(sign: string): number {
  if (/\p{M}/u.test(sign)) return 0;
  return wide.test(sign) ? 2 : 1;
}

/** Text followed by as many fillers as bring it to a number of columns. */
export function filled(content: string, columns: number, filler = ' '): string {
  return content + filler.repeat(Math.max(0, columns - columnsOf(content)));
}
