import type { Finding } from '@fettle/engine/assessment/assessment.ts';
import { barsOf } from './severities.ts';

const bars = [1, 2, 3] as const;

/** The mark before a finding: as many bars filled as it is grave, a ring for a note, a tick for a strength. */
export function SeverityMark({ severity }: { readonly severity: Finding['severity'] }) {
  return (
    <svg className="mark" viewBox="0 0 24 24" width="24" height="24" aria-hidden="true" focusable="false">
      {severity === 'note' ? <circle cx="12" cy="12" r="7" className="line" /> : null}
      {severity === 'strength' ? <path d="M4 13 L10 19 L20 6" className="line" /> : null}
      {severity === 'note' || severity === 'strength'
        ? null
        : bars.map((bar) => (
            <rect
              key={bar}
              x={bar * 7 - 5}
              y={18 - 5 * bar}
              width="5"
              height={5 * bar + 3}
              className={bar <= barsOf[severity] ? 'full' : 'line'}
            />
          ))}
    </svg>
  );
}
