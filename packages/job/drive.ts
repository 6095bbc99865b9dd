import type { Family } from '@fettle/engine/families/layout.ts';
import type { Drive } from '@fettle/engine/model/pump.ts';
import type { Draft } from './draft.ts';

type DraftPump = NonNullable<NonNullable<Draft['filter']>['pump']>;

/**
 * What drives a filter, by what its document says of the pump: air where an air flow is stated, a pump where a flow
 * or a curve is, and else what is usual for the family.
 */
export function driveIn(pump: DraftPump | undefined, family: Family): Drive {
  const [usual = 'pump'] = family.drives ?? [];
  // A field that was refused still stands in the draft, empty: it says what is meant all the same.
  if (pump !== undefined && 'airFlow' in pump) return 'air-lift';
  return pump !== undefined && ('ratedFlow' in pump || 'curve' in pump) ? 'pump' : usual;
}
