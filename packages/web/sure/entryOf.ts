import type { Measurement } from '@fettle/engine/doubt/measurements.ts';
import type { PackedState } from '@fettle/job/packedStates.ts';
import type { benchTestKinds } from '@fettle/job/schema/benchTests.ts';
import { partOfField } from '../findings/partOfField.ts';

/** Where what was measured is entered. */
export type Entry =
  /** An address within the workbench. */
  | { readonly kind: 'address'; readonly address: string; readonly says: string }
  /** A bench test that is added to the job. */
  | { readonly kind: 'test'; readonly test: (typeof benchTestKinds)[number]; readonly says: string };

/** The state that a test of clean media is of, for the packing that is looked at. */
export const testedState = (looked: PackedState): 'cleaned-original' | 'as-left' =>
  looked === 'as-found' ? 'cleaned-original' : 'as-left';

const test = (kind: (typeof benchTestKinds)[number]): Entry => ({
  kind: 'test',
  test: kind,
  says: 'Add this bench test',
});

/**
 * Where a measurement is entered: its bench test, the field of the job, or the shelf for what is a medium's own.
 *
 * @param of the job's number, and the packing that is looked at
 */
export function entryOf(
  { kind, of: field }: Pick<Measurement, 'kind' | 'of'>,
  of: { readonly number: number; readonly looked: PackedState },
): Entry {
  const job = `/jobs/${of.number}`;
  if (kind === 'time-flow' || kind === 'watch-the-flow-fall')
    return {
      kind: 'address',
      address: `${job}/as-found?state=${testedState(of.looked)}&bench=`,
      says: 'Time a filling',
    };
  if (kind === 'challenge-with-ammonia') return test('ammonia-challenge');
  if (kind === 'measure-shutoff-head') return test('shutoff-head');
  if (kind === 'find-pore-space') return { kind: 'address', address: '/shelf', says: 'Open the shelf' };
  const part = field === undefined ? undefined : partOfField(field);
  return {
    kind: 'address',
    address: part === undefined ? job : `${job}/${part}#${encodeURIComponent(field!)}`,
    says: 'Open its field',
  };
}
