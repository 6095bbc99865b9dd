import { familyById } from '@fettle/engine/families/families.ts';
import { lastTrueState } from '@fettle/job/packedStates.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { StoredJob } from '@fettle/store/contract/jobs.ts';
import type { Reading } from '@fettle/store/contract/readings.ts';
import { type AssessmentResult, assessmentSchema } from '@fettle/workflows/results/assessment.ts';
import { UnreadableDocument } from '../computation/computation.ts';
import { quoteOf } from '../pages/quote.ts';
import type { Services } from '../services.ts';
import type { Sheet } from './schemas.ts';

/** Common practice, no source: what holds for every filter that bacteria live in. */
const usualCautions: readonly string[] = [
  'Before a hand goes in, pull the plug of everything in the tank; a switch is not enough. Leave wiring to a licensed electrician.',
  'Rinse what is in it in water that was taken from the tank, not under the tap.',
  'Never replace everything in it at once: most of the bacteria go with it.',
  'After a power cut of some hours, open and rinse it before it runs again.',
];

type Figures = NonNullable<Sheet['figures']>;

const figuresOf = (result: AssessmentResult, document: JobDocument): Figures => ({
  state: lastTrueState(document),
  flow: result.dutyPoint.flow,
  turnover: result.turnover,
  carries: result.carries.feed,
  served: result.carries.served.normal,
  cleaningInterval: result.cleaningInterval,
});

/** The assessment of a job as left, else as found, kept by revision; undefined where its document reads no more. */
export async function assessmentOf(
  { computation }: Pick<Services, 'computation'>,
  { document, number, revision }: StoredJob,
): Promise<AssessmentResult | undefined> {
  try {
    const state = lastTrueState(document);
    const text = await computation.assessmentText({ document, state, key: { job: number, revision } });
    return assessmentSchema.parse(JSON.parse(text));
  } catch (error) {
    if (error instanceof UnreadableDocument) return undefined;
    throw error;
  }
}

/** A reading as the owner sees it: by whom in the workshop it was entered is not told. */
export const shownReading = ({ kind, day, value, note, enteredBy }: Reading): Sheet['readings'][number] => ({
  kind,
  day,
  value,
  note,
  by: enteredBy === 'owner' ? 'owner' : 'workshop',
});

/** What is said of the record itself. */
const aboutOf = ({ job }: JobDocument): Partial<Sheet> => ({
  ...(job?.title === undefined ? {} : { title: job.title }),
  ...(job?.stage === undefined ? {} : { stage: job.stage }),
  ...(job?.received === undefined ? {} : { received: job.received }),
  ...(job?.promised === undefined ? {} : { promised: job.promised }),
});

/**
 * What an owner may see of a job. Each thing is named here, so that a new field of the document stays inside until
 * somebody decides otherwise: no notes, no contact data, no prices but those of the quote. (The write-up, to which the
 * page leads, tells what media and parts cost.)
 */
export async function sheetOf(
  services: Pick<Services, 'computation' | 'store'>,
  job: StoredJob,
): Promise<Sheet> {
  const { document, number } = job;
  const family = familyById(document.filter.family);
  const result = await assessmentOf(services, job);
  const readings = await services.store.readings.list(number);
  const quote = quoteOf(document);
  return {
    ...aboutOf(document),
    filter: document.filter.name ?? family?.name ?? document.filter.family,
    family: family?.name ?? document.filter.family,
    ...(result === undefined ? {} : { figures: figuresOf(result, document) }),
    cautions: [...usualCautions, ...(family?.forbidden ?? [])],
    ...(quote === undefined ? {} : { quote }),
    readings: readings.map(shownReading),
  };
}
