import { lazy, Suspense } from 'react';
import type { JobAtWork } from '../rooms/job/jobAtWork.ts';

const WaterDrawn = lazy(() => import('./WaterDrawn.tsx'));

/** Plots of the water as found: pump and system, where the head goes, how long the water is in media. */
export function WaterPlots({ work: { figures, system } }: { readonly work: JobAtWork }) {
  const { whole } = figures;
  if (whole === undefined || whole.assessment.dutyPoint.flowM3PerS <= 0) return null;
  return (
    <Suspense fallback={null}>
      <WaterDrawn figures={whole} system={system} />
    </Suspense>
  );
}
