import { fork } from 'node:child_process';
import type { Chance } from './chance.ts';
import type { LoadKind, Standing } from './loadMix.ts';
import type { Answers, ClientsTask, ClientTimes } from './manyClients.ts';

/**
 * Clients are dealt to so many processes. Those of one process whose moments fall together once, since the process
 * had to wait for a core, stay together from then on: a timer of Node is wound up anew when it has rung. With few in
 * each that is rare.
 */
const processes = 8;

export interface Crowd {
  readonly address: string;
  readonly kinds: readonly LoadKind[];
  readonly standing: Standing;
  /** Requests a second, all kinds together, and so the number of clients. */
  readonly rate: number;
  readonly times: ClientTimes;
  readonly chance: Chance;
}

/** What each client asks, as its place among the kinds, in a row that chance has mixed. */
const dealt = ({ kinds, rate, chance }: Crowd): readonly number[] =>
  kinds
    .flatMap(({ share }, place) => Array.from({ length: Math.max(1, Math.round(rate * share)) }, () => place))
    .map((place) => ({ place, order: chance.share() }))
    .toSorted((one, other) => one.order - other.order)
    .map(({ place }) => place);

const inProcess = (task: ClientsTask): Promise<readonly Answers[]> =>
  new Promise((resolve, reject) => {
    const child = fork(new URL('./clientsProcess.ts', import.meta.url), {
      execArgv: ['--import', import.meta.resolve('tsx')],
    });
    child.once('message', (answers: readonly Answers[]) => resolve(answers));
    child.once('error', reject);
    child.once('exit', (code) => reject(new Error(`a process of clients ended with ${code}`)));
    child.send(task);
  });

/** Puts the answers of several clients together. */
export const together = (some: readonly Answers[]): Answers => {
  const all: Answers = { tookMs: some.flatMap(({ tookMs }) => tookMs), statuses: {}, errors: 0 };
  for (const { statuses, errors } of some) {
    all.errors += errors;
    for (const [status, count] of Object.entries(statuses))
      all.statuses[Number(status)] = (all.statuses[Number(status)] ?? 0) + count;
  }
  return all;
};

/**
 * Asks as many people do: each of as many clients as there are requests in a second has a connection of its own and
 * asks once a second, at its own moment, whatever the others wait for. Gives the answers of each kind.
 */
export const askedByCrowd = async (crowd: Crowd): Promise<readonly Answers[]> => {
  const places = dealt(crowd);
  const jobs = [...crowd.standing];
  const tasks = Array.from({ length: processes }, (_, index): ClientsTask => {
    const isMine = (__: unknown, at: number): boolean => at % processes === index;
    return {
      address: crowd.address,
      kinds: places.filter(isMine),
      jobs: jobs.filter(isMine),
      seed: crowd.chance.below(2 ** 31),
      times: crowd.times,
    };
  });
  const answers = await Promise.all(tasks.map(inProcess));
  return crowd.kinds.map((_, place) =>
    together(
      answers.flatMap((of, index) => of.filter((__, client) => tasks[index]?.kinds[client] === place)),
    ),
  );
};

/** The time within which a share of all came, ms. */
export const withinMs = (tookMs: readonly number[], share: number): number =>
  tookMs.toSorted((one, other) => one - other)[Math.ceil(share * tookMs.length) - 1] ?? 0;
