/** How a language writes what is not a sentence. */
export interface Marks {
  readonly decimal: '.' | ',';
  /** Between the ends of a range. */
  readonly to: string;
  /** Before the last of several. */
  readonly and: string;
  /** Of a time that is longer than what was looked at. */
  readonly beyond: string;
  /** Times in prose: one of them, several of them. */
  readonly times: Readonly<Record<'year' | 'day' | 'hour' | 'minute' | 'second', readonly [string, string]>>;
}

/**
 * A language: its sentences with holes such as `{flow}`, its words for the names of parts, media and kinds, and how it
 * writes figures. Another language is another object of this shape; a test holds its codes and holds against English.
 */
export interface Language {
  /** BCP 47 tag, such as `en` or `de`. */
  readonly code: string;
  /** Its own name for itself. */
  readonly itself: string;
  readonly direction: 'ltr' | 'rtl';
  readonly sentences: Readonly<Record<string, string>>;
  /** Its word for an English name; `#` stands for any whole number. A name that is not here is kept. */
  readonly names: Readonly<Record<string, string>>;
  readonly marks: Marks;
}

const hole = /\{(\w+)\}/g;

/** Names of the holes of a template, each once. */
export const holesOf = (template: string): readonly string[] => [
  ...new Set([...template.matchAll(hole)].map(([, name]) => name!)),
];

/** A template with its holes filled. Throws where there is nothing for a hole: that is a bug. */
export const filled = (template: string, fill: (name: string) => string): string =>
  template.replace(hole, (_, name: string) => fill(name));

/** A name in a language. */
export const nameIn = ({ names }: Language, name: string): string => {
  // Somebody may call a medium `constructor`, for which every object has something that is no word.
  const own: unknown = names[name];
  if (typeof own === 'string') return own;
  const numbers = name.match(/\d+/g) ?? [];
  const pattern: unknown = names[name.replace(/\d+/g, '#')];
  if (typeof pattern !== 'string') return name;
  let at = 0;
  return pattern.replace(/#/g, () => numbers[at++] ?? '');
};
