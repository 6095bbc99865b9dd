import { useEffect, useMemo, useRef } from 'react';
import { Link, useLocation, useSearchParams } from 'wouter';
import { useSystem } from '../../app/preferences.ts';
import { useAlike } from '../../computing/useAlike.ts';
import type { Quick } from '../../computing/useQuick.ts';
import { JobForm } from '../../forms/JobForm.tsx';
import { valueAt } from '../../forms/places.ts';
import { useFieldInAddress } from '../../forms/useFieldInAddress.ts';
import { type LaterField, problemsIn } from '../../mending/readablePart.ts';
import { useReadableQuick } from '../../mending/useReadable.ts';
import { WrongLaterState } from '../../mending/WrongLaterState.tsx';
import type { JobSession, SessionState } from '../../session/jobSession.ts';
import { useSessionState } from '../../session/useJobSession.ts';
import { Conflict, conflictName } from './Conflict.tsx';
import type { JobAtWork } from './jobAtWork.ts';
import { lookedState } from './lookedState.ts';
import { type JobPart, jobParts } from './parts.ts';
import { Standing } from './Standing.tsx';
import { useLeftBehind } from './useLeftBehind.ts';

const titleOf = ({ document, number }: SessionState): string =>
  String(valueAt(document, ['job', 'title']) ?? valueAt(document, ['filter', 'name']) ?? `Job ${number}`);

/** Ctrl or ⌘ with Z undoes, with Shift or Y does again, except where text is being typed. */
function useUndoKeys(session: JobSession): void {
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const inText = event.target instanceof HTMLElement && event.target.matches('input, textarea');
      if (inText) return;
      const key = event.key.toLowerCase();
      if (key !== 'z' && key !== 'y') return;
      event.preventDefault();
      if (key === 'y' || event.shiftKey) session.redo();
      else session.undo();
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [session]);
}

/** The rail: which part of the work is shown, and what the job still lacks. */
function Rail({ number, part, wrong }: { number: number; part: string; wrong: number }) {
  const rail = useRef<HTMLElement>(null);
  // On a narrow screen the parts stand beside one another in a row that is moved; the part that is shown is in sight.
  // biome-ignore lint/correctness/useExhaustiveDependencies: another part is marked then
  useEffect(() => {
    const here = rail.current?.querySelector<HTMLElement>('[aria-current]');
    const row = here?.closest('ol');
    if (!here || !row) return;
    row.scrollLeft = here.offsetLeft - row.offsetLeft - (row.clientWidth - here.offsetWidth) / 2;
  }, [part]);
  return (
    <nav ref={rail} className="rail" aria-label="Parts of the job">
      <ol>
        {jobParts.map(({ id, name }) => (
          <li key={id}>
            <Link href={`/jobs/${number}/${id}`} aria-current={id === part ? 'step' : undefined}>
              {name}
            </Link>
          </li>
        ))}
      </ol>
      {wrong === 0 ? null : (
        <p className="fault" role="status">
          {wrong === 1 ? '1 field is to be mended.' : `${wrong} fields are to be mended.`}
        </p>
      )}
    </nav>
  );
}

/** The state that a part would show if it read: the one that the work under *As left* begins from counts as well. */
const wrongIn = ({ packed }: JobPart, { figures, state }: JobAtWork): LaterField | undefined => {
  const isWrong = (field: LaterField): boolean => problemsIn(field, figures.problems).length > 0;
  if (packed === 'planned') return isWrong('planned') ? 'planned' : undefined;
  if (packed !== 'as-left') return undefined;
  if (isWrong('asLeft')) return 'asLeft';
  return state.document.asLeft === undefined && isWrong('planned') ? 'planned' : undefined;
};

/** A part of the work; where its own state is wrong, what has to be mended in its place. */
function PartShown({ shown, work }: { readonly shown: JobPart; readonly work: JobAtWork }) {
  const wrong = wrongIn(shown, work);
  const { figures, state, readable } = work;
  if (wrong === undefined) return <shown.room work={work} />;
  return (
    <WrongLaterState
      field={wrong}
      number={state.number}
      problems={figures.problems}
      before={readable === state.document ? undefined : figures.quick}
    />
  );
}

/** The job as the fields of its parts show it: the same as long as nothing differs that they show. */
function useFormOf(session: JobSession, { problems, quick }: Quick, document: SessionState['document']) {
  const told = useAlike(problems);
  const givens = useAlike(quick?.model.givens ?? []);
  return useMemo(
    () => ({
      document,
      problems: told,
      givens,
      edit: (edit: Parameters<JobSession['edit']>[0]) => session.edit(edit),
    }),
    [session, document, told, givens],
  );
}

/** A job that is open: its rail, and the part that is shown. */
export function OpenJob({ session, part }: { readonly session: JobSession; readonly part: string }) {
  const state = useSessionState(session);
  const system = useSystem();
  const shown = jobParts.find(({ id }) => id === part);
  const [asked] = useSearchParams();
  const { packed = 'as-found' } = shown ?? {};
  const looked = packed === 'asked' ? lookedState(state.document, asked.get('state')) : packed;
  const { figures, document: readable } = useReadableQuick(state.document, { system, state: looked });
  const [, go] = useLocation();
  useUndoKeys(session);
  useLeftBehind(session);
  useFieldInAddress(part, figures.quick !== undefined || figures.problems.length > 0);
  const { number } = state;
  useEffect(() => {
    if (shown === undefined) go(`/jobs/${number}/findings`, { replace: true });
  }, [shown, go, number]);
  useEffect(() => {
    document.title = `${number} · ${titleOf(state)} · Fettle`;
  }, [number, state]);
  const work = { figures, session, state, system, readable };
  const form = useFormOf(session, figures, state.document);
  return (
    <main className="job">
      <div className="jobhead">
        <h1>
          <span className="number">{number}</span> {titleOf(state)}
        </h1>
        <Standing state={state} session={session} />
      </div>
      <Rail number={number} part={part} wrong={figures.problems.length} />
      {state.standing.is === 'conflict' ? (
        // Another conflict is another choice.
        <Conflict key={conflictName(state.standing)} session={session} standing={state.standing} />
      ) : null}
      <JobForm value={form}>{shown === undefined ? null : <PartShown shown={shown} work={work} />}</JobForm>
    </main>
  );
}
