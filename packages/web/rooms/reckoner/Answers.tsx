import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { answerText } from '@fettle/engine/reckonings/answerText.ts';
import type { Reckoned } from '@fettle/engine/reckonings/reckon.ts';
import type { LookedInto } from './lookInto.ts';
import { labelOf } from './titles.ts';

function Answered({ reckoned, system }: { readonly reckoned: Reckoned; readonly system: System }) {
  const { reckoning, answers, warnings, within } = reckoned;
  const other = system === 'us' ? 'metric' : 'us';
  return (
    <>
      <dl className="answers">
        {Object.entries(answers).map(([key, answer]) => {
          const facts = reckoning.results[key];
          if (facts === undefined) return null;
          const [first, second] = [answerText(answer, facts, system), answerText(answer, facts, other)];
          return (
            <div key={key}>
              <dt>{labelOf(facts.label)}</dt>
              <dd>
                <strong>{first}</strong>
                {second === first ? null : <span className="soft"> {second}</span>}
              </dd>
            </div>
          );
        })}
      </dl>
      {within ? null : <p className="fault">Outside of what the formula was made for:</p>}
      {warnings.map((warning) => (
        <p key={warning} className={within ? '' : 'caution'}>
          {warning}
        </p>
      ))}
    </>
  );
}

/** What comes out, or what is still wanted for it. */
export function Answers({ looked, system }: { readonly looked: LookedInto; readonly system: System }) {
  const { reckoned, missing, faults, others } = looked;
  const wrong = Object.keys(faults).length;
  return (
    <section className="result" aria-labelledby="result">
      <h2 id="result">Result</h2>
      <div role="status">
        {reckoned === undefined ? null : <Answered reckoned={reckoned} system={system} />}
        {missing.length === 0 ? null : <p className="soft">Still to fill in: {missing.join('; ')}.</p>}
        {wrong === 0 ? null : (
          <p className="fault">
            {wrong === 1 ? '1 input is to be mended.' : `${wrong} inputs are to be mended.`}
          </p>
        )}
        {others.map((says) => (
          <p key={says} className="fault">
            {says}
          </p>
        ))}
      </div>
    </section>
  );
}
