import type { Effect } from '@fettle/engine/assessment/assessment.ts';
import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { effectTexts } from '@fettle/workflows/report/effects.ts';

/** What a cure alone would do, before and after, in numbers. */
export function Effects({ effect, system }: { readonly effect: Effect; readonly system: System }) {
  return (
    <dl className="effects">
      {effectTexts(effect, system).map(({ what, before, after, unit, percent }) => (
        <div key={what}>
          <dt>{what}</dt>
          <dd>
            {before} <span aria-hidden="true">→</span>
            <span className="hidden"> becomes </span> <strong>{after}</strong> {unit}
            {percent === '' ? null : <span className="soft"> ({percent})</span>}
          </dd>
        </div>
      ))}
    </dl>
  );
}
