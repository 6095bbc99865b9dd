import type { JobDocument } from '@fettle/job/schema/job.ts';
import { stageAhead } from '@fettle/job/stageAhead.ts';
import type { JobStage } from '@fettle/job/stages.ts';

/** What comes next at each stage, and the command that helps with it, where one does. */
const steps: Readonly<Record<JobStage, (job: string) => string>> = {
  'taken-in': (job) =>
    `Test it as found and write the tests down: fettle open ${job} --out job.yaml, edit it, fettle import job.yaml.`,
  tested: (job) =>
    `Tear it down and map it: chambers, gaps, hoses. fettle check ${job} tells what is still assumed.`,
  mapped: (job) => `Look for a better packing: fettle plan ${job}.`,
  planned: () => 'Quote it (quote in the file) and have the owner agree (approval).',
  approved: () => 'Build it, then leak-test it.',
  built: () => 'Prove it: the same tests again, as left.',
  proven: () => 'Hand it back with a care plan.',
  'handed-back': () => 'Wait for the follow-up readings, then close the job.',
  closed: () => 'Nothing: the job is closed.',
};

/** The next thing to do with a job, and where the stage that it names lies behind its work. */
export const nextStep = (
  document: JobDocument,
  of: { readonly number: number; readonly putAway: boolean; readonly more: string },
): string => {
  const job = `${of.number}${of.more}`;
  if (of.putAway) return `Nothing: the job is put away. fettle bring-back ${job} takes it up again.`;
  const named = document.job?.stage ?? 'taken-in';
  const shown = stageAhead(document);
  if (shown === undefined) return steps[named](job);
  return `${steps[shown](job)} The job still says ${named} (job.stage), though what it holds shows ${shown}.`;
};
