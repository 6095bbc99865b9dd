import { alterationKinds, idleAlterations } from '@fettle/engine/planning/alterations.ts';
import type { QuickFigures } from '../../computing/assessed.ts';
import { letterOf } from '../../repack/alterationMarks.ts';

/** Says which of the alterations that are offered change nothing on this filter, so that nobody wonders at the figures. */
export function IdleAlterations({
  ids,
  found,
  areMarked = false,
}: {
  /** As they are listed. */
  readonly ids: readonly string[];
  /** The filter as it was found; nothing is said before that is drawn. */
  readonly found: Pick<QuickFigures, 'model' | 'assessment'> | undefined;
  /** Whether the drawing has a mark for each. */
  readonly areMarked?: boolean;
}) {
  if (found === undefined) return null;
  const idle = idleAlterations(ids, found.model, found.assessment.layout);
  if (idle.size === 0) return null;
  const named = ids.flatMap((id, place) =>
    idle.has(id) ? [`${areMarked ? `${letterOf(place)}, ` : ''}${alterationKinds[id]?.says ?? id}`] : [],
  );
  return <p className="soft">Changes nothing on this filter as it was found: {named.join('; ')}.</p>;
}
