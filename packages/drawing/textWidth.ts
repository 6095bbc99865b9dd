/** Advance widths of DejaVu Sans in thousandths of the letter height, by groups of signs; from its metrics. */
const groups: readonly (readonly [signs: RegExp, thousandths: number])[] = [
  [/[ijl'|]/u, 290],
  [/[ ftrI.,:;!()[\]/\-"\u00a0]/u, 400],
  [/[szJck]/u, 570],
  [/[mwMW%@—]/u, 960],
  [/[A-Z&+=<>~]/u, 760],
  [/[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Emoji_Presentation}]/u, 1050],
];

const others = 640;

/** Width that a text takes on a drawing, mm, rather too much than too little; `size` is its letter height, mm. */
export function textWidth(
  content: string,
  style: { readonly size: number; readonly bold?: boolean },
): number {
  const thousandths = Array.from(content).reduce((sum, sign) => {
    if (/\p{M}/u.test(sign)) return sum;
    return sum + (groups.find(([signs]) => signs.test(sign))?.[1] ?? others);
  }, 0);
  return (thousandths / 1000) * style.size * (style.bold ? 1.12 : 1);
}
