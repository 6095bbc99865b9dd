/** Longer texts are searched to here only, characters. */
const MOST = 200_000;

const collect = (value: unknown, into: string[]): void => {
  if (typeof value === 'string') into.push(value);
  else if (Array.isArray(value)) for (const entry of value) collect(entry, into);
  else if (typeof value === 'object' && value !== null)
    for (const [name, entry] of Object.entries(value)) {
      into.push(name);
      collect(entry, into);
    }
};

/** Everything in a document that one might look for: its number, every text and every short name. */
export const wordsOf = (document: unknown, number: number): string => {
  const found: string[] = [String(number)];
  collect(document, found);
  return found.join('\n').slice(0, MOST);
};
