/**
 * A text without what is no letter: control characters, halves of characters, and the marks that turn the writing round
 * from there on, figures of ours with it. Ends of lines stay.
 */
export const lettersOnly = (text: string): string =>
  text.replace(/\r\n?|\u0085/g, '\n').replace(/[\u202a-\u202e\u2066-\u2069]|(?![\n\t])\p{Cc}|\p{Cs}/gu, '');
