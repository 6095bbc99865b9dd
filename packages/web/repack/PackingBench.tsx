import { memo, type ReactNode, useDeferredValue, useMemo, useState } from 'react';
import type { QuickFigures } from '../computing/assessed.ts';
import type { Quick } from '../computing/useQuick.ts';
import { Drawn } from '../drawing/Drawn.tsx';
import { viewBoxOf } from '../drawing/viewBox.ts';
import { StillForm } from '../forms/StillForm.tsx';
import type { JobSession } from '../session/jobSession.ts';
import { BedList } from './BedList.tsx';
import { BedsOverlay } from './BedsOverlay.tsx';
import type { PackingField } from './bedEdits.ts';
import { MediaToTake } from './MediaToTake.tsx';
import { type Repacking, useRepacking } from './useRepacking.ts';

/** What the packing is called where the page is read out. */
const packingNames: Readonly<Record<PackingField, string>> = {
  found: 'As found, on the drawing',
  planned: 'Re-pack, on the drawing',
  asLeft: 'As left, on the drawing',
};

/** The lists follow when there is time for them: the drawing and the figures are under a hand that moves. */
function useWhenThereIsTime(
  model: QuickFigures['model'],
  places: QuickFigures['places'],
  repacking: Repacking,
): {
  readonly model: QuickFigures['model'];
  readonly places: QuickFigures['places'];
  readonly repacking: Repacking;
} {
  return useDeferredValue(useMemo(() => ({ model, places, repacking }), [model, places, repacking]));
}

const Media = memo(MediaToTake);
const Beds = memo(BedList);

/** A packing under the hands: the drawing with its beds, and the media to put into it. */
export function PackingBench({
  session,
  field,
  figures,
  before,
  over,
  children,
}: {
  readonly session: JobSession;
  readonly field: PackingField;
  readonly figures: QuickFigures & Pick<Quick, 'isRead'>;
  /** What stands over the media. */
  readonly before?: ReactNode;
  /** What lies over the drawing beside its beds. */
  readonly over?: ReactNode;
  readonly children?: ReactNode;
}) {
  const { drawing, places, model, isRead } = figures;
  const repacking = useRepacking({ session, field, places, media: model.media });
  const [isGripped, setGripped] = useState(false);
  const late = useWhenThereIsTime(model, places, repacking);
  return (
    <div className="part beside">
      <h2 className="hidden">{packingNames[field]}</h2>
      <div className="atdrawing">
        <figure className="section">
          <Drawn svg={drawing} />
          <BedsOverlay
            places={places}
            viewBox={viewBoxOf(drawing)}
            repacking={repacking}
            isRead={isRead}
            onGrip={setGripped}
          />
          <StillForm isStill={isGripped}>{over}</StillForm>
        </figure>
        <p className="told" role="status">
          {repacking.told}
        </p>
        <p className="soft holds noprint">Hold a bed or its edge until it is outlined, then move it.</p>
        <p id="bed-keys" className="soft keys noprint">
          On a bed: arrows move it, + and − change its depth by 1 mm (with Shift 10 mm), S splits it, Delete
          takes it out.
        </p>
      </div>
      <div>
        {before}
        <Media model={late.model} places={late.places} repacking={late.repacking} />
        <Beds places={late.places} repacking={late.repacking} />
        <StillForm isStill={isGripped}>{children}</StillForm>
      </div>
    </div>
  );
}
