import type { Finding } from '@fettle/engine/assessment/assessment.ts';
import { placeName } from '@fettle/engine/assessment/placeName.ts';
import type { PackedState } from '@fettle/job/packedStates.ts';
import type { AssessedJob } from '@fettle/workflows/assessJob.ts';
import { printer } from '@fettle/workflows/printing.ts';
import { filterTitle, summarySentences } from '@fettle/workflows/report/summary.ts';
import { type Dispatch, type SetStateAction, useState } from 'react';
import { useSearchParams } from 'wouter';
import { useDoubts } from '../../../computing/useDoubts.ts';
import type { Quick } from '../../../computing/useQuick.ts';
import { useWhole, type Whole } from '../../../computing/useWhole.ts';
import { FindingEntry } from '../../../findings/FindingEntry.tsx';
import { PointedSection } from '../../../findings/PointedSection.tsx';
import { ProblemList } from '../../../findings/ProblemList.tsx';
import { StateChoice } from '../../../findings/StateChoice.tsx';
import { type DrawnSection, isEmpty, spotsOf } from '../../../findings/spots.ts';
import { Working } from '../../../findings/Working.tsx';
import { asLabel } from '../../../forms/labels.ts';
import { DirtOf } from '../../../plots/DirtOf.tsx';
import { WaterPlots } from '../../../plots/WaterPlots.tsx';
import { HowSure } from '../../../sure/HowSure.tsx';
import type { JobAtWork } from '../jobAtWork.ts';
import { lookedState, stateInWords, statesOf } from '../lookedState.ts';

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

/** The state of the filter that figures are of. */
const stateOf = ({ model }: AssessedJob): PackedState => model.packedState ?? 'as-found';

/** What is said first of the filter, in the words of the command. */
function Summary({ job, work }: { readonly job: AssessedJob; readonly work: JobAtWork }) {
  const print = printer(work.system);
  const state = stateInWords(stateOf(job));
  return (
    <section aria-label="In short" className="inshort">
      <p>
        <strong>
          {asLabel(state)}: {filterTitle(job, print)}
        </strong>
      </p>
      {summarySentences(job, print).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </section>
  );
}

function Waiting({
  problems,
  whole,
  isBehind,
  isPart,
}: Pick<Quick, 'problems'> & Whole & { readonly isPart: boolean }) {
  if (problems.length > 0)
    return whole === undefined ? null : (
      <p role="status" className="marked">
        {isPart
          ? 'The figures below are without the part of the job in which something is wrong.'
          : 'The figures below are of the job as it was before these fields.'}
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

interface ListProps {
  readonly job: AssessedJob;
  readonly work: JobAtWork;
  readonly section: DrawnSection | undefined;
  readonly pointing: Pointing;
  readonly setPointing: Dispatch<SetStateAction<Pointing>>;
}

function FindingList({ job, work, section, pointing: { shown }, setPointing }: ListProps) {
  const placeOf = ({ place }: Finding): string | undefined =>
    section === undefined || isEmpty(spotsOf(section, place)) ? undefined : placeInWords(job, place);
  return (
    <ol className="findings">
      {job.findings.map((finding, index) => (
        <FindingEntry
          key={`${finding.id} ${finding.place} ${finding.says}`}
          finding={finding}
          system={work.system}
          place={placeOf(finding)}
          isShown={shown === index}
          point={(isOn) => setPointing((before) => ({ ...before, pointed: isOn ? index : undefined }))}
          show={() => setPointing({ pointed: undefined, shown: shown === index ? undefined : index })}
        />
      ))}
    </ol>
  );
}

const nowhere: Pointing = { pointed: undefined, shown: undefined };

/** What is wrong with the filter, worst first, beside the drawing in which each points at its place. */
export function Findings({ work }: { readonly work: JobAtWork }) {
  const { figures, state, system, readable } = work;
  const { quick, problems } = figures;
  const [asked] = useSearchParams();
  const looked = lookedState(readable, asked.get('state'));
  const { whole: computed, isBehind } = useWhole(readable, { system, state: looked });
  // Those of the state before are no figures of this one.
  const whole = computed && stateOf(computed) === looked ? computed : undefined;
  const sureness = useDoubts(readable, looked, whole !== undefined && !isBehind);
  const [pointing, setPointing] = useState(nowhere);
  const section = quick && { places: quick.places, layout: quick.assessment.layout };
  const finding = (index: number | undefined): Finding | undefined =>
    index === undefined ? undefined : whole?.findings[index];
  const pointedAt = finding(pointing.pointed ?? pointing.shown);
  return (
    <div className="part">
      {problems.length === 0 ? null : (
        <>
          <h2 className="hidden">Before the findings</h2>
          <ProblemList number={state.number} document={state.document} problems={problems} />
        </>
      )}
      <div className="beside">
        <PointedSection
          work={work}
          spots={pointedAt && section && spotsOf(section, pointedAt.place)}
          shown={finding(pointing.shown)}
          leave={() => setPointing(nowhere)}
        />
        <div>
          <h2>Findings, {stateInWords(looked)}</h2>
          <StateChoice number={state.number} states={statesOf(readable)} looked={looked} />
          <Waiting
            problems={problems}
            whole={whole}
            isBehind={isBehind}
            isPart={readable !== state.document}
          />
          {whole === undefined ? null : (
            <>
              <Summary
                job={typeof sureness === 'string' ? whole : { ...whole, doubts: sureness }}
                work={work}
              />
              <h3>Worst first</h3>
              <FindingList {...{ job: whole, work, section, pointing, setPointing }} />
              <HowSure {...{ job: whole, sureness, looked, work }} />
              <Working job={whole} system={system} />
            </>
          )}
        </div>
      </div>
      {whole === undefined ? null : (
        <>
          <WaterPlots whole={whole} system={system} />
          <DirtOf document={readable} state={looked} name={stateInWords(looked)} />
        </>
      )}
    </div>
  );
}
