import { setTimeout } from 'node:timers/promises';
import autocannon, { type LoadOptions } from 'autocannon';
import { type Chance, chanceFrom } from './chance.ts';
import { loadKinds } from './loadMix.ts';

/** What came back of one kind of request. */
export interface Answers {
  /** How long each answer took, ms. */
  readonly tookMs: number[];
  /** How often each status came. */
  readonly statuses: Record<number, number>;
  /** Requests without an answer. */
  errors: number;
}

/** What a process of clients is to do. */
export interface ClientsTask {
  readonly address: string;
  /** Place in `loadKinds` of what each client asks. */
  readonly kinds: readonly number[];
  /** Jobs that these clients may change, and nobody else, each with its revision. */
  readonly jobs: readonly (readonly [number: number, revision: number])[];
  readonly seed: number;
  readonly times: ClientTimes;
}

export interface ClientTimes {
  /** Clients come one by one over this time. */
  readonly gatherSeconds: number;
  /** Then all ask for so long before anything is counted. */
  readonly warmUpSeconds: number;
  readonly seconds: number;
}

/** A time in which answers are counted. */
const countingIn = ({ gatherSeconds, warmUpSeconds, seconds }: ClientTimes) => {
  const began = performance.now();
  const from = gatherSeconds + warmUpSeconds;
  return {
    until: from + seconds,
    isNow: (): boolean => {
      const nowS = (performance.now() - began) / 1000;
      return nowS >= from && nowS < from + seconds;
    },
  };
};

interface Client {
  readonly address: string;
  readonly requests: LoadOptions['requests'];
  readonly comesAfterMs: number;
  readonly counting: ReturnType<typeof countingIn>;
}

/** Asks once a second until the end, over one connection. */
const ask = async ({ address, requests, comesAfterMs, counting }: Client): Promise<Answers> => {
  const answers: Answers = { tookMs: [], statuses: {}, errors: 0 };
  await setTimeout(comesAfterMs);
  const duration = Math.ceil(counting.until - comesAfterMs / 1000);
  const run = autocannon({ url: address, duration, connections: 1, overallRate: 1, requests });
  run.on('response', (...[, status, , milliseconds]) => {
    if (!counting.isNow()) return;
    answers.tookMs.push(milliseconds);
    answers.statuses[status] = (answers.statuses[status] ?? 0) + 1;
  });
  run.on('reqError', () => {
    answers.errors++;
  });
  await run;
  return answers;
};

/** Lets clients ask, each from a moment of its own; gives the answers of each, in their order. */
export const askAll = async ({ address, kinds, jobs, seed, times }: ClientsTask): Promise<Answers[]> => {
  const chance: Chance = chanceFrom(seed);
  const all = loadKinds(new Map(jobs), chance);
  const counting = countingIn(times);
  return Promise.all(
    kinds.map((place) => {
      const requests = all[place]?.requests ?? [];
      const comesAfterMs = chance.below(1000 * times.gatherSeconds);
      return ask({ address, requests, comesAfterMs, counting });
    }),
  );
};
