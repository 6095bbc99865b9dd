import { Drawn } from '../../drawing/Drawn.tsx';
import type { JobAtWork } from './jobAtWork.ts';

/** The section drawing of the job as it stands. */
export function Section({ work }: { readonly work: JobAtWork }) {
  const { quick } = work.figures;
  if (quick === undefined) return <p className="wait">The drawing comes when the map is filled in.</p>;
  return (
    <figure className="section">
      <Drawn svg={quick.drawing} />
    </figure>
  );
}
