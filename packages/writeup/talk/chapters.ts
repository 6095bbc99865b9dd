import { acceptedQuantity } from '@fettle/job/schema/fields.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import { chapterSchema } from '@fettle/job/schema/writeUp.ts';

/** A chapter of a recording. */
export interface Chapter {
  readonly fromS: number;
  readonly says: string;
}

/** Chapters of a job's recording by their times; of several at one time the last that was entered holds. */
export const chaptersOf = ({ writeUp }: JobDocument): readonly Chapter[] => {
  const byTime = new Map<number, Chapter>();
  for (const { at, says } of writeUp?.chapters ?? []) {
    const fromS = Math.round(acceptedQuantity(chapterSchema.shape.at, at).value * 1000) / 1000;
    byTime.set(fromS, { fromS, says });
  }
  return [...byTime.values()].toSorted((one, other) => one.fromS - other.fromS);
};

/** How long the last chapter is said to last, s: the recording's own end is not known, and players stop there. */
const LAST_CHAPTER_S = 3600;

const two = (value: number): string => String(value).padStart(2, '0');

/** A time as WebVTT writes it: `00:01:45.000`. */
export const vttTime = (timeS: number): string => {
  const whole = Math.round(timeS * 1000);
  const seconds = Math.floor(whole / 1000);
  const clock = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, seconds % 60].map(two).join(':');
  return `${clock}.${String(whole % 1000).padStart(3, '0')}`;
};

/** A chapter's name on one line, with nothing in it that the format takes for a mark. */
const cueText = (says: string): string =>
  says.replace(/\s+/g, ' ').trim().replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');

/**
 * Chapters as a WebVTT file (W3C, WebVTT: The Web Video Text Tracks Format): each lasts until the next begins.
 *
 * @param chapters in time
 * @returns nothing where there are none
 */
export const chaptersVtt = (chapters: readonly Chapter[]): string | undefined => {
  if (chapters.length === 0) return undefined;
  const cues = chapters.map(({ fromS, says }, at) => {
    const endS = chapters[at + 1]?.fromS ?? fromS + LAST_CHAPTER_S;
    return `${at + 1}\n${vttTime(fromS)} --> ${vttTime(endS)}\n${cueText(says)}`;
  });
  return `WEBVTT\n\n${cues.join('\n\n')}\n`;
};
