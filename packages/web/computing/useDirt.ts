import type { PackedState } from '@fettle/job/packedStates.ts';
import { useMemo } from 'react';
import type { DirtDrawn } from './assessed.ts';
import { thoroughEngine } from './engines.ts';
import { useRested } from './useRested.ts';

interface Asked {
  readonly document: unknown;
  readonly state: PackedState;
}

const compute = ({ document, state }: Asked) => thoroughEngine().dirt(document, state);

/** How dirt comes into a packing of a document; undefined before it is known. */
export function useDirt(document: unknown, state: PackedState): DirtDrawn | undefined {
  const asked = useMemo(() => ({ document, state }), [document, state]);
  return useRested(asked, compute).figures;
}
