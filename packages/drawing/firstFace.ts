import type { Chamber } from '@fettle/engine/families/layout.ts';

/** The side of a chamber's beds that the water meets first. */
export function waterMeetsFirst({ flow }: Pick<Chamber, 'flow'>): 'top' | 'bottom' | 'left' | 'right' {
  switch (flow) {
    case 'down':
      return 'top';
    case 'up':
      return 'bottom';
    case 'right':
      return 'left';
    case 'left':
      return 'right';
  }
}
