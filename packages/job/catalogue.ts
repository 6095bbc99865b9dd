/** Ids of kinds of fish. */
export const fishIds: readonly string[] = ['small-tetra'];
