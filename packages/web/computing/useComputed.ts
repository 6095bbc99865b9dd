import { useEffect, useMemo, useRef, useState } from 'react';
import type { Computed, QuickFigures, Shown, WholeFigures } from './assessed.ts';
import { quickEngine, thoroughEngine } from './engines.ts';
import { newestOnly } from './newest.ts';

/** Figures of a document as it is worked on. */
export interface Figures {
  /** Of the newest document that could be computed; undefined before the first. */
  readonly quick: QuickFigures | undefined;
  readonly whole: WholeFigures | undefined;
  /** What is wrong with the document as it stands; the figures are then those of before. */
  readonly problems: Extract<Computed<never>, { ok: false }>['problems'];
  /** True where problems, drawing and quick figures are those of the newest document. */
  readonly isRead: boolean;
  /** True while the whole is that of an older document. */
  readonly isBehind: boolean;
}

/** Rest after the last change before findings are computed anew, ms. */
const restMs = 120;

interface Asked extends Shown {
  readonly document: unknown;
}

/** Computes a document whenever it changes, on threads of their own. */
export function useComputed(document: unknown, { system, theme, state }: Shown): Figures {
  const [quick, setQuick] = useState<QuickFigures>();
  const [problems, setProblems] = useState<Figures['problems']>([]);
  const [read, setRead] = useState<unknown>();
  const [whole, setWhole] = useState<{ readonly of: unknown; readonly figures: WholeFigures }>();
  const follow = useMemo(
    () =>
      newestOnly<Asked, Computed<QuickFigures>>(
        ({ document, ...shown }) => quickEngine().quick(document, shown),
        (computed, { document }) => {
          setRead(document);
          setProblems(computed.ok ? [] : computed.problems);
          if (computed.ok) setQuick(computed.figures);
        },
      ),
    [],
  );
  const followThoroughly = useMemo(
    () =>
      newestOnly<Asked, Computed<WholeFigures>>(
        ({ document, ...shown }) => thoroughEngine().whole(document, shown),
        (computed, { document }) => {
          if (computed.ok) setWhole({ of: document, figures: computed.figures });
        },
      ),
    [],
  );
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  useEffect(() => {
    const asked = { document, system, theme, state };
    follow(asked);
    timer.current = setTimeout(() => followThoroughly(asked), restMs);
    return () => clearTimeout(timer.current);
  }, [document, system, theme, state, follow, followThoroughly]);
  const isRead = read === document;
  return { quick, whole: whole?.figures, problems, isRead, isBehind: whole?.of !== document };
}
