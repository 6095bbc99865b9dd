import { memo, type ReactNode, useDeferredValue } from 'react';
import { useAsFound } from '../../../computing/useAsFound.ts';
import { useQuick } from '../../../computing/useQuick.ts';
import { whyNoDrawing } from '../../../drawing/whyNoDrawing.ts';
import { Plans } from '../../../plans/Plans.tsx';
import { Alterations } from '../../../repack/Alterations.tsx';
import { AlterationsOverlay } from '../../../repack/AlterationsOverlay.tsx';
import { BeforeAfter } from '../../../repack/BeforeAfter.tsx';
import { PackingBench } from '../../../repack/PackingBench.tsx';
import { useAlterations } from '../../../repack/useAlterations.ts';
import { IdleAlterations } from '../IdleAlterations.tsx';
import type { JobAtWork } from '../jobAtWork.ts';

/** A packing that follows the one as found, with its figures beside those as found. */
export function LaterPacking({
  work,
  field,
  name,
  children,
}: {
  readonly work: JobAtWork;
  readonly field: 'planned' | 'asLeft';
  readonly name: string;
  readonly children?: ReactNode;
}) {
  const { session, state, figures, system } = work;
  const { quick, isRead } = figures;
  const { ids } = useAlterations(field);
  const found = useQuick(useAsFound(state.document), { system, state: 'as-found' });
  if (quick === undefined) return <p className="wait">{whyNoDrawing(figures)}</p>;
  const before =
    found.quick === undefined ? null : (
      <BeforeAfter
        before={found.quick.assessment}
        beforeName="Cleaned, packed as before"
        after={quick.assessment}
        afterName={name}
        system={system}
      />
    );
  return (
    <PackingBench
      session={session}
      field={field}
      figures={{ ...quick, isRead }}
      before={before}
      over={<AlterationsOverlay field={field} figures={quick} />}
    >
      <Alterations field={field} />
      <IdleAlterations ids={ids} found={found.quick} areMarked />
      {children}
    </PackingBench>
  );
}

const PlansToTake = memo(Plans);

/** The re-pack that is planned. */
export function Repack({ work }: { readonly work: JobAtWork }) {
  // Plans follow when there is time for them: a hand that moves a bed must not wait for their table.
  const model = useDeferredValue(work.figures.quick?.model);
  return (
    <LaterPacking work={work} field="planned" name="Planned">
      {model === undefined ? null : <PlansToTake session={work.session} model={model} />}
    </LaterPacking>
  );
}
