/** The view box of a drawing, for what lies over it. */
export const viewBoxOf = (svg: string): string => /viewBox="([^"]+)"/.exec(svg)?.[1] ?? '0 0 100 100';
