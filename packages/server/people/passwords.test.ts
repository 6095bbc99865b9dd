import { describe, expect, it } from 'vitest';
import { testPassword } from '../testing/testServer.ts';
import { hashPassword, isPassword, passwordFault } from './passwords.ts';

describe('passwords', () => {
  it('are kept as Argon2id, above the least that is advised, salted', async () => {
    const [one, other] = await Promise.all([hashPassword(testPassword), hashPassword(testPassword)]);
    expect(one).toMatch(/^\$argon2id\$v=19\$m=47104,t=2,p=1\$/);
    expect(one).not.toBe(other);
    expect(await isPassword(testPassword, one)).toBe(true);
    expect(await isPassword(`${testPassword} `, one)).toBe(false);
    expect(await isPassword(testPassword, undefined)).toBe(false);
  });

  it('are the same in either way of writing an accent', async () => {
    const kept = await hashPassword('caf\u00e9 by the weir');
    expect(await isPassword('cafe\u0301 by the weir', kept)).toBe(true);
  });

  it.each([
    ['short', '12 to 200'],
    ['x'.repeat(201), '12 to 200'],
    ['abababababab', 'different ones'],
    ['Password1234', 'everybody tries'],
    ['passwordpassword1', 'everybody tries'],
    ['ines-ines-ines-1', 'everybody tries'],
    ['1234567890123', 'everybody tries'],
    ['qwerty-qwerty-12', 'everybody tries'],
  ])('are refused where they are easy to guess: %s', (password, says) => {
    expect(passwordFault(password, 'ines')).toContain(says);
  });

  it('may be of any letters, up to 200', () => {
    expect(passwordFault(testPassword, 'ines')).toBeUndefined();
    expect(passwordFault('🐟🐠🦐🐌🌿💧🪨🫧🐟🐠🦐🐌', 'ines')).toBeUndefined();
    expect(passwordFault('a b c d e f '.repeat(16), 'ines')).toBeUndefined();
  });
});
