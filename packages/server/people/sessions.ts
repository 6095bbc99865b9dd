import { StoreFailure } from '@fettle/store/contract/failure.ts';
import type { Account } from '@fettle/store/contract/people.ts';
import type { Services } from '../services.ts';
import { hashOfToken, looksLikeToken, newToken } from './token.ts';

/** A session ends when it is not used for so long: a working day. */
export const idleS = 12 * 3600;
/** A session ends at the latest so long after the sign-in. */
export const longestSessionS = 30 * 24 * 3600;
/** The end is put off only when this much of the idle time has gone, so that not every request writes. */
const renewAfterS = 3600;

type Needed = Pick<Services, 'store' | 'clock'>;

const after = (from: Date, seconds: number): Date => new Date(from.getTime() + seconds * 1000);

/** Starts a session with a token that never was anywhere before, and gives the token. */
export async function startSession({ store, clock }: Needed, account: string): Promise<string> {
  const token = newToken();
  const endsAt = after(clock(), idleS).toISOString();
  await store.accounts.startSession({ tokenHash: hashOfToken(token), account, endsAt });
  return token;
}

/** Puts a session's end off. Where that cannot be written, the session stays as it is: whoever only reads is answered. */
async function putOff(
  { store }: Pick<Services, 'store'>,
  end: { readonly tokenHash: string; readonly endsAt: string },
): Promise<void> {
  try {
    await store.accounts.extendSession(end);
  } catch (error) {
    if (!(error instanceof StoreFailure)) throw error;
  }
}

/** The open account whose session a token is, and puts off the session's end. */
export async function accountOfToken({ store, clock }: Needed, token: string): Promise<Account | undefined> {
  if (!looksLikeToken(token)) return undefined;
  const tokenHash = hashOfToken(token);
  const found = await store.accounts.session(tokenHash);
  if (found === undefined) return undefined;
  const now = clock();
  const last = after(new Date(found.session.startedAt), longestSessionS);
  if (now >= last) return undefined;
  const leftS = (Date.parse(found.session.endsAt) - now.getTime()) / 1000;
  if (leftS < idleS - renewAfterS) {
    const endsAt = new Date(Math.min(after(now, idleS).getTime(), last.getTime())).toISOString();
    if (endsAt > found.session.endsAt) await putOff({ store }, { tokenHash, endsAt });
  }
  return found.account;
}

/** Ends the session of a token; nothing where there is none. */
export async function endSession({ store }: Pick<Services, 'store'>, token: string): Promise<void> {
  if (looksLikeToken(token)) await store.accounts.endSession(hashOfToken(token));
}
