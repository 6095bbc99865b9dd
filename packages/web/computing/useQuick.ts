import { useEffect, useMemo, useState } from 'react';
import type { Computed, QuickFigures, Shown } from './assessed.ts';
import { quickEngine } from './engines.ts';
import { newestOnly } from './newest.ts';

/** Drawing and figures of a document, as they follow a hand. */
export interface Quick {
  /** Of the newest document that could be computed; undefined before the first. */
  readonly quick: QuickFigures | undefined;
  /** What is wrong with the document as it stands; the figures are then those of before. */
  readonly problems: Extract<Computed<never>, { ok: false }>['problems'];
  /** True where problems, drawing and figures are those of the newest document. */
  readonly isRead: boolean;
}

interface Asked extends Shown {
  readonly document: unknown;
}

/** Computes drawing and figures whenever a document changes, on a thread of their own. */
export function useQuick(document: unknown, { system, state }: Shown): Quick {
  const [quick, setQuick] = useState<QuickFigures>();
  const [problems, setProblems] = useState<Quick['problems']>([]);
  const [read, setRead] = useState<unknown>();
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
  useEffect(() => follow({ document, system, state }), [document, system, state, follow]);
  return { quick, problems, isRead: read === document };
}
