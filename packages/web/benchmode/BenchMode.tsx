import { useCallback, useEffect, useRef } from 'react';
import { putting, valueAt } from '../forms/places.ts';
import type { JobAtWork } from '../rooms/job/jobAtWork.ts';
import type { JobSession } from '../session/jobSession.ts';
import { Clock } from './Clock.tsx';
import { FillingFields } from './FillingFields.tsx';
import { FlowSoFar } from './FlowSoFar.tsx';
import { RunList } from './RunList.tsx';
import {
  clockPressed,
  noRuns,
  type TimedRuns,
  type TimedVolumeTest,
  testOf,
  withoutRun,
} from './timedRuns.ts';
import { useTimedRuns } from './useTimedRuns.ts';

interface BenchModeProps {
  readonly work: JobAtWork;
  /** State of the filter that is to be timed. */
  readonly state: TimedRuns['state'];
  /** Back to the form; with true where a test went into the job. */
  readonly leave: (isTaken: boolean) => void;
}

const takeIntoJob = (session: JobSession, test: TimedVolumeTest): void => {
  const tests = valueAt(session.state().document, ['tests']);
  const place = Array.isArray(tests) ? tests.length : 0;
  session.edit({ says: 'take a timed filling into the job', recipe: putting(['tests', place], test) });
};

/** A timed filling with wet hands: everything large, one button for the clock, the flow as it comes. */
export function BenchMode({ work, state, leave }: BenchModeProps) {
  const [runs, change] = useTimedRuns(work.state.number, state);
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => title.current?.focus(), []);
  const newest = useRef(runs);
  newest.current = runs;
  const press = useCallback(() => change(clockPressed(newest.current, Date.now())), [change]);
  const test = testOf(runs);
  return (
    <div className="part benchmode">
      <h2 ref={title} tabIndex={-1}>
        At the bench: timed filling
      </h2>
      <p className="caution">
        Unplug it before hands go into the water or the filter; plug it in again with dry hands, with a loop
        in the cable that drips below plug and socket. Water and mains kill: what concerns wiring is for those
        licensed for it, by the code where you work.
      </p>
      <div className="atbench">
        <div>
          <Clock startedAt={runs.startedAt} run={runs.times.length + 1} press={press} />
          <FlowSoFar runs={runs} system={work.system} />
        </div>
        <div>
          <FillingFields runs={runs} change={change} />
          <RunList
            times={runs.times}
            take={(time) => change({ ...runs, times: [...runs.times, time] })}
            remove={(place) => change(withoutRun(runs, place))}
          />
        </div>
      </div>
      <div className="buttons">
        <button
          type="button"
          className="main"
          disabled={test === undefined || runs.startedAt !== undefined}
          onClick={() => {
            if (test === undefined) return;
            takeIntoJob(work.session, test);
            change(noRuns);
            leave(true);
          }}
        >
          Take into the job
        </button>
        <button type="button" onClick={() => leave(false)}>
          Back to the form
        </button>
        <button type="button" className="quiet" disabled={runs === noRuns} onClick={() => change(noRuns)}>
          Begin anew
        </button>
      </div>
      <p className="soft">
        What stands here is kept in this browser until it is taken into the job, reload or not.
      </p>
    </div>
  );
}
