import { useMemo } from 'react';
import type { Shown, WholeFigures } from './assessed.ts';
import { thoroughEngine } from './engines.ts';
import { useRested } from './useRested.ts';

/** Findings, claims and tests of a document. */
export interface Whole {
  /** Of the newest document that could be computed; undefined before the first. */
  readonly whole: WholeFigures | undefined;
  /** True while they are those of an older document. */
  readonly isBehind: boolean;
}

type Asked = Pick<Shown, 'system' | 'state'> & { readonly document: unknown };

const compute = ({ document, ...shown }: Asked) => thoroughEngine().whole(document, shown);

/** Computes findings when a document has rested, on a thread of their own: for rooms that show them alone. */
export function useWhole(document: unknown, { system, state }: Pick<Shown, 'system' | 'state'>): Whole {
  const asked = useMemo(() => ({ document, system, state }), [document, system, state]);
  const { figures, isBehind } = useRested(asked, compute);
  return { whole: figures, isBehind };
}
