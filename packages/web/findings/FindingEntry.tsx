import type { Finding } from '@fettle/engine/assessment/assessment.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { printDay } from '@fettle/engine/quantities/printShort.ts';
import { Effects } from './Effects.tsx';
import { SeverityMark } from './SeverityMark.tsx';
import { severityWords } from './severities.ts';
import { openWorking, workingNames } from './workingSections.ts';
import { workingOf } from './workings.ts';

interface EntryProps {
  readonly finding: Finding;
  readonly system: System;
  /** The place in words; undefined where the drawing shows nothing of it. */
  readonly place: string | undefined;
  readonly isShown: boolean;
  /** Called with true while a pointer or the focus is on it. */
  readonly point: (isOn: boolean) => void;
  readonly show: () => void;
}

function Cure({ finding, system }: Pick<EntryProps, 'finding' | 'system'>) {
  const { cure, effect, severity } = finding;
  if (severity === 'strength') return null;
  if (effect === undefined) return <p>{cure}</p>;
  return (
    <>
      <p>
        <strong>Cure:</strong> {cure}
      </p>
      <p className="soft effecthead">Effect of this alone, on {printDay(effect.dayS)} after cleaning:</p>
      <Effects effect={effect} system={system} />
    </>
  );
}

/** One finding: how grave, what was seen, what cures it and what that would do. */
export function FindingEntry({ finding, system, place, isShown, point, show }: EntryProps) {
  const { severity, says, id } = finding;
  const working = workingOf(id);
  return (
    <li
      className={`finding ${severity}`}
      onPointerEnter={() => point(true)}
      onPointerLeave={() => point(false)}
      onFocus={() => point(true)}
      onBlur={() => point(false)}
    >
      <p className="severity">
        <SeverityMark severity={severity} /> {severityWords[severity]}
      </p>
      <p className="says">{says}</p>
      <Cure finding={finding} system={system} />
      <p className="buttons noprint">
        {place === undefined ? null : (
          <button type="button" className="quiet" aria-pressed={isShown} onClick={show}>
            Show in the drawing<span className="unseen">: {place}</span>
          </button>
        )}
        {working === undefined ? null : (
          <button type="button" className="quiet" onClick={() => openWorking(working)}>
            Working: {workingNames[working].toLowerCase()}
          </button>
        )}
      </p>
    </li>
  );
}
