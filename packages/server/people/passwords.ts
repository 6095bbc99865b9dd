import { hash, type Options, verify } from '@node-rs/argon2';

/**
 * Argon2id with 46 MiB and two passes: above the least that OWASP's password storage sheet gives (19 MiB, two
 * passes; from memory), some tenths of a second on a small machine.
 */
const cost: Options = { memoryCost: 47_104, timeCost: 2, parallelism: 1 };

const least = 12;
const most = 200;
/** Passwords on the lists that guessers begin with are mostly words like these with something added. */
const worn = [
  'password',
  'passwort',
  'qwerty',
  'qwertz',
  'azerty',
  'asdfgh',
  'zxcvbn',
  'letmein',
  'welcome',
  'iloveyou',
  'aquarium',
  'fettle',
  'technician',
  'filter',
  'secret',
  'admin',
  'changeme',
  'abcdefghij',
  '1234567890',
  '0987654321',
];
/** What must be left of a password without the words that everybody tries. */
const leastOwn = 8;
const leastDifferent = 5;

/** One form for all ways of writing the same letters. */
const normal = (password: string): string => password.normalize('NFC');

/** What is left when the words that a guesser tries first are taken out. */
const without = (password: string, words: readonly string[]): string =>
  words.reduce((rest, word) => rest.replaceAll(word, ''), password.toLowerCase().replace(/[\s._-]/g, ''));

/** Why a password does not do for a name, one sentence; undefined where it does. */
export function passwordFault(password: string, name: string): string | undefined {
  const letters = [...normal(password)];
  if (letters.length < least || letters.length > most) {
    return `The password has ${letters.length} characters; ${least} to ${most} are allowed.`;
  }
  if (new Set(letters).size < leastDifferent) {
    return `The password repeats a few characters; at least ${leastDifferent} different ones are needed.`;
  }
  if ([...without(normal(password), [name.toLowerCase(), ...worn])].length < leastOwn) {
    return `The password is little more than the name or a word that everybody tries; at least ${leastOwn} characters beside that are needed.`;
  }
  return undefined;
}

/** At most so many at once: each takes 46 MiB and a core. */
const mostAtOnce = 2;
/** At most so many wait. */
const mostWaiting = 30;

const waiting: (() => void)[] = [];
let running = 0;

/** Runs one after another what is costly; undefined where too many wait already. */
async function inTurn<Result>(run: () => Promise<Result>): Promise<Result | undefined> {
  if (waiting.length >= mostWaiting) return undefined;
  if (running >= mostAtOnce) await new Promise<void>((resolve) => waiting.push(resolve));
  running += 1;
  try {
    return await run();
  } finally {
    running -= 1;
    waiting.shift()?.();
  }
}

/** The hash to keep of a password. */
export const hashPassword = (password: string): Promise<string> => hash(normal(password), cost);

/** A hash that no password has, for names that do not exist: the answer takes as long as for one that does. */
let nobody: Promise<string> | undefined;
const hashOfNobody = (): Promise<string> => {
  nobody ??= hashPassword(crypto.randomUUID());
  return nobody;
};

/** Whether a password is the one of a hash; takes as long without a hash, and is then false. */
export async function isPassword(
  password: string,
  passwordHash: string | undefined,
): Promise<boolean | 'too-many-at-once'> {
  // Longer ones cannot have been set, and need not be worked through.
  if ([...normal(password)].length > most) return false;
  const known = passwordHash ?? (await hashOfNobody());
  const matches = await inTurn(() => verify(known, normal(password)));
  return matches === undefined ? 'too-many-at-once' : matches && passwordHash !== undefined;
}
