import { expect } from 'vitest';
import type { Accounts } from '../contract/people.ts';
import { by, type Case, firstMoment, jobOf } from './bench.ts';

const later = '2026-11-02T10:00:00.000Z';

const addTamsel = (accounts: Accounts): Promise<boolean> =>
  accounts.add({ name: 'tamsel', role: 'helper', passwordHash: 'hash' });

/** Accounts, who is signed in, and links of owners. */
export const peopleCases: readonly Case[] = [
  [
    'an account is there once; its name is never given a second time',
    async ({ store: { accounts } }) => {
      expect(await addTamsel(accounts)).toBe(true);
      expect(await accounts.add({ name: 'tamsel', role: 'technician', passwordHash: 'other' })).toBe(false);
      const account = { name: 'tamsel', role: 'helper', passwordHash: 'hash', createdAt: firstMoment };
      expect(await accounts.find('tamsel')).toEqual(account);
      await accounts.change('tamsel', { close: true });
      expect(await addTamsel(accounts)).toBe(false);
      expect(await accounts.list()).toEqual([{ ...account, closedAt: firstMoment }]);
      expect(await accounts.find('nobody')).toBeUndefined();
    },
  ],
  [
    'role and password change; an account that is not there, or closed, does not',
    async ({ store: { accounts } }) => {
      await addTamsel(accounts);
      expect(await accounts.change('tamsel', { role: 'reader' })).toBe(true);
      expect(await accounts.change('tamsel', { passwordHash: 'new' })).toBe(true);
      expect(await accounts.find('tamsel')).toMatchObject({ role: 'reader', passwordHash: 'new' });
      expect(await accounts.change('nobody', { role: 'reader' })).toBe(false);
      await accounts.change('tamsel', { close: true });
      expect(await accounts.change('tamsel', { role: 'technician' })).toBe(false);
    },
  ],
  [
    'a session lasts to its end, which can be moved while it lasts',
    async ({ store: { accounts }, wait }) => {
      await addTamsel(accounts);
      await accounts.startSession({ tokenHash: 'token', account: 'tamsel', endsAt: later });
      expect(await accounts.session('token')).toEqual({
        session: { account: 'tamsel', startedAt: firstMoment, endsAt: later },
        account: await accounts.find('tamsel'),
      });
      expect(await accounts.session('other')).toBeUndefined();
      await accounts.extendSession({ tokenHash: 'token', endsAt: '2026-11-02T11:00:00.000Z' });
      wait(3_601);
      expect((await accounts.session('token'))?.session.endsAt).toBe('2026-11-02T11:00:00.000Z');
      wait(3_600);
      expect(await accounts.session('token')).toBeUndefined();
      await accounts.extendSession({ tokenHash: 'token', endsAt: '2027-01-01T00:00:00.000Z' });
      expect(await accounts.session('token')).toBeUndefined();
    },
  ],
  [
    'a session ends when it is ended, and with every change of its account',
    async ({ store: { accounts } }) => {
      await addTamsel(accounts);
      const start = (tokenHash: string) =>
        accounts.startSession({ tokenHash, account: 'tamsel', endsAt: later });
      await start('one');
      await start('two');
      await accounts.endSession('one');
      expect(await accounts.session('one')).toBeUndefined();
      expect(await accounts.session('two')).toBeDefined();
      await accounts.change('tamsel', { passwordHash: 'new' });
      expect(await accounts.session('two')).toBeUndefined();
      await start('three');
      await accounts.change('tamsel', { close: true });
      expect(await accounts.session('three')).toBeUndefined();
    },
  ],
  [
    'a link leads to its job until its end or until it is withdrawn',
    async ({ store: { jobs, ownerLinks }, wait }) => {
      await jobs.create({ document: jobOf(), by });
      await jobs.create({ document: jobOf(), by });
      const lasting = await ownerLinks.add({ job: 1, tokenHash: 'lasting', by });
      wait(1);
      const short = await ownerLinks.add({ job: 1, tokenHash: 'short', by, endsAt: later });
      expect(lasting).toEqual({
        id: expect.stringMatching(/^[a-z0-9]{16}$/),
        job: 1,
        madeAt: firstMoment,
        madeBy: by,
      });
      expect(await ownerLinks.list(1)).toEqual([lasting, short]);
      expect(await ownerLinks.list(2)).toEqual([]);
      expect(await ownerLinks.find('short')).toEqual(short);
      expect(await ownerLinks.find('none')).toBeUndefined();
      wait(3_600);
      expect(await ownerLinks.find('short')).toBeUndefined();
      expect(await ownerLinks.withdraw({ job: 2, id: lasting.id, by })).toBe(false);
      expect(await ownerLinks.find('lasting')).toEqual(lasting);
      expect(await ownerLinks.withdraw({ job: 1, id: lasting.id, by })).toBe(true);
      expect(await ownerLinks.withdraw({ job: 1, id: lasting.id, by })).toBe(false);
      expect(await ownerLinks.find('lasting')).toBeUndefined();
      expect((await ownerLinks.list(1))[0]?.withdrawnAt).toBe('2026-11-02T10:00:01.000Z');
    },
  ],
];
