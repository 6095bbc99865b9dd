import type { ProblemDetails } from '../problems.ts';
import type { Services, Visitor } from '../services.ts';
import { setPassword } from './accounts.ts';
import { isPassword } from './passwords.ts';
import type { Throttle } from './throttle.ts';

/** What the change of one's own password ended in. */
export type OwnPassword =
  | { readonly ok: true }
  | { readonly ok: false; readonly waitS: number }
  | { readonly ok: false; readonly waitS?: undefined; readonly problem: ProblemDetails };

interface Wanted {
  readonly visitor: Visitor;
  readonly password: string;
  readonly newPassword: string;
}

/** Whoever finds an open browser must not be able to take the account over, so the old password is asked for. */
export async function changeOwnPassword(
  { store, throttle }: Pick<Services, 'store'> & { readonly throttle: Throttle },
  { visitor, password, newPassword }: Wanted,
): Promise<OwnPassword> {
  const { name, from } = visitor;
  const waitS = await throttle.try({ name, from });
  if (waitS !== undefined) return { ok: false, waitS };
  const account = await store.accounts.find(name);
  const matches = await isPassword(password, account?.passwordHash);
  if (matches === 'too-many-at-once') return { ok: false, waitS: 5 };
  if (!matches) {
    await store.deeds.add({ who: name, what: 'password-change-refused', about: 'wrong password', from });
    return {
      ok: false,
      problem: {
        status: 403,
        code: 'password-wrong',
        title: 'Password not changed',
        detail: 'The password until now is wrong.',
      },
    };
  }
  await throttle.succeeded({ name, from });
  const set = await setPassword(store, { name, password: newPassword });
  if (!set.ok) {
    const problems = [{ code: set.code, path: 'newPassword', says: set.says }];
    const problem = {
      status: 422,
      code: set.code,
      title: 'Password not changed',
      detail: set.says,
      problems,
    } as const;
    return { ok: false, problem };
  }
  await store.deeds.add({ who: name, what: 'password-set', about: 'own', from });
  return { ok: true };
}
