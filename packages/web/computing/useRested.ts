import { useEffect, useMemo, useState } from 'react';
import type { Computed } from './assessed.ts';
import { newestOnly } from './newest.ts';

/** What was computed of something that has rested. */
export interface Rested<Figures> {
  /** Of the newest that could be computed; undefined before the first. */
  readonly figures: Figures | undefined;
  readonly problems: Extract<Computed<never>, { ok: false }>['problems'];
  /** True while they are of what was asked before. */
  readonly isBehind: boolean;
}

/** Rest after the last change before anything is computed anew, ms. */
const restMs = 120;

/**
 * Computes what takes long once what it is asked of has rested.
 * @param asked the same object as long as nothing about it has changed
 */
export function useRested<Asked, Figures>(
  asked: Asked,
  compute: (asked: Asked) => Promise<Computed<Figures>>,
): Rested<Figures> {
  const [figures, setFigures] = useState<Figures>();
  const [problems, setProblems] = useState<Rested<Figures>['problems']>([]);
  const [read, setRead] = useState<Asked>();
  const follow = useMemo(
    () =>
      newestOnly<Asked, Computed<Figures>>(compute, (computed, of) => {
        setRead(() => of);
        setProblems(computed.ok ? [] : computed.problems);
        if (computed.ok) setFigures(computed.figures);
      }),
    [compute],
  );
  useEffect(() => {
    const timer = setTimeout(() => follow(asked), restMs);
    return () => clearTimeout(timer);
  }, [asked, follow]);
  return { figures, problems, isBehind: read !== asked };
}
