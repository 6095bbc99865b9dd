import type { Attachment } from '@fettle/store/contract/attachments.ts';
import { bytesText } from './counts.ts';
import { wrap } from './layout.ts';
import { momentText } from './moments.ts';

const captioned = (caption: string): string => (caption === '' ? '' : `: ${caption}`);

/** A photograph in a few words, by the id that names it. */
export const photographLine = ({ id, name, caption, widthPx, heightPx }: Attachment): string =>
  wrap(`  ${id}  ${name}, ${widthPx} × ${heightPx}${captioned(caption)}`, 4);

/** A photograph with all that a list tells of it: what it shows, how large it is, when it was taken and added. */
export const wholePhotographLine = (photograph: Attachment): string => {
  const { id, name, caption, widthPx, heightPx, bytes, takenAt, addedAt, addedBy } = photograph;
  const taken = takenAt === undefined ? '' : `taken ${takenAt.replace('T', ' ').slice(0, 16)}, `;
  const says = `${name}, ${widthPx} × ${heightPx}, ${bytesText(bytes)}, ${taken}added ${momentText(addedAt)} by ${addedBy}`;
  return wrap(`  ${id}  ${says}${captioned(caption)}`, 4);
};
