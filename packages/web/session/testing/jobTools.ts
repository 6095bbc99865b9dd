import { Refused, Unreached } from '../../client/request.ts';
import type { Recipe, Worked } from '../history.ts';
import type { SessionTools } from '../jobSession.ts';
import type { KeptSession } from '../kept.ts';

/** Records of one job, as a server keeps them, with a network that may be down. */
export const recordsOf = (document: Worked) => {
  const revisions = [document];
  const at = (revision: number): Worked => revisions[revision - 1] ?? document;
  const records = {
    isReached: true,
    revisions,
    newest: () => at(revisions.length),
    async read() {
      if (!records.isReached) throw new Unreached(undefined);
      return { document: records.newest() as never, revision: revisions.length };
    },
    async write(_number: number, of: { document: Worked; base: number }) {
      if (!records.isReached) throw new Unreached(undefined);
      if (of.base !== revisions.length)
        throw new Refused({ status: 412, title: '', detail: '', code: 'lost-race' });
      revisions.push(of.document);
      return { revision: revisions.length, merged: false };
    },
  };
  return records;
};

/** What a session works with in a test, and what it kept. */
export const toolsFor = (records: ReturnType<typeof recordsOf>) => {
  const kept = new Map<number, KeptSession>();
  const tools: SessionTools = {
    records,
    keeper: {
      find: async (number) => kept.get(number),
      agree: async (known, following) => {
        const held = kept.get(known.number);
        const next = following(held === undefined || held.turn === known.turn ? known : held);
        kept.set(known.number, next);
        return next;
      },
    },
    windows: () => ({ tell: () => undefined, close: () => undefined }),
    alone: (_, work) => work(),
  };
  return { tools, kept };
};

/** The job that a test begins from. */
export const start: Worked = { fettle: 1, tank: { volume: '180 L', feed: '1.5 g/d' } };
/** Sets a field of the tank. */
export const setting =
  (field: string, value: string): Recipe =>
  (draft) => {
    Object(draft.tank)[field] = value;
  };
