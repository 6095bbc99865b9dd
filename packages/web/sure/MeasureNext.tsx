import { howSaid } from '@fettle/engine/doubt/doubtSaid.ts';
import type { Measurement } from '@fettle/engine/doubt/measurements.ts';
import type { Model } from '@fettle/engine/model/model.ts';
import { printShare } from '@fettle/engine/quantities/printShort.ts';
import { engineEnglish } from '@fettle/engine/wording/english/english.ts';
import { word } from '@fettle/engine/wording/word.ts';
import { writtenPath } from '@fettle/job/fieldPath.ts';
import type { PackedState } from '@fettle/job/packedStates.ts';
import { Link, useLocation } from 'wouter';
import { asLabel } from '../forms/labels.ts';
import { putting, valueAt } from '../forms/places.ts';
import type { JobAtWork } from '../rooms/job/jobAtWork.ts';
import { entryOf, testedState } from './entryOf.ts';
import { fieldNaming } from './fieldNaming.ts';

interface Shown {
  readonly model: Model;
  readonly looked: PackedState;
  readonly work: JobAtWork;
}

/** The way to where a measurement is entered; what it is of is read out behind it. */
function Way({ measurement, how, looked, work }: Shown & { measurement: Measurement; how: string }) {
  const [, go] = useLocation();
  const { session, state } = work;
  const entry = entryOf(measurement, { number: state.number, looked });
  const says = (
    <>
      {entry.says}
      <span className="unseen">: {how}</span>
    </>
  );
  if (entry.kind === 'address')
    return (
      <Link className="button" href={entry.address}>
        {says}
      </Link>
    );
  const add = (): void => {
    const written = valueAt(state.document, ['tests']);
    const place = Array.isArray(written) ? written.length : 0;
    const test = { kind: entry.test, state: testedState(looked) };
    session.edit({ says: `add a test: ${entry.test}`, recipe: putting(['tests', place], test) });
    go(`/jobs/${state.number}/as-found#${encodeURIComponent(writtenPath(['tests', place]))}`);
  };
  return (
    <button type="button" className="quiet" onClick={add}>
      {says}
    </button>
  );
}

/** What would narrow the range, the measurement that narrows it most first. */
export function MeasureNext({ measurements, ...shown }: Shown & { measurements: readonly Measurement[] }) {
  if (measurements.length === 0) return null;
  const naming = fieldNaming(shown.work.readable);
  return (
    <>
      <h4>Measure next</h4>
      <ol className="measurenext">
        {measurements.map((measurement) => {
          const said = howSaid(measurement, shown.model, naming);
          const how = asLabel(word(said, { language: engineEnglish, units: shown.work.system }));
          return (
            <li key={`${measurement.kind} ${measurement.of ?? ''}`}>
              <p>
                {how} It leaves about {printShare(measurement.widthLeft)} of the width of the range.
              </p>
              <p className="buttons noprint">
                <Way {...shown} measurement={measurement} how={how} />
              </p>
            </li>
          );
        })}
      </ol>
    </>
  );
}
