import { drawnLayout } from '@fettle/engine/families/families.ts';
import type { BenchTest, Model } from '@fettle/engine/model/model.ts';
import { altered } from '@fettle/engine/planning/alterations.ts';
import { listed } from '../alterationList.ts';
import type { Note } from '../notes.ts';
import { type PackedState, stateField } from '../packedStates.ts';
import type { JobDocument } from '../schema/job.ts';
import { permit } from './alterations.ts';
import { toModel } from './toModel.ts';

/** What is told of a packing is told where it stands in the document. */
const movedTo =
  (field: string) =>
  <Told extends { readonly path: string }>(told: Told): Told =>
    told.path.startsWith('packing.') ? { ...told, path: `${field}.${told.path}` } : told;

/** A flow is measured of one packing and says nothing of another; what pump and vessel give is the same in all. */
const isOf =
  (state: PackedState) =>
  (test: BenchTest): boolean =>
    test.kind !== 'timed-volume' || test.state === state;

/**
 * The engine's model of one state of a job's filter, with its notes: its packing in place of the one found, its alterations made, and of
 * the flows that were timed those of this state alone.
 *
 * @param document one that reads without a problem
 * @returns undefined where the job does not describe that state
 */
export function stateModel(
  document: JobDocument,
  state: PackedState,
): { readonly model: Model; readonly notes: readonly Note[] } | undefined {
  const field = state === 'as-found' ? undefined : stateField(state);
  const packed = field === undefined ? undefined : document[field];
  if (field !== undefined && packed === undefined) return undefined;
  const result = toModel(packed === undefined ? document : { ...document, packing: packed.packing });
  if (!result.ok) throw new TypeError('unchecked document');
  const { model, notes } = result;
  if (field === undefined || packed === undefined) return { model, notes };
  const layout = drawnLayout(model.filter);
  const made = listed(packed.made ?? [], [field, 'made']).map(permit);
  const given = model.givens.map(movedTo(field));
  const tests = model.tests.filter(isOf(state));
  return {
    model: { ...altered(model, layout, made), packedState: state, givens: given, tests },
    notes: notes.map(movedTo(field)),
  };
}
