import { familyById } from '@fettle/engine/families/families.ts';
import type { Family } from '@fettle/engine/families/layout.ts';
import { type FormEvent, useEffect, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { useSystem } from '../../app/preferences.ts';
import { today } from '../../app/today.ts';
import { takeIn } from '../../client/jobs.ts';
import { type Quick, useQuick } from '../../computing/useQuick.ts';
import { Drawn } from '../../drawing/Drawn.tsx';
import { Field } from '../../forms/Field.tsx';
import { Fields } from '../../forms/Fields.tsx';
import { goToFirstOf } from '../../forms/goToField.ts';
import { JobForm } from '../../forms/JobForm.tsx';
import { MeasurementField } from '../../forms/MeasurementField.tsx';
import { valueAt } from '../../forms/places.ts';
import { fieldInWords } from '../../history/fieldInWords.ts';
import { edited, historyOf } from '../../session/history.ts';
import { forgetDraft, keepDraft, keptDraft, shownProblems } from './draft.ts';
import { FamilyChoice } from './FamilyChoice.tsx';

/** Measurements that the family cannot do without, then those that are assumed where they are not taken. */
function Measurements({ family }: { readonly family: Family }) {
  const needed = family.measurements.filter(({ assumed }) => assumed === undefined);
  const others = family.measurements.filter(({ assumed }) => assumed !== undefined);
  return (
    <section aria-labelledby="measurements">
      <h2 id="measurements">3. Measure, with a tape</h2>
      <div className="fields">
        {needed.map((measurement) => (
          <MeasurementField key={measurement.key} measurement={measurement} />
        ))}
      </div>
      <details>
        <summary>{others.length} more that are assumed where you do not take them</summary>
        <div className="fields">
          {others.map((measurement) => (
            <MeasurementField key={measurement.key} measurement={measurement} />
          ))}
        </div>
      </details>
    </section>
  );
}

function PumpAndHoses({ family }: { readonly family: Family }) {
  return (
    <section aria-labelledby="pump">
      <h2 id="pump">4. Pump and hoses</h2>
      <div className="fields">
        <Field path={['filter', 'pump', 'ratedFlow']} how="As its maker states it; the plate says it." />
        <Field
          path={['filter', 'pump', 'shutoffHead']}
          label="Greatest head"
          how="The height at which its flow stops, H max on the plate; left empty, what is usual for its kind is taken."
        />
        <Field path={['filter', 'pump', 'power']} how="As the plate or a plug meter says." />
        {family.hoses.intake ? (
          <>
            <Field path={['filter', 'hoses', 'intake', 'length']} label="Length of the intake hose" />
            <Field path={['filter', 'hoses', 'intake', 'bore']} label="Bore of the intake hose" />
          </>
        ) : null}
        {family.hoses.outlet ? (
          <>
            <Field path={['filter', 'hoses', 'outlet', 'length']} label="Length of the outlet hose" />
            <Field path={['filter', 'hoses', 'outlet', 'bore']} label="Bore of the outlet hose" />
          </>
        ) : null}
      </div>
    </section>
  );
}

/** The draft, kept by the browser with every change. */
function useDraft() {
  const [history, setHistory] = useState(() => historyOf(keptDraft(today())));
  useEffect(() => keepDraft(history.document), [history]);
  return {
    document: history.document,
    edit: (edit: Parameters<typeof edited>[1]) => setHistory((before) => edited(before, edit)),
  };
}

/** Sends the draft once it has been read as it stands; afterwards the job is opened on its map. */
function useTakingIn(document: unknown, { problems, isRead }: Quick) {
  const [, go] = useLocation();
  const [wasSent, setSent] = useState(false);
  const [isWanted, want] = useState(false);
  const [failure, setFailure] = useState('');
  const form = useRef<HTMLFormElement>(null);
  const lack = useRef<HTMLParagraphElement>(null);
  const isUnderWay = useRef(false);
  useEffect(() => {
    if (!isWanted || !isRead || isUnderWay.current) return;
    want(false);
    if (problems.length > 0) {
      const paths = problems.map(({ path }) => path);
      if (form.current === null || !goToFirstOf(form.current, paths)) lack.current?.focus();
      return;
    }
    isUnderWay.current = true;
    takeIn(document).then(
      ({ number }) => {
        forgetDraft();
        go(`/jobs/${number}/map`);
      },
      (error: unknown) => {
        isUnderWay.current = false;
        setFailure(error instanceof Error ? error.message : String(error));
      },
    );
  }, [isWanted, isRead, problems, document, go]);
  const send = (event: FormEvent): void => {
    event.preventDefault();
    setSent(true);
    setFailure('');
    want(true);
  };
  return { send, wasSent, failure, form, lack };
}

/** A filter is taken in: from nothing to its first drawing and figures. */
export default function TakeInRoom() {
  const { document, edit } = useDraft();
  const figures = useQuick(document, { system: useSystem(), state: 'as-found' });
  const { problems, quick } = figures;
  const { send, wasSent, failure, form, lack } = useTakingIn(document, figures);
  const family = familyById(String(valueAt(document, ['filter', 'family'])));
  const shown = shownProblems(problems, wasSent);
  return (
    <main>
      <h1>Take in a filter</h1>
      <p className="caution">
        Unplug it first, and let a heater cool under water. Water and mains kill: wiring is for those licensed
        for it where you work.
      </p>
      <JobForm value={{ document, edit, problems: shown, givens: quick?.model.givens ?? [] }}>
        <form ref={form} onSubmit={send} className="takein">
          <h2>1. The filter</h2>
          <FamilyChoice />
          <div className="fields">
            <Field path={['job', 'title']} label="What you call the job" />
            <Field path={['owner', 'name']} label="Whose it is" />
            <Field path={['job', 'promised']} label="Promised back on" />
          </div>
          <h2>2. The tank that it serves</h2>
          <Fields path={['tank']} only={['volume', 'feed', 'stock', 'temperature']} />
          {family === undefined ? null : (
            <>
              <Measurements family={family} />
              <PumpAndHoses family={family} />
            </>
          )}
          {quick === undefined || problems.length > 0 ? null : (
            <figure className="section preview">
              <Drawn svg={quick.drawing} />
            </figure>
          )}
          {wasSent && problems.length > 0 ? (
            <p ref={lack} tabIndex={-1} className="fault" role="alert">
              {problems.length === 1 ? 'One field is' : `${problems.length} fields are`} still to be filled in
              or mended: {problems.map(({ path }) => fieldInWords(document, path)).join('; ')}.
            </p>
          ) : null}
          {failure === '' ? null : (
            <p className="fault" role="alert">
              It could not be taken in: {failure} What you typed is kept.
            </p>
          )}
          <button type="submit" className="main">
            Take it in
          </button>
        </form>
      </JobForm>
    </main>
  );
}
