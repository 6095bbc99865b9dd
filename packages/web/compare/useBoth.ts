import { useQuery } from '@tanstack/react-query';
import { useMemo } from 'react';
import { readRevision } from '../client/history.ts';
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

/** The document of a side, asked for where it is an earlier revision; undefined until it is there. */
function usePacked(number: number, side: Side | undefined): Packed | undefined {
  const { revision } = side ?? {};
  const asked = useQuery({
    queryKey: ['revision', number, revision],
    queryFn: () => readRevision(number, revision ?? 0),
    enabled: revision !== undefined,
    // What was written once stays as it is.
    staleTime: Number.POSITIVE_INFINITY,
  });
  const document: unknown = revision === undefined ? side?.document : asked.data;
  const { state, name } = side ?? {};
  return useMemo(
    () =>
      document === undefined || state === undefined || name === undefined
        ? undefined
        : { document, state, name },
    [document, state, name],
  );
}

/** Two packings computed beside each other, on a thread of their own. */
export function useBoth(
  number: number,
  sides: { readonly first: Side | undefined; readonly second: Side | undefined },
  { system, stacked }: Omit<Asked, 'one' | 'other'>,
): Rested<BothFigures> {
  const one = usePacked(number, sides.first);
  const other = usePacked(number, sides.second);
  const asked = useMemo(() => ({ one, other, system, stacked }), [one, other, system, stacked]);
  return useRested(asked, compute);
}
