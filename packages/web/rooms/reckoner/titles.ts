/** The name of a reckoning as a heading: `hose-loss` is `Hose loss`, and `un-` stays before its word. */
export const titleOf = (name: string): string => {
  const words = name.replace(/(?<!^un)-/g, ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
};
