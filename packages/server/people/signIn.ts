import type { Account } from '@fettle/store/contract/people.ts';
import type { Services } from '../services.ts';
import { isAccountName } from './accounts.ts';
import { isPassword } from './passwords.ts';
import { endSession, startSession } from './sessions.ts';
import type { Throttle } from './throttle.ts';

export type SignedIn =
  | { readonly ok: true; readonly token: string; readonly account: Account }
  | { readonly ok: false; readonly reason: 'wrong' }
  | { readonly ok: false; readonly reason: 'too-many'; readonly waitS: number };

export interface SignInAttempt {
  readonly name: string;
  readonly password: string;
  readonly from: string;
  /** Token of a session that this browser has already; it ends. */
  readonly before?: string | undefined;
}

type Needed = Pick<Services, 'store' | 'clock'>;

/** Under what name a try stands in the log: one that no account has may be a password typed in the wrong field. */
const loggedName = (account: Account | undefined): string => account?.name ?? 'unknown';

/** Looking at a password takes its time: one that was changed meanwhile, to keep somebody out, lets in no more. */
const standsStill = async ({ store }: Needed, { name, passwordHash }: Account): Promise<boolean> =>
  (await store.accounts.find(name))?.passwordHash === passwordHash;

/** Signs somebody in: a new session with a new token, whatever token was there before. */
export async function signIn(
  services: Needed & { readonly throttle: Throttle },
  attempt: SignInAttempt,
): Promise<SignedIn> {
  const { store, throttle } = services;
  const { from, password } = attempt;
  const name = attempt.name.trim().toLowerCase();
  const account = isAccountName(name) ? await store.accounts.find(name) : undefined;
  const who = loggedName(account);
  const waitS = await throttle.try({ name: isAccountName(name) ? name : 'unknown', from });
  if (waitS !== undefined) {
    if (await throttle.isNews(from)) await store.deeds.add({ who, what: 'sign-in-held-back', from });
    return { ok: false, reason: 'too-many', waitS };
  }
  const open = account?.closedAt === undefined ? account : undefined;
  const matches = await isPassword(password, open?.passwordHash);
  if (matches === 'too-many-at-once') return { ok: false, reason: 'too-many', waitS: 5 };
  if (!matches || open === undefined || !(await standsStill(services, open))) {
    const about =
      account === undefined ? 'no such account' : open === undefined ? 'account closed' : 'wrong password';
    await store.deeds.add({ who, what: 'sign-in-refused', about, from });
    return { ok: false, reason: 'wrong' };
  }
  await throttle.succeeded({ name, from });
  if (attempt.before !== undefined) await endSession(services, attempt.before);
  const token = await startSession(services, open.name);
  await store.deeds.add({ who, what: 'signed-in', from });
  return { ok: true, token, account: open };
}
