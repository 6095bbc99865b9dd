/** Texts that are cheap to keep and dear to make, those used longest ago dropped first. */
export interface TextCache {
  get(key: string): string | undefined;
  set(key: string, text: string): void;
}

/** @param mostCharacters of all texts together */
export const textCache = (mostCharacters: number): TextCache => {
  const kept = new Map<string, string>();
  let characters = 0;
  const drop = (key: string): void => {
    characters -= kept.get(key)?.length ?? 0;
    kept.delete(key);
  };
  return {
    get(key) {
      const text = kept.get(key);
      if (text === undefined) return undefined;
      // A map keeps the order of insertion: laid in anew, it is the last to be dropped.
      kept.delete(key);
      kept.set(key, text);
      return text;
    },
    set(key, text) {
      drop(key);
      if (text.length > mostCharacters) return;
      kept.set(key, text);
      characters += text.length;
      for (const oldest of kept.keys()) {
        if (characters <= mostCharacters) break;
        drop(oldest);
      }
    },
  };
};
