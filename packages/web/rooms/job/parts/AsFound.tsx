import { useState } from 'react';
import { useSearchParams } from 'wouter';
import { BenchMode } from '../../../benchmode/BenchMode.tsx';
import { BenchTests } from '../../../benchmode/BenchTests.tsx';
import { askedState } from '../../../benchmode/timedRuns.ts';
import { FadedFlow } from '../../../faded/FadedFlow.tsx';
import { Photographs } from '../../../photographs/Photographs.tsx';
import type { JobAtWork } from '../jobAtWork.ts';

/** Bench tests, by form or with wet hands at the bench, and photographs. */
export function AsFound({ work }: { readonly work: JobAtWork }) {
  const [asked, setAsked] = useSearchParams();
  const [told, tell] = useState('');
  const state = askedState(asked.get('state'));
  const stays: Readonly<Record<string, string>> = asked.has('state') ? { state } : {};
  if (asked.has('bench'))
    return (
      <BenchMode
        work={work}
        state={state}
        leave={(isTaken) => {
          tell(isTaken ? 'The timed filling stands among the bench tests now; undo takes it out again.' : '');
          setAsked(stays);
        }}
      />
    );
  return (
    <div className="part">
      <h2>As found</h2>
      <p className="caution">
        Unplug it before hands go into water. Water and mains kill: what concerns wiring is for those licensed
        for it, by the code where you work.
      </p>
      <p role="status" className="told">
        {told}
      </p>
      {state === 'as-left' ? <p>What you add here now is of the filter as left.</p> : null}
      <p className="noprint">
        <button type="button" className="main" onClick={() => setAsked({ ...stays, bench: '' })}>
          Time a filling at the bench
        </button>
      </p>
      <BenchTests state={state} />
      <FadedFlow />
      <Photographs job={work.state.number} />
    </div>
  );
}
