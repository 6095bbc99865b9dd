/** A repeatable row of whole numbers from 0 to below `below`, by Marsaglia's 32-bit xorshift. */
function numbersFrom(seed: number): (below: number) => number {
  let state = seed | 0 || 1;
  return (below) => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) % Math.max(1, below);
  };
}

const pieces = [
  '\t',
  '\n',
  ' ',
  ':',
  ': ',
  '- ',
  '? ',
  '{',
  '}',
  '[',
  ']',
  ',',
  '"',
  "'",
  '#',
  '&a ',
  '*a',
  '!x ',
  '| ',
  '> ',
  '%',
  '@',
  '`',
  '---\n',
  '...\n',
  '<<: ',
  '__proto__: ',
  'null',
  '~',
  '.nan',
  '.inf',
  '-0',
  '1e999',
  '0x',
  '±',
  ' ±',
  '×/÷ ',
  '°',
  'µ',
  '½',
  '\u00a0',
  '\u2028',
  '\ud83d\ude00',
  '\u0000',
  '\ufeff',
  'constructor',
  'toString',
  'NaN',
  '9'.repeat(40),
  'é'.repeat(30),
];

/** A text with one to eight small accidents: pieces put in, taken out, doubled, moved or cut off. */
export function mutated(text: string, seed: number): string {
  const next = numbersFrom(seed);
  let changed = text;
  for (let count = next(8) + 1; count > 0; count--) changed = accident(changed, next);
  return changed;
}

function accident(text: string, next: (below: number) => number): string {
  const from = next(text.length + 1);
  const to = Math.min(text.length, from + next(30));
  const before = text.slice(0, from);
  const inside = text.slice(from, to);
  const after = text.slice(to);
  switch (next(6)) {
    case 0:
      return before + after;
    case 1:
      return before + inside + inside + after;
    case 2:
      return before + after.slice(0, 40) + inside + after.slice(40);
    case 3:
      return before;
    default:
      return before + (pieces[next(pieces.length)] ?? '') + inside + after;
  }
}
