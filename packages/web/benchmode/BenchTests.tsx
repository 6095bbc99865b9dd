import { benchTestKinds } from '@fettle/job/schema/benchTests.ts';
import { knownNames } from '@fettle/job/schema/walk.ts';
import { inWords } from '../app/words.ts';
import { Fields } from '../forms/Fields.tsx';
import { useForm } from '../forms/JobForm.tsx';
import { putting, schemaOf, valueAt } from '../forms/places.ts';
import { FlowOfRuns } from './FlowOfRuns.tsx';
import type { TimedRuns } from './timedRuns.ts';

/** What each kind of test finds out, as its button says it. */
const kindWords: Readonly<Record<string, string>> = {
  'timed-volume': 'flow by a timed filling',
  power: 'watts at the plug',
  'shutoff-head': 'head at which the flow stops',
  displacement: 'water that a chamber holds',
  dye: 'dye or salt pulse',
  'ammonia-challenge': 'ammonia challenge',
};

/** Fields that every kind of test has, behind those that are its own. */
const common: readonly string[] = ['state', 'notes', 'id'];

const capital = (says: string): string => says.charAt(0).toUpperCase() + says.slice(1);

const wordsOf = (kind: unknown): string => kindWords[String(kind)] ?? inWords(String(kind));

/** One test with its fields. */
function BenchTest({ place, kind }: { readonly place: number; readonly kind: unknown }) {
  const form = useForm();
  const path = ['tests', place];
  const own = knownNames(schemaOf(form, path)).filter((name) => name !== 'kind' && !common.includes(name));
  const called = `test ${place + 1}, ${wordsOf(kind)}`;
  return (
    <fieldset className="benchtest">
      <legend>
        {place + 1}. {capital(wordsOf(kind))}
      </legend>
      <Fields path={path} only={[...own, ...common]} />
      <FlowOfRuns test={valueAt(form.document, path)} />
      <p className="buttons">
        <button
          type="button"
          className="quiet"
          onClick={() => form.edit({ says: `take away ${called}`, recipe: putting(path, undefined) })}
        >
          Take away<span className="unseen"> {called}</span>
        </button>
      </p>
    </fieldset>
  );
}

/** The bench tests of the job, and a button for one more of each kind, of the filter in a state. */
export function BenchTests({ state }: { readonly state: TimedRuns['state'] }) {
  const { document, edit } = useForm();
  const written = valueAt(document, ['tests']);
  const tests: readonly unknown[] = Array.isArray(written) ? written : [];
  return (
    <section aria-labelledby="bench-tests">
      <h3 id="bench-tests">Bench tests</h3>
      {tests.length === 0 ? (
        <p>
          None yet. Flow and watts as it came in are worth most: nothing else shows afterwards what the work
          was good for.
        </p>
      ) : null}
      {tests.map((test, place) => (
        // Tests need no name of their own: their place is all there is.
        // biome-ignore lint/suspicious/noArrayIndexKey: see above
        <BenchTest key={place} place={place} kind={valueAt(test, ['kind'])} />
      ))}
      <fieldset className="addtest noprint">
        <legend>Add a test</legend>
        <div className="buttons">
          {benchTestKinds.map((kind) => (
            <button
              key={kind}
              type="button"
              onClick={() =>
                edit({
                  says: `add a test: ${wordsOf(kind)}`,
                  recipe: putting(['tests', tests.length], { kind, state }),
                })
              }
            >
              {capital(wordsOf(kind))}
            </button>
          ))}
        </div>
      </fieldset>
    </section>
  );
}
