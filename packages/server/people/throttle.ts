import { countedAs } from '../guard/address.ts';
import { counterOf } from '../guard/limits.ts';

/**
 * How guessing is slowed. Every try is counted before the password is looked at, so that many at once gain nothing.
 *
 * - One address against one account: 5 tries in 15 minutes. This is what a guesser meets first.
 * - One address against all accounts: 30 tries in 15 minutes.
 * - All addresses together against one account: 60 tries an hour; then only addresses from which the account was
 *   signed in to before may try. Whoever guesses from elsewhere can so keep new addresses out for an hour, and
 *   never the owner of the account from the usual place. Nothing is locked for ever.
 *
 * The numbers are of our own: a person mistypes some times, and 60 guesses an hour against a password that passed
 * our rule lead nowhere.
 */
export interface Throttle {
  /** Counts a try. Gives the seconds to wait where it is one too many. */
  try(of: { readonly name: string; readonly from: string }): Promise<number | undefined>;
  /** Whether that somebody is held back is worth a line in the log: once in a while for each address. */
  isNews(from: string): Promise<boolean>;
  /** The try was right: its address is known for the account and starts anew. */
  succeeded(of: { readonly name: string; readonly from: string }): Promise<void>;
}

const quarterHourS = 15 * 60;
/** Known pairs of account and address; the oldest is forgotten first. */
const mostKnown = 2000;

/** Limits on sign-ins, in memory. */
export function throttle(): Throttle {
  const pairs = counterOf({ requests: 5, perS: quarterHourS });
  const addresses = counterOf({ requests: 30, perS: quarterHourS });
  const accounts = counterOf({ requests: 60, perS: 3600 });
  const news = counterOf({ requests: 1, perS: quarterHourS });
  const known = new Set<string>();
  const keyOf = (name: string, from: string): string => `${countedAs(from)} ${name}`;
  return {
    try: async ({ name, from }) => {
      const key = keyOf(name, from);
      const ownWait = (await addresses.count(countedAs(from))) ?? (await pairs.count(key));
      return ownWait === undefined && !known.has(key) ? accounts.count(name) : ownWait;
    },
    isNews: async (from) => (await news.count(countedAs(from))) === undefined,
    succeeded: async ({ name, from }) => {
      const key = keyOf(name, from);
      known.delete(key);
      known.add(key);
      if (known.size > mostKnown) known.delete([...known][0] ?? '');
      await pairs.forget(key);
    },
  };
}
