import { useMemo } from 'react';
import type { DirtDrawn, Shown } from './assessed.ts';
import { thoroughEngine } from './engines.ts';
import { useRested } from './useRested.ts';

type Asked = Pick<Shown, 'theme' | 'state'> & { readonly document: unknown };

const compute = ({ document, ...shown }: Asked) => thoroughEngine().dirt(document, shown);

/** How dirt comes into a packing of a document; undefined before it is known. */
export function useDirt(
  document: unknown,
  { theme, state }: Pick<Shown, 'theme' | 'state'>,
): DirtDrawn | undefined {
  const asked = useMemo(() => ({ document, theme, state }), [document, theme, state]);
  return useRested(asked, compute).figures;
}
