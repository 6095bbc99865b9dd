import type { PlanRequest } from '@fettle/workflows/planDocument.ts';
import type { PlansResult } from '@fettle/workflows/results/plans.ts';
import { request } from './request.ts';

/** How far a search for plans is. */
export interface SearchProgress {
  readonly assessed: number;
  readonly planned: number;
}

/** One search for plans, as the server has it. */
export interface SearchWork {
  readonly id: string;
  readonly revision: number;
  readonly state: 'waiting' | 'running' | 'done' | 'failed' | 'cancelled';
  readonly request: PlanRequest;
  readonly askedAt: string;
  readonly failure?: string;
  readonly progress?: SearchProgress;
}

/** Asks for plans for a job as it stands in the records; the same question is the same work. */
export const askForPlans = async (number: number, of: Partial<PlanRequest>): Promise<SearchWork> =>
  (await request<SearchWork>(`/api/jobs/${number}/plans`, { method: 'POST', json: of })).body;

/** Searches that were asked for, newest first. */
export const searchesOf = async (number: number): Promise<readonly SearchWork[]> =>
  (await request<{ readonly work: readonly SearchWork[] }>(`/api/work?job=${number}`)).body.work;

export const cancelSearch = async (id: string): Promise<void> => {
  await request(`/api/work/${id}`, { method: 'DELETE' });
};

export const plansFound = async (id: string): Promise<PlansResult> =>
  (await request<PlansResult>(`/api/work/${id}/result`)).body;

/** Tells how far a search is until it ends; what this gives stops the telling, not the search. */
export function followSearch(
  id: string,
  tell: { readonly progress: (progress: SearchProgress) => void; readonly end: () => void },
): () => void {
  const events = new EventSource(`/api/work/${id}/events`);
  events.addEventListener('progress', ({ data }: MessageEvent<string>) => tell.progress(JSON.parse(data)));
  events.addEventListener('end', () => {
    events.close();
    tell.end();
  });
  return () => events.close();
}
