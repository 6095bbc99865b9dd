const sorted = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(sorted);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).filter(([, inside]) => inside !== undefined);
  return Object.fromEntries(
    entries
      .toSorted(([one], [other]) => (one < other ? -1 : 1))
      .map(([key, inside]) => [key, sorted(inside)]),
  );
};

/** JSON in which equal values have equal texts, in whatever order their fields were written. */
export const canonicalText = (value: unknown): string => JSON.stringify(sorted(value)) ?? '';
