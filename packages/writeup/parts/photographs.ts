import type { Block, Photograph } from '../content/document.ts';
import { heading, type Writer } from './writer.ts';

/** Photographs by the names that blocks have for them. */
export const photographsOf = ({ source }: Writer): Readonly<Record<string, Photograph>> =>
  Object.fromEntries(
    (source.photographs ?? []).map(({ mediaType, base64 }, at) => [
      `photograph-${at + 1}`,
      { mediaType, base64 },
    ]),
  );

/** The photographs that may be published, with what was written under them; nothing where there are none. */
export const photographsPart = (writer: Writer): readonly Block[] => {
  const { photographs = [] } = writer.source;
  if (photographs.length === 0) return [];
  const shown = photographs.map(({ caption }, at) => ({
    photograph: `photograph-${at + 1}`,
    caption: caption.trim() === '' ? writer.say('photograph.unnamed', { number: at + 1 }) : caption,
  }));
  return [heading(writer, 'photographs'), { kind: 'photographs', id: 'photographs', shown }];
};
