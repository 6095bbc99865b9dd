import type { JobLine } from '@fettle/store/contract/jobs.ts';

interface Next {
  readonly says: string;
  /** Part of the job's room in which it is done. */
  readonly part: string;
}

/** What comes next at each stage. */
const nextSteps: Readonly<Record<string, Next>> = {
  'taken-in': { says: 'test it as found', part: 'as-found' },
  tested: { says: 'map it', part: 'map' },
  mapped: { says: 'plan the re-pack', part: 're-pack' },
  planned: { says: 'have it approved', part: 'quote' },
  approved: { says: 'build it', part: 're-pack' },
  built: { says: 'test it as left', part: 'as-found?state=as-left' },
  proven: { says: 'hand it back', part: 'as-left' },
};

/** The next thing to do with a job: by what it holds where that is ahead of the stage that it names. */
export const nextOf = ({
  stage = 'taken-in',
  stageAhead,
}: Pick<JobLine, 'stage' | 'stageAhead'>): Next | undefined => nextSteps[stageAhead ?? stage];
