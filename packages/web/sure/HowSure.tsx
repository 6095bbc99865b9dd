import type { Doubts } from '@fettle/engine/doubt/doubtOf.ts';
import { doubtSaid } from '@fettle/engine/doubt/doubtSaid.ts';
import { engineEnglish } from '@fettle/engine/wording/english/english.ts';
import { word } from '@fettle/engine/wording/word.ts';
import type { PackedState } from '@fettle/job/packedStates.ts';
import type { AssessedJob } from '@fettle/workflows/assessJob.ts';
import { printer } from '@fettle/workflows/printing.ts';
import { doubtTable, rangedFigures } from '@fettle/workflows/report/doubt.ts';
import { lazy, Suspense } from 'react';
import type { Sureness } from '../computing/useDoubts.ts';
import { Tabled } from '../findings/Tabled.tsx';
import type { JobAtWork } from '../rooms/job/jobAtWork.ts';
import { fieldNaming } from './fieldNaming.ts';
import { MeasureNext } from './MeasureNext.tsx';

const RangesDrawn = lazy(() => import('./RangesDrawn.tsx'));

interface HowSureProps {
  readonly job: AssessedJob;
  readonly sureness: Sureness;
  readonly looked: PackedState;
  readonly work: JobAtWork;
}

function Sure({ doubts, ...shown }: Omit<HowSureProps, 'sureness'> & { readonly doubts: Doubts }) {
  const { work, looked } = shown;
  const job = { ...shown.job, doubts };
  const print = printer(work.system);
  const table = doubtTable(job, print);
  const says = doubtSaid(doubts, job.model, fieldNaming(work.readable))
    // What to measure next stands in a list of its own.
    .filter(({ code }) => code !== 'doubt.next')
    .map((one) => word(one, { language: engineEnglish, units: work.system }));
  return (
    <>
      {says.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {table === undefined ? null : (
        <Tabled table={table} caption={`Ranges of ${doubts.draws} draws of all that is not sure`} />
      )}
      <Suspense fallback={null}>
        <RangesDrawn figures={rangedFigures(job, print)} system={work.system} />
      </Suspense>
      <MeasureNext measurements={doubts.measureNext} model={job.model} looked={looked} work={work} />
    </>
  );
}

/** How sure the figures are, what makes them unsure, and what to measure next. */
export function HowSure({ sureness, ...shown }: HowSureProps) {
  return (
    <section aria-labelledby="how-sure" className="howsure">
      <h3 id="how-sure">How sure</h3>
      <p role="status" className="soft">
        {sureness === 'being-drawn'
          ? 'Ranges are being drawn; they come in a few seconds.'
          : sureness === 'not-drawn'
            ? 'No ranges could be drawn of this job.'
            : ''}
      </p>
      {typeof sureness === 'string' ? null : <Sure doubts={sureness} {...shown} />}
    </section>
  );
}
