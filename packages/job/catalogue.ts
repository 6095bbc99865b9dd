/** Ids of fittings. */
export const fittingIds: readonly string[] = ['strainer'];
/** Ids of kinds of fish. */
export const fishIds: readonly string[] = ['small-tetra'];
const perDay = 0.008 / 86_400;
export const stockClasses = {
  light: { feedKgPerM3PerS: { value: perDay / 2 } },
  normal: { feedKgPerM3PerS: { value: perDay } },
  heavy: { feedKgPerM3PerS: { value: perDay * 2 } },
};
