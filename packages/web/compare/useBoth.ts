import { useMemo } from 'react';
import { useRevision } from '../client/useRevision.ts';
import type { BothFigures, Computed, Packed, Shown } from '../computing/assessed.ts';
import { thoroughEngine } from '../computing/engines.ts';
import { type Rested, useRested } from '../computing/useRested.ts';
import type { Side } from './sides.ts';

interface Asked extends Pick<Shown, 'system'> {
  readonly one: Packed | undefined;
  readonly other: Packed | undefined;
  readonly stacked: boolean;
}

const nothing: Computed<BothFigures> = { ok: false, problems: [] };

const compute = async ({ one, other, ...shown }: Asked): Promise<Computed<BothFigures>> =>
  one === undefined || other === undefined ? nothing : thoroughEngine().both(one, other, shown);

/** A side with its document, which is asked for where it is an earlier revision. */
interface Had {
  /** Undefined until the document is there. */
  readonly packed: Packed | undefined;
  /** Why it cannot be had, one sentence. */
  readonly failure: string | undefined;
}

function usePacked(number: number, side: Side | undefined): Had {
  const { revision } = side ?? {};
  const asked = useRevision(number, revision);
  const document: unknown = revision === undefined ? side?.document : asked.data;
  const { state, name } = side ?? {};
  const packed = useMemo(
    () =>
      document === undefined || state === undefined || name === undefined
        ? undefined
        : { document, state, name },
    [document, state, name],
  );
  return {
    packed,
    failure: asked.isError ? `Revision ${revision} cannot be shown: ${asked.error.message}` : undefined,
  };
}

/** Two packings as far as they are computed. */
export interface Both extends Rested<BothFigures> {
  /** Why one of them cannot be had, one sentence. */
  readonly failure: string | undefined;
}

/** Two packings computed beside each other, on a thread of their own. */
export function useBoth(
  number: number,
  sides: { readonly first: Side | undefined; readonly second: Side | undefined },
  { system, stacked }: Omit<Asked, 'one' | 'other'>,
): Both {
  const [first, second] = [usePacked(number, sides.first), usePacked(number, sides.second)];
  const [one, other] = [first.packed, second.packed];
  const asked = useMemo(() => ({ one, other, system, stacked }), [one, other, system, stacked]);
  const rested = useRested(asked, compute);
  return {
    ...rested,
    isBehind: rested.isBehind || one === undefined || other === undefined,
    failure: first.failure ?? second.failure,
  };
}
