/**
 * Days as they are typed, `1, 3, 5`, as the settings keep them. What is no whole number stays as it was typed, and
 * the settings say what is wrong with it.
 */
export const daysOf = (typed: string): readonly (number | string)[] =>
  typed
    .split(/[\s,;]+/)
    .filter((part) => part !== '')
    .map((part) => (/^\d+$/.test(part) ? Number(part) : part));

/** Days of the settings as they are typed. */
export const daysText = (days: unknown): string => (Array.isArray(days) ? days.join(', ') : '');
