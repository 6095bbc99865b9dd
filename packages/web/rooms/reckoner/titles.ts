/** A label as it stands over a field; `pH` stays as it is. */
export const labelOf = (label: string): string =>
  /^[a-z][A-Z]/.test(label) ? label : label.charAt(0).toUpperCase() + label.slice(1);

/** The name of a reckoning as a heading: `hose-loss` is `Hose loss`, and `un-` stays before its word. */
export const titleOf = (name: string): string => labelOf(name.replace(/(?<!^un)-/g, ' '));
