import { useState } from 'react';
import { goBack } from '../client/history.ts';
import { Refused } from '../client/request.ts';
import type { JobSession } from '../session/jobSession.ts';

/** Going back to an earlier revision, and how that ended. */
export interface GoingBack {
  readonly told: string;
  readonly isFault: boolean;
  readonly isGoing: boolean;
  readonly to: (revision: number) => void;
}

const told = (error: unknown): string => {
  if (error instanceof Refused && error.problem.code === 'lost-race')
    return 'Somebody else changed the job in this moment, so nothing was gone back to. Look at what they changed, then try again.';
  return error instanceof Error ? error.message : String(error);
};

/** Takes an earlier revision up again. What was typed and not written yet is written first, so that it is not lost. */
async function takeUp(session: JobSession, revision: number): Promise<string> {
  await session.flush();
  const { standing, revision: base } = session.state();
  if (standing.is !== 'saved')
    throw new Error('What was changed here is not in the records yet: mend or wait for that first.');
  const made = await goBack(session.state().number, { to: revision, base });
  await session.lookForNews(`go back to revision ${revision}`);
  return made === base
    ? `The job says already what revision ${revision} says.`
    : `The job says again what revision ${revision} says; this is revision ${made}. Nothing is lost: you can go back to revision ${base} in the same way.`;
}

export function useGoingBack(session: JobSession): GoingBack {
  const [ended, setEnded] = useState({ told: '', isFault: false });
  const [isGoing, setGoing] = useState(false);
  const to = (revision: number): void => {
    setGoing(true);
    takeUp(session, revision)
      .then(
        (says) => setEnded({ told: says, isFault: false }),
        (error: unknown) => setEnded({ told: told(error), isFault: true }),
      )
      .finally(() => setGoing(false));
  };
  return { ...ended, isGoing, to };
}
