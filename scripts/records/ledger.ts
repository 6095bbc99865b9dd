import { digestOf } from './canonical.ts';

/** What a server has answered with a success, written down after the whole answer had arrived. */
export interface Ledger {
  /** Digest of each acknowledged revision of each job. */
  readonly revisions: Map<number, Map<number, string>>;
  /** Digests of every document that was ever sent: what stands in the records must be one of them. */
  readonly sent: Set<string>;
  /** Jobs of which something was sent since the last look, by number. */
  readonly touched: Set<number>;
  readonly pictures: { readonly job: number; readonly id: string; readonly hash: string }[];
  /** Ids of pictures whose removal was asked for, and of those where it was acknowledged. */
  readonly removalsAsked: Set<string>;
  readonly removed: Set<string>;
  readonly readings: { readonly job: number; readonly id: string; readonly value: string }[];
  /** Digest of each acknowledged revision of the shelf. */
  readonly shelf: Map<number, string>;
  readonly works: { readonly job: number; readonly id: string }[];
  /** How many writes were acknowledged in all, and how many lost a race. */
  acknowledged: number;
  outrun: number;
}

export const newLedger = (): Ledger => ({
  revisions: new Map(),
  sent: new Set(),
  touched: new Set(),
  pictures: [],
  removalsAsked: new Set(),
  removed: new Set(),
  readings: [],
  shelf: new Map(),
  works: [],
  acknowledged: 0,
  outrun: 0,
});

/** Digest of a job's document apart from its number, which the records give. */
export function documentDigest(document: unknown): string {
  if (typeof document !== 'object' || document === null) return digestOf(document);
  const { job, ...rest } = document as Readonly<Record<string, unknown>>;
  if (typeof job !== 'object' || job === null) return digestOf({ ...rest, job: {} });
  const { number: _, ...about } = job as Readonly<Record<string, unknown>>;
  return digestOf({ ...rest, job: about });
}

/** Writes down that a revision of a job was acknowledged. */
export function noteRevision(
  ledger: Ledger,
  {
    number,
    revision,
    digest,
  }: { readonly number: number; readonly revision: number; readonly digest: string },
): void {
  const known = ledger.revisions.get(number) ?? new Map<number, string>();
  ledger.revisions.set(number, known);
  known.set(revision, digest);
  ledger.touched.add(number);
  ledger.acknowledged++;
}
