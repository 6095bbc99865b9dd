import { mostCaption } from '../contract/attachments.ts';

/** Longest name and caption that are kept, characters. */
export const wordLimits = { name: 100, caption: mostCaption } as const;

/** What cannot be seen, or turns the direction of writing around it. */
const unseen = /(?!\n)[\p{C}\u2028\u2029]/gu;

/** A picture's name made harmless: its last part where it was a path, without what cannot be seen or ends a name. */
export function tidyName(name: string): string {
  const last =
    name
      .normalize('NFC')
      .split(/[/\\]/)
      .findLast((part) => part.trim() !== '') ?? '';
  const plain = last
    .replace(/\n/g, ' ')
    .replace(unseen, '')
    .replace(/["'`<>|:*?]/g, '')
    .replace(/\s+/g, ' ')
    .replace(/^[\s.]+|[\s.]+$/g, '');
  return cut(plain, wordLimits.name).trim() || 'photograph';
}

/** A caption without what cannot be seen. Lines stay. */
export function tidyCaption(caption: string): string {
  return cut(
    caption.normalize('NFC').replace(/\r\n?/g, '\n').replace(/\t/g, ' ').replace(unseen, '').trim(),
    wordLimits.caption,
  );
}

function cut(text: string, most: number): string {
  return [...text].slice(0, most).join('');
}
