import type { Finding } from '@fettle/engine/assessment/assessment.ts';
import { placeName } from '@fettle/engine/assessment/placeName.ts';
import type { AssessedJob } from '@fettle/workflows/assessJob.ts';
import { printer } from '@fettle/workflows/printing.ts';
import { filterTitle, summarySentences } from '@fettle/workflows/report/summary.ts';
import { useState } from 'react';
import { FindingEntry } from '../../../findings/FindingEntry.tsx';
import { PointedSection } from '../../../findings/PointedSection.tsx';
import { ProblemList } from '../../../findings/ProblemList.tsx';
import { isEmpty, spotsOf } from '../../../findings/spots.ts';
import { Working } from '../../../findings/Working.tsx';
import type { JobAtWork } from '../jobAtWork.ts';

/** Findings by their place in the list: two may say the same of two places. */
interface Pointing {
  readonly pointed: number | undefined;
  readonly shown: number | undefined;
}

const placeWords: Readonly<Record<string, string>> = {
  pump: 'the pump',
  intake: 'the intake',
  outlet: 'the outlet',
  packing: 'the chambers',
};

const placeInWords = ({ model, assessment }: AssessedJob, place: string): string =>
  placeWords[place] ?? placeName(model, assessment, place);

/** What is said first of the filter, in the words of the command. */
function Summary({ job, work }: { readonly job: AssessedJob; readonly work: JobAtWork }) {
  const print = printer(work.system);
  return (
    <section aria-label="In short" className="inshort">
      <p>
        <strong>As found: {filterTitle(job, print)}</strong>
      </p>
      {summarySentences(job, print).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </section>
  );
}

function Waiting({ work }: { readonly work: JobAtWork }) {
  const { problems, whole, isBehind } = work.figures;
  if (problems.length > 0)
    return whole === undefined ? null : (
      <p role="status" className="marked">
        The figures below are of the job as it was before these fields.
      </p>
    );
  return (
    <p role="status" className="soft noprint">
      {whole === undefined
        ? 'The figures are being computed; they come in a few seconds.'
        : isBehind
          ? 'Something was changed: figures are being computed anew.'
          : ''}
    </p>
  );
}

/** What is wrong with the filter, worst first, beside the drawing in which each points at its place. */
export function Findings({ work }: { readonly work: JobAtWork }) {
  const { figures, state, system } = work;
  const { whole, quick, problems } = figures;
  const [{ pointed, shown }, setPointing] = useState<Pointing>({ pointed: undefined, shown: undefined });
  const section = quick && { places: quick.places, layout: quick.assessment.layout };
  const findings: readonly Finding[] = whole?.findings ?? [];
  const at = pointed ?? shown;
  const looked = at === undefined ? undefined : findings[at];
  const placeOf = ({ place }: Finding): string | undefined =>
    whole === undefined || section === undefined || isEmpty(spotsOf(section, place))
      ? undefined
      : placeInWords(whole, place);
  return (
    <div className="part beside">
      <PointedSection
        work={work}
        spots={looked && section && spotsOf(section, looked.place)}
        shown={shown === undefined ? undefined : findings[shown]}
        leave={() => setPointing({ pointed: undefined, shown: undefined })}
      />
      <div>
        <h2>Findings</h2>
        {problems.length === 0 ? null : (
          <ProblemList number={state.number} document={state.document} problems={problems} />
        )}
        <Waiting work={work} />
        {whole === undefined ? null : (
          <>
            <Summary job={whole} work={work} />
            <h3>Worst first</h3>
            <ol className="findings">
              {findings.map((finding, index) => (
                <FindingEntry
                  key={`${finding.id} ${finding.place} ${finding.says}`}
                  finding={finding}
                  system={system}
                  place={placeOf(finding)}
                  isShown={shown === index}
                  point={(isOn) =>
                    setPointing((before) => ({ ...before, pointed: isOn ? index : undefined }))
                  }
                  show={() => setPointing({ pointed: undefined, shown: shown === index ? undefined : index })}
                />
              ))}
            </ol>
            <Working job={whole} system={system} />
          </>
        )}
      </div>
    </div>
  );
}
