import { lettersOnly } from '../forms/letters.ts';
import type { Writer } from '../parts/writer.ts';
import { chaptersOf, chaptersVtt } from './chapters.ts';
import { descriptionText } from './description.ts';

/** Files beside the talking sheet: the text under a recording, and its chapters once their times are entered. */
export const talkFiles = (writer: Writer): readonly { readonly path: string; readonly content: string }[] => {
  const chapters = chaptersVtt(chaptersOf(writer.source.document));
  return [
    { path: 'description.txt', content: lettersOnly(descriptionText(writer)) },
    ...(chapters === undefined ? [] : [{ path: 'chapters.vtt', content: chapters }]),
  ];
};
