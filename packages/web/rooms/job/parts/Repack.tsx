import type { ReactNode } from 'react';
import { useTheme } from '../../../app/preferences.ts';
import { useComputed } from '../../../computing/useComputed.ts';
import { Drawn } from '../../../drawing/Drawn.tsx';
import { Plans } from '../../../plans/Plans.tsx';
import { Alterations } from '../../../repack/Alterations.tsx';
import { BedList } from '../../../repack/BedList.tsx';
import { BedsOverlay } from '../../../repack/BedsOverlay.tsx';
import { BeforeAfter } from '../../../repack/BeforeAfter.tsx';
import type { PackingField } from '../../../repack/bedEdits.ts';
import { MediaToTake } from '../../../repack/MediaToTake.tsx';
import { useRepacking } from '../../../repack/useRepacking.ts';
import type { JobAtWork } from '../jobAtWork.ts';

const viewBoxOf = (svg: string): string => /viewBox="([^"]+)"/.exec(svg)?.[1] ?? '0 0 100 100';

/** A packing under the hands: the drawing with its beds, media to put in, and the figures that follow. */
export function Packing({
  work,
  field,
  name,
  children,
}: {
  readonly work: JobAtWork;
  readonly field: PackingField;
  readonly name: string;
  readonly children?: ReactNode;
}) {
  const { session, state, figures, system } = work;
  const { quick } = figures;
  const found = useComputed(state.document, { system, theme: useTheme(), state: 'as-found' });
  const repacking = useRepacking(session, field, quick?.places);
  if (quick === undefined) return <p className="wait">The drawing comes when the map is filled in.</p>;
  return (
    <div className="part beside">
      <div className="atdrawing">
        <figure className="section">
          <Drawn svg={quick.drawing} />
          <BedsOverlay places={quick.places} viewBox={viewBoxOf(quick.drawing)} repacking={repacking} />
        </figure>
        <p className="told" role="status">
          {repacking.told}
        </p>
        <p id="bed-keys" className="soft keys">
          On a bed: arrows move it, + and − change its depth by 1 mm (with Shift 10 mm), S splits it, Delete
          takes it out.
        </p>
      </div>
      <div>
        {found.quick === undefined ? null : (
          <BeforeAfter
            before={{ name: 'As found', assessment: found.quick.assessment }}
            after={{ name, assessment: quick.assessment }}
            system={system}
          />
        )}
        <MediaToTake model={quick.model} repacking={repacking} />
        <BedList places={quick.places} repacking={repacking} />
        <Alterations field={field} />
        {children}
      </div>
    </div>
  );
}

/** The re-pack that is planned. */
export function Repack({ work }: { readonly work: JobAtWork }) {
  const { quick } = work.figures;
  return (
    <Packing work={work} field="planned" name="Planned">
      {quick === undefined ? null : <Plans session={work.session} model={quick.model} />}
    </Packing>
  );
}
