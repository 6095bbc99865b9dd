/** How wide a line may be, and what measures it: columns in a terminal, millimetres on a sheet. */
export interface Fold {
  readonly most: number;
  readonly measure: (content: string) => number;
}

/** Lines of at most the given width, broken at spaces where there are any; none for an empty text. */
export function folded(content: string, fold: Fold): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of content.split(/[ \n\t]+/).flatMap((long) => pieces(long, fold))) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (fold.measure(longer) <= fold.most) line = longer;
    else {
      if (line !== '') lines.push(line);
      line = word;
    }
  }
  return line === '' ? lines : [...lines, line];
}

function pieces(word: string, { most, measure }: Fold): readonly string[] {
  const parts: string[] = [''];
  for (const sign of word) {
    const last = parts.at(-1) ?? '';
    if (last !== '' && measure(last + sign) > most) parts.push(sign);
    else parts[parts.length - 1] = last + sign;
  }
  return parts;
}
