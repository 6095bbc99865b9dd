import { userInfo } from 'node:os';

/** What this machine's user goes by in the history of the records: 1 to 40 characters. */
export const machineUser = (): string => {
  try {
    return userInfo().username.slice(0, 40) || 'user';
  } catch {
    // A user without an entry on this machine, as in some containers.
    return 'user';
  }
};
