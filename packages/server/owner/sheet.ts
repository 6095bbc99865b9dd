import { familyById } from '@fettle/engine/families/families.ts';
import { printQuantity } from '@fettle/engine/quantities/printQuantity.ts';
import { quoteTotals } from '@fettle/job/quote/quoteTotals.ts';
import type { JobDocument } from '@fettle/job/schema/job.ts';
import type { StoredJob } from '@fettle/store/contract/jobs.ts';
import type { Reading } from '@fettle/store/contract/readings.ts';
import { type AssessmentResult, assessmentSchema } from '@fettle/workflows/results/assessment.ts';
import { UnreadableDocument } from '../computation/computation.ts';
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

const figuresOf = (result: AssessmentResult): Figures => ({
  flow: result.dutyPoint.flow,
  turnover: result.turnover,
  carries: result.carries.feed,
  served: result.carries.served.normal,
  cleaningInterval: result.cleaningInterval,
});

/** The assessment of a job, kept by revision; undefined where its document reads no more. */
export async function assessmentOf(
  { computation }: Pick<Services, 'computation'>,
  { document, number, revision }: StoredJob,
): Promise<AssessmentResult | undefined> {
  try {
    const text = await computation.assessmentText({ document, key: { job: number, revision } });
    return assessmentSchema.parse(JSON.parse(text));
  } catch (error) {
    if (error instanceof UnreadableDocument) return undefined;
    throw error;
  }
}

const quoteOf = (document: JobDocument): Pick<Sheet, 'quote'> => {
  const { quote } = document;
  const totals = quoteTotals(document);
  if (quote === undefined || totals === undefined) return {};
  const sum = (value: number): string =>
    printQuantity({ value, dimension: 'money', currency: totals.currency, system: 'metric' });
  const line = (says: string, price: number | undefined) => ({
    says,
    ...(price === undefined ? {} : { price: sum(price) }),
  });
  return {
    quote: {
      lines: [
        ...(quote.labour ?? []).map(({ work }, index) => line(work, totals.labourLines[index])),
        ...(quote.parts ?? []).map(({ part, count }, index) =>
          line(count === undefined || count === 1 ? part : `${count} × ${part}`, totals.partLines[index]),
        ),
      ],
      ...(totals.missing.length === 0 ? { total: sum(totals.total) } : {}),
      ...(quote.validUntil === undefined ? {} : { validUntil: quote.validUntil }),
      ...(quote.warranty === undefined ? {} : { warranty: quote.warranty }),
    },
  };
};

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
 * somebody decides otherwise: no notes, no contact data, no prices but those of the quote.
 */
export async function sheetOf(
  services: Pick<Services, 'computation' | 'store'>,
  job: StoredJob,
): Promise<Sheet> {
  const { document, number } = job;
  const family = familyById(document.filter.family);
  const result = await assessmentOf(services, job);
  const readings = await services.store.readings.list(number);
  return {
    ...aboutOf(document),
    filter: document.filter.name ?? family?.name ?? document.filter.family,
    family: family?.name ?? document.filter.family,
    ...(result === undefined ? {} : { figures: figuresOf(result) }),
    cautions: [...usualCautions, ...(family?.forbidden ?? [])],
    ...quoteOf(document),
    readings: readings.map(shownReading),
  };
}
