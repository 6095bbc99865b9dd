/** Words a minute of somebody who explains without haste (common practice, no source). */
export const WORDS_PER_MINUTE = 130;

/** Words of a text: what stands between spaces and has a letter or a figure in it. */
export const wordCount = (text: string): number =>
  text.split(/\s+/).filter((part) => /[\p{L}\p{N}]/u.test(part)).length;

/** Time that it takes to say so many words, s. */
export const speakingTimeS = (words: number): number => (words / WORDS_PER_MINUTE) * 60;

/** A time in whole seconds as `2:05`, with hours from one hour on: `1:00:00`. */
export const clockText = (timeS: number): string => {
  const whole = Math.round(timeS);
  const two = (value: number): string => String(value).padStart(2, '0');
  const [hours, minutes, seconds] = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  return hours > 0 ? `${hours}:${two(minutes)}:${two(seconds)}` : `${minutes}:${two(seconds)}`;
};
