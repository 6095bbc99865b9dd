import type { Store } from '@fettle/store/contract/store.ts';
import { openStore } from '@fettle/store/open.ts';
import { digestOf } from './canonical.ts';

/** Digest of each job with all that belongs to it: revisions, pictures and readings; and of the books. */
export async function digestsOf(store: Store): Promise<ReadonlyMap<string, string>> {
  const digests = new Map<string, string>();
  for (const number of await store.jobs.numbers()) {
    const revisions = [];
    for (const { revision } of (await store.jobs.revisions(number)) ?? [])
      revisions.push(await store.jobs.revision(number, revision));
    const pictures = (await store.attachments.list(number)).map(({ hash, name, caption }) => [
      hash,
      name,
      caption,
    ]);
    const readings = (await store.readings.list(number)).map(({ day, kind, value, note }) => [
      day,
      kind,
      value,
      note,
    ]);
    digests.set(`job ${number}`, digestOf([revisions, pictures.toSorted(), readings.toSorted()]));
  }
  for (const name of ['shelf', 'settings'] as const)
    digests.set(name, digestOf((await store.books.revisions(name)).map(({ body }) => body)));
  return digests;
}

/** Opens a data folder, does something with the records and closes them. */
export async function withStore<Result>(
  folder: string,
  work: (store: Store) => Promise<Result>,
): Promise<Result> {
  const store = await openStore({ folder });
  try {
    return await work(store);
  } finally {
    await store.close();
  }
}

/** Faults of a whole look, and the digests of a folder's records. */
export const lookAt = (
  folder: string,
): Promise<{ readonly faults: readonly string[]; readonly digests: ReadonlyMap<string, string> }> =>
  withStore(folder, async (store) => {
    const { faults } = await store.checkup({ thorough: true });
    return { faults, digests: await digestsOf(store) };
  });

/** Names under which two sets of digests differ. */
export function differing(one: ReadonlyMap<string, string>, other: ReadonlyMap<string, string>): string[] {
  const names = new Set([...one.keys(), ...other.keys()]);
  return [...names].filter((name) => one.get(name) !== other.get(name));
}
