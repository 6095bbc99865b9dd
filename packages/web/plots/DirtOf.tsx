import type { PackedState } from '@fettle/job/packedStates.ts';
import { useDirt } from '../computing/useDirt.ts';
import { DirtRow } from './DirtRow.tsx';

/** How dirt comes into one state of a job. */
export function DirtOf({
  document,
  state,
  name,
}: {
  readonly document: unknown;
  readonly state: PackedState;
  readonly name: string;
}) {
  const dirt = useDirt(document, state);
  return dirt === undefined ? null : <DirtRow dirt={dirt} name={name} />;
}
