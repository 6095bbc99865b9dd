import type { System } from '@fettle/engine/quantities/displayUnits.ts';
import { lazy, Suspense } from 'react';
import type { WholeFigures } from '../computing/assessed.ts';

const WaterDrawn = lazy(() => import('./WaterDrawn.tsx'));

/** Plots of the water as found: pump and system, where the head goes, how long the water is in media. */
export function WaterPlots({ whole, system }: { readonly whole: WholeFigures; readonly system: System }) {
  if (whole.assessment.dutyPoint.flowM3PerS <= 0) return null;
  return (
    <Suspense fallback={null}>
      <WaterDrawn figures={whole} system={system} />
    </Suspense>
  );
}
