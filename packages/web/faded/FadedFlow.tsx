import { printer } from '@fettle/workflows/printing.ts';
import {
  causeTable,
  chanceText,
  fadedFootnote,
  fadedSentences,
  questionsWorthAsking,
} from '@fettle/workflows/report/faded.ts';
import { useState } from 'react';
import { useSystem } from '../app/preferences.ts';
import { Tabled } from '../findings/Tabled.tsx';
import { Fields } from '../forms/Fields.tsx';
import { useForm } from '../forms/JobForm.tsx';
import { valueAt } from '../forms/places.ts';
import { NextQuestion } from './NextQuestion.tsx';
import { useFaded } from './useFaded.ts';

/** What the readings so far make of it, and what to ask next. */
function FadedSoFar() {
  const { document } = useForm();
  const print = printer(useSystem());
  const { figures: faded, problems, isBehind } = useFaded(document);
  if (problems.length > 0) return <p className="fault">A field of the job has to be mended first.</p>;
  if (faded === undefined) {
    const says = isBehind ? 'Computing …' : 'Tell the flow now, or time a filling as found, to begin.';
    return <p role="status">{says}</p>;
  }
  const questions = questionsWorthAsking(faded);
  return (
    <div aria-busy={isBehind}>
      <p role="status">{fadedSentences(faded, print).join(' ')}</p>
      {faded.found.causes.length === 0 ? null : (
        <>
          <Tabled table={causeTable(faded, print)} caption="What may lie behind it" />
          <p className="soft">{fadedFootnote(print)}</p>
        </>
      )}
      {questions.length === 0 ? null : (
        <>
          <h4>What to ask next</h4>
          <ol className="questions">
            {questions.map((one) => (
              <NextQuestion
                key={JSON.stringify(one.question)}
                asked={one}
                print={print}
                settles={chanceText(one.settles)}
              />
            ))}
          </ol>
        </>
      )}
    </div>
  );
}

/** Why the flow has faded, by elimination: what was read, seen and tried, and what that makes of it. */
export function FadedFlow() {
  const { document } = useForm();
  const [isOpen, open] = useState(() => valueAt(document, ['faded']) !== undefined);
  return (
    <details className="faded" open={isOpen} onToggle={({ currentTarget }) => open(currentTarget.open)}>
      <summary>
        <h3>The flow has faded: why?</h3>
      </summary>
      {isOpen ? (
        <>
          <p>
            The usual causes are put into this filter’s own network, alone and together; those that go with
            all you know are kept.
          </p>
          <Fields path={['faded']} />
          <FadedSoFar />
        </>
      ) : null}
    </details>
  );
}
