import type { Model } from '@fettle/engine/model/model.ts';
import { alike } from '@fettle/job/changes/alike.ts';
import { type FoundPlan, plannedState } from '@fettle/workflows/plannedState.ts';
import { useMemo } from 'react';
import type { JobSession } from '../session/jobSession.ts';
import { useSessionState } from '../session/useJobSession.ts';
import { takingPlan } from './takePlan.ts';

/** Takes a plan into the drawing; one that lies in it says so. */
export function TakeButton({
  plan,
  model,
  session,
}: {
  readonly plan: FoundPlan;
  readonly model: Model;
  readonly session: JobSession;
}) {
  const { document } = useSessionState(session);
  const state = useMemo(() => plannedState(plan, model), [plan, model]);
  if (alike(document.planned, state))
    return (
      <span className="taken" role="status">
        in the drawing
      </span>
    );
  return (
    <button
      type="button"
      className="noprint"
      onClick={() => session.edit(takingPlan(plan, model))}
      aria-label={`Take ${plan.id} into the drawing`}
    >
      Take
    </button>
  );
}
