import type { PackedState } from '@fettle/job/packedStates.ts';
import type { ComponentType } from 'react';
import type { JobAtWork } from './jobAtWork.ts';
import { AsFound } from './parts/AsFound.tsx';
import { AsLeft } from './parts/AsLeft.tsx';
import { ComparePart } from './parts/ComparePart.tsx';
import { Findings } from './parts/Findings.tsx';
import { Forecast } from './parts/Forecast.tsx';
import { History } from './parts/History.tsx';
import { MapPart } from './parts/MapPart.tsx';
import { Quote } from './parts/Quote.tsx';
import { Repack } from './parts/Repack.tsx';
import { TakeIn } from './parts/TakeIn.tsx';
import { WriteUp } from './parts/WriteUp.tsx';

/** A part of the work on a job, in the order in which the work is done. */
export interface JobPart {
  /** Last part of its address. */
  readonly id: string;
  readonly name: string;
  /** The packing that it looks at, or `asked` where its address says which; as found where absent. */
  readonly packed?: PackedState | 'asked';
  readonly room: ComponentType<{ readonly work: JobAtWork }>;
}

export const jobParts: readonly JobPart[] = [
  { id: 'take-in', name: 'Take in', room: TakeIn },
  { id: 'as-found', name: 'As found', room: AsFound },
  { id: 'map', name: 'Map', room: MapPart },
  { id: 'findings', name: 'Findings', packed: 'asked', room: Findings },
  { id: 'forecast', name: 'Forecast', packed: 'asked', room: Forecast },
  { id: 're-pack', name: 'Re-pack', packed: 'planned', room: Repack },
  { id: 'quote', name: 'Quote', room: Quote },
  { id: 'as-left', name: 'As left', packed: 'as-left', room: AsLeft },
  { id: 'write-up', name: 'Write-up', room: WriteUp },
  { id: 'compare', name: 'Compare', room: ComparePart },
  { id: 'history', name: 'History', room: History },
];
