import type { Doubts } from '@fettle/engine/doubt/doubtOf.ts';
import type { PackedState } from '@fettle/job/packedStates.ts';
import { useEffect, useState } from 'react';
import { engineOfItsOwn } from './engines.ts';

interface Drawn {
  readonly document: unknown;
  readonly state: PackedState;
  /** Absent where they could not be drawn. */
  readonly doubts?: Doubts;
}

/** How sure the figures of a packing are, as far as that is known. */
export type Sureness = 'being-drawn' | 'not-drawn' | Doubts;

/**
 * Draws what is not sure of one packing, on a thread that is ended as soon as the document has changed: no figure that
 * follows a hand waits for it.
 *
 * @param isAsked false while what goes before it is not there yet
 */
export function useDoubts(document: unknown, state: PackedState, isAsked: boolean): Sureness {
  const [drawn, setDrawn] = useState<Drawn>();
  const isKnown = drawn !== undefined && drawn.document === document && drawn.state === state;
  useEffect(() => {
    if (!isAsked || isKnown) return;
    const { engine, stop } = engineOfItsOwn();
    let isWanted = true;
    const take = (doubts?: Doubts): void => {
      if (isWanted) setDrawn({ document, state, ...(doubts && { doubts }) });
    };
    engine.doubts(document, state).then(
      (computed) => take(computed.ok ? computed.figures : undefined),
      () => take(),
    );
    return () => {
      isWanted = false;
      stop();
    };
  }, [document, state, isAsked, isKnown]);
  return isKnown ? (drawn.doubts ?? 'not-drawn') : 'being-drawn';
}
