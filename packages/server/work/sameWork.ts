import type { Store } from '@fettle/store/contract/store.ts';
import type { Work, WorkState } from '@fettle/store/contract/work.ts';
import { canonicalText } from './canonicalText.ts';
import { kindNamed } from './kinds/kinds.ts';

/** What is asked for. */
export type Wanted = Pick<Work, 'kind' | 'job' | 'revision' | 'request' | 'by'>;

/** A piece of work without what is large. */
export type WorkLine = Omit<Work, 'result'>;

/** Work that asks for the same: not ended yet, or done by today's models. */
export const sameWork = async (store: Store, wanted: Wanted): Promise<WorkLine | undefined> => {
  const states: readonly WorkState[] = ['waiting', 'running', 'done'];
  const request = canonicalText(wanted.request);
  const same = (await store.work.list({ job: wanted.job, states })).filter(
    ({ kind, revision, request: asked }) =>
      kind === wanted.kind && revision === wanted.revision && canonicalText(asked) === request,
  );
  const live = same.find(({ state }) => state !== 'done');
  if (live !== undefined) return live;
  for (const { id } of same) {
    const work = await store.work.find(id);
    if (work !== undefined && kindNamed(work.kind)?.isCurrent(work.result)) return work;
  }
  return undefined;
};
