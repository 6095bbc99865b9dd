/** Moves the keyboard to a heading: a button that goes with its row must not leave it nowhere. */
export const focusOn = (heading: string): void => document.getElementById(heading)?.focus();
