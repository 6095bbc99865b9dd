/**
 * Letters that Unicode does not take apart into a plain one and a mark, so that no index takes their mark off, with
 * what people type who have no key for them.
 */
const plain: Readonly<Record<string, string>> = {
  ø: 'o',
  ł: 'l',
  đ: 'd',
  ð: 'd',
  ħ: 'h',
  ŧ: 't',
  ı: 'i',
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  þ: 'th',
};

const letters = new RegExp(`[${Object.keys(plain).join('')}ẞ]`, 'giu');
const word = /[\p{L}\p{M}\p{N}]+/gu;

/** A word with plain letters in the place of those of another alphabet's making; capitals are lost with them. */
const plainWord = (written: string): string =>
  written.replaceAll(letters, (letter) => plain[letter.toLowerCase()] ?? letter);

/** The words of a text that are typed otherwise where a key is missing, so typed, each once: `Łódź` as `lódź`, whose other accents the index takes off. */
export const plainlyTyped = (text: string): readonly string[] => {
  // Most texts have none, and are not taken apart.
  if (text.search(letters) < 0) return [];
  const typed = (text.match(word) ?? []).map((written) => [written, plainWord(written)] as const);
  return [...new Set(typed.flatMap(([written, plainly]) => (plainly === written ? [] : [plainly])))];
};
