import { workerData } from 'node:worker_threads';
import type { Store } from '../contract/store.ts';
import { openStore } from '../open.ts';
import { type Answer, type Call, toAnswer } from './calls.ts';

let opening: Promise<Store> | undefined;
/** Moment of the caller's clock at its newest call, milliseconds since 1970. */
let moment: number | undefined;

/** The records, opened with the first call; where that fails, the next call tries again. */
const records = async (): Promise<Store> => {
  opening ??= openStore({ ...workerData, clock: () => new Date(moment ?? Date.now()) });
  try {
    return await opening;
  } catch (error) {
    opening = undefined;
    throw error;
  }
};

const carryOut = async ({ room, method, values }: Call): Promise<unknown> => {
  const store = await records();
  const owner = room === undefined ? store : store[room];
  const found: unknown = Reflect.get(owner, method);
  if (typeof found !== 'function') throw new TypeError(`the records have no ${room}.${method}`);
  return Reflect.apply(found, owner, values);
};

/** Carries out one call; runs in a worker thread. */
export default async function perform(call: Call): Promise<Answer> {
  moment = call.at ?? moment;
  try {
    return { value: call.method === 'open' ? void (await records()) : await carryOut(call) };
  } catch (error) {
    return toAnswer(error);
  }
}
