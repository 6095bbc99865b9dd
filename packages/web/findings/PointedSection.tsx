import type { Finding } from '@fettle/engine/assessment/assessment.ts';
import { useEffect, useRef } from 'react';
import { Drawn } from '../drawing/Drawn.tsx';
import { viewBoxOf } from '../drawing/viewBox.ts';
import { whyNoDrawing } from '../drawing/whyNoDrawing.ts';
import type { JobAtWork } from '../rooms/job/jobAtWork.ts';
import { SpotsOverlay } from './SpotsOverlay.tsx';
import type { Spots } from './spots.ts';

interface PointedProps {
  readonly work: JobAtWork;
  readonly spots: Spots | undefined;
  /** The finding that was asked to be shown here. */
  readonly shown: Finding | undefined;
  readonly leave: () => void;
}

/** The section drawing with the place of a finding outlined; what it is about stands under it. */
export function PointedSection({ work, spots, shown, leave }: PointedProps) {
  const figure = useRef<HTMLElement>(null);
  const came = useRef<Element>(null);
  useEffect(() => {
    if (shown === undefined) return;
    came.current = document.activeElement;
    figure.current?.scrollIntoView({ block: 'nearest' });
  }, [shown]);
  const { quick } = work.figures;
  if (quick === undefined) return <p className="wait">{whyNoDrawing(work.figures)}</p>;
  const back = (): void => {
    leave();
    if (!(came.current instanceof HTMLElement)) return;
    came.current.focus({ preventScroll: true });
    came.current.scrollIntoView({ block: 'center' });
  };
  return (
    <figure ref={figure} className="section pointed">
      <div className="sheet">
        <Drawn svg={quick.drawing} />
        {spots === undefined ? null : <SpotsOverlay spots={spots} viewBox={viewBoxOf(quick.drawing)} />}
      </div>
      {shown === undefined ? null : (
        <figcaption className="noprint">
          <p>Outlined: {shown.says}</p>
          <button type="button" className="quiet" onClick={back}>
            Back to the finding
          </button>
        </figcaption>
      )}
    </figure>
  );
}
