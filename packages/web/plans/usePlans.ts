import type { PlanRequest } from '@fettle/workflows/planDocument.ts';
import type { PlansResult } from '@fettle/workflows/results/plans.ts';
import { useCallback, useEffect, useState } from 'react';
import {
  askForPlans,
  cancelSearch,
  followSearch,
  plansFound,
  type SearchProgress,
  type SearchWork,
  searchesOf,
} from '../client/plans.ts';
import type { JobSession } from '../session/jobSession.ts';

/** A search for plans as it is shown. */
export type Search =
  | { readonly is: 'none' }
  | { readonly is: 'under way'; readonly id: string; readonly progress?: SearchProgress }
  | {
      readonly is: 'found';
      readonly plans: PlansResult;
      readonly revision: number;
      /** What was asked for. */
      readonly asked: PlanRequest;
    }
  | { readonly is: 'failed'; readonly says: string };

const saysOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** The newest search for plans of a job, followed until it ends. */
function useNewestSearch(number: number) {
  const [search, setSearch] = useState<Search>({ is: 'none' });
  const [followed, setFollowed] = useState<string>();
  const fail = useCallback((error: unknown) => setSearch({ is: 'failed', says: saysOf(error) }), []);
  const show = useCallback(async (work: SearchWork): Promise<void> => {
    const { id, revision, state, failure, progress, request } = work;
    if (state === 'done') setSearch({ is: 'found', plans: await plansFound(id), revision, asked: request });
    else if (state === 'failed') setSearch({ is: 'failed', says: failure ?? 'The search failed.' });
    else if (state === 'cancelled') setSearch({ is: 'none' });
    else {
      setSearch({ is: 'under way', id, ...(progress === undefined ? {} : { progress }) });
      setFollowed(id);
    }
  }, []);
  useEffect(() => {
    // Without an answer there is nothing to show yet; asking for plans tells why.
    searchesOf(number).then(([newest]) => newest && show(newest), ignored);
  }, [number, show]);
  useEffect(() => {
    if (followed === undefined) return;
    const ended = async (): Promise<void> => {
      const work = (await searchesOf(number)).find(({ id }) => id === followed);
      if (work !== undefined) await show(work);
    };
    return followSearch(followed, {
      progress: (progress) => setSearch({ is: 'under way', id: followed, progress }),
      end: () => void ended().catch(fail),
    });
  }, [followed, number, show, fail]);
  return { search, show, fail, forget: () => setSearch({ is: 'none' }) };
}

const ignored = (): void => undefined;

/** Searches for plans of a job: the one under way or the last one found, and new ones. */
export function usePlans(session: JobSession) {
  const { number } = session.state();
  const { search, show, fail, forget } = useNewestSearch(number);
  return {
    search,
    ask: async (of: Partial<PlanRequest>): Promise<void> => {
      try {
        // Plans are searched for what the records have.
        await session.flush();
        await show(await askForPlans(number, of));
      } catch (error) {
        fail(error);
      }
    },
    cancel: async (): Promise<void> => {
      if (search.is !== 'under way') return;
      await cancelSearch(search.id).catch(fail);
      forget();
    },
  };
}
