import { useEffect, useMemo, useState } from 'react';
import type { Computed, Shown, WholeFigures } from './assessed.ts';
import { thoroughEngine } from './engines.ts';
import { newestOnly } from './newest.ts';

/** Findings, claims and tests of a document. */
export interface Whole {
  /** Of the newest document that could be computed; undefined before the first. */
  readonly whole: WholeFigures | undefined;
  /** True while they are those of an older document. */
  readonly isBehind: boolean;
}

/** Rest after the last change before findings are computed anew, ms. */
const restMs = 120;

type Asked = Pick<Shown, 'system' | 'state'> & { readonly document: unknown };

/** Computes findings when a document has rested, on a thread of their own: for rooms that show them alone. */
export function useWhole(document: unknown, { system, state }: Pick<Shown, 'system' | 'state'>): Whole {
  const [whole, setWhole] = useState<{ readonly of: unknown; readonly figures: WholeFigures }>();
  const follow = useMemo(
    () =>
      newestOnly<Asked, Computed<WholeFigures>>(
        ({ document, ...shown }) => thoroughEngine().whole(document, shown),
        (computed, { document }) => {
          if (computed.ok) setWhole({ of: document, figures: computed.figures });
        },
      ),
    [],
  );
  useEffect(() => {
    const timer = setTimeout(() => follow({ document, system, state }), restMs);
    return () => clearTimeout(timer);
  }, [document, system, state, follow]);
  return { whole: whole?.figures, isBehind: whole?.of !== document };
}
